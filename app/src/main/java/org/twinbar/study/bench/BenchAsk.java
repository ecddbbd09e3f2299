package org.twinbar.study.bench;

import java.util.Optional;
import org.twinbar.study.file.TestSheet;

/**
 * What is asked of a bench before any specimen is broken.
 *
 * @param sheet the method, what is set, and the instruments
 * @param property by name or column; the first that has a number unless said
 * @param perGroup specimens per group
 * @param scatter from specimen to specimen: a share of the typical value, or an amount; the one of
 *     the typical readings unless said
 * @param worth smallest change worth having, in the same way
 */
public record BenchAsk(
        TestSheet sheet,
        Optional<String> property,
        int perGroup,
        Optional<String> scatter,
        Optional<String> worth) {

    /** As many specimens per group as most people begin with; common practice, no source. */
    public static final int USUAL_PER_GROUP = 5;

    public static BenchAsk of(String method) {
        return new BenchAsk(
                TestSheet.of(method),
                Optional.empty(),
                USUAL_PER_GROUP,
                Optional.empty(),
                Optional.empty());
    }
}
