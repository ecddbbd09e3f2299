package org.twinbar.statistics.groups;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.twinbar.statistics.Arguments;

/**
 * Several tests together, so that the chance of any false alarm among them stays at the error rate.
 */
public final class Holm {

    private Holm() {}

    /**
     * Each p adjusted for all of them: in rising order times m, m − 1, …, each at least the one
     * before, at most 1.
     *
     * <p>Holds whatever the tests have in common. Source: S. Holm, A simple sequentially rejective
     * multiple test procedure (1979), doi:10.2307/4615733.
     *
     * @throws IllegalArgumentException if one isn't within [0, 1]
     */
    public static double[] adjusted(double... p) {
        for (double one : p) {
            Arguments.requireShare(one, "probability");
        }
        int[] rising = IntStream.range(0, p.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> p[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] adjusted = new double[p.length];
        double before = 0;
        for (int rank = 0; rank < rising.length; rank++) {
            before = Math.min(1, Math.max(before, p[rising[rank]] * (p.length - rank)));
            adjusted[rising[rank]] = before;
        }
        return adjusted;
    }
}
