package org.twinbar.study;

import java.util.List;
import java.util.Optional;

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
}
