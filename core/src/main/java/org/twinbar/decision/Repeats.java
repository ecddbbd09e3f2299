package org.twinbar.decision;

import java.util.Optional;

/**
 * How many specimens stand behind each of what counts.
 *
 * @param specimens in each, 1 where the specimens themselves count
 * @param kind what counts instead of them, such as {@code print run}; empty for specimens
 */
record Repeats(int specimens, Optional<String> kind) {

    static final Repeats NONE = new Repeats(1, Optional.empty());

    /** Returns how specimens were taken together: so many of them became so many. */
    static Repeats of(int specimens, int counted, String kind) {
        return counted > 0 && counted < specimens
                ? new Repeats(
                        Math.max(1, Math.round((float) specimens / counted)), Optional.of(kind))
                : NONE;
    }

    Optional<Needed.InBlocks> blocks(int number) {
        return kind.map(word -> new Needed.InBlocks(number, word, Needed.Holding.ONE_GROUP));
    }
}
