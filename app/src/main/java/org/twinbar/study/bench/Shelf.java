package org.twinbar.study.bench;

import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;

/** The instruments that a test may name. */
public interface Shelf {

    /** Holds none. */
    Shelf EMPTY = new Shelf() {
        @Override
        public Optional<KeptInstrument> find(String name) {
            return Optional.empty();
        }

        @Override
        public List<String> names() {
            return List.of();
        }
    };

    /** Returns the instrument of this name, its case apart. */
    Optional<KeptInstrument> find(String name);

    List<String> names();

    /** Returns what to tell a person who named an instrument that isn't here. */
    default InputException unknown(String name, String where) {
        return new InputException("there is no instrument '%s' in %s%s"
                .formatted(
                        name,
                        where,
                        names().isEmpty() ? "; add it first" : Spelling.hint(name, names())));
    }
}
