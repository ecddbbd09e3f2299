package org.twinbar.study.calculation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.Observation;
import org.twinbar.study.judged.Ordered;

/**
 * The specimens that share what a question parts them by.
 *
 * @param by factor and level, in the order asked for; nothing where they are not parted
 * @param observations left-out ones included
 * @param amounts where a line over them was asked for
 */
record Part(Map<String, String> by, List<Observation> observations, Optional<Amounts> amounts) {

    Part {
        by = Ordered.copy(by);
        observations = List.copyOf(observations);
    }

    /** Returns the levels in words, such as {@code flat}. */
    String words() {
        return String.join(", ", by.values());
    }
}
