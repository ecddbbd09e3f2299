package org.twinbar.study;

import java.util.List;
import org.twinbar.study.calculation.AlikeValues;
import org.twinbar.study.judged.JudgedStudy;

/** About how many bytes of memory things hold; measured once on studies of the load run. */
final class Weights {

    private static final long STUDY = 20_000;
    private static final long SPECIMEN = 12_000;
    private static final long POINT = 16;
    private static final long CHANGE = 2_000;
    private static final long TYPED = 1_200;
    private static final long FILE = 500;
    private static final long VALUE = 24;
    private static final long LIST = 200;

    private Weights() {}

    static long of(JudgedStudy study) {
        long points = study.specimens().stream()
                .flatMap(specimen -> specimen.curve().stream())
                .mapToLong(curve -> curve.x().length)
                .sum();
        return STUDY + SPECIMEN * study.specimens().size() + POINT * points;
    }

    static long of(State state) {
        long files =
                state.tests().stream().mapToLong(test -> test.curves().size()).sum();
        return STUDY + CHANGE * state.history().size() + TYPED * state.typed() + FILE * files;
    }

    static long ofValues(List<AlikeValues> values) {
        return values.stream()
                .mapToLong(it -> LIST + VALUE * it.values().size())
                .sum();
    }
}
