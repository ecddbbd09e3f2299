package org.twinbar.statistics.assumption;

import java.util.Arrays;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.ChiSquared;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.groups.FTest;
import org.twinbar.statistics.groups.OneWay;

/** Whether groups scatter alike. */
public final class Spread {

    private Spread() {}

    /**
     * Brown and Forsythe's test: one-way analysis of variance of the distances from each group's
     * median.
     *
     * <p>Holds its rate for skewed values; with three values a group it sees nothing. Source: M. B.
     * Brown, A. B. Forsythe, Robust tests for the equality of variances (1974),
     * doi:10.1080/01621459.1974.10482955.
     *
     * @throws IllegalArgumentException if there are fewer than 2 groups, one is empty, or none has
     *     2 values
     */
    public static FTest brownForsythe(double[]... groups) {
        double[][] distances = new double[groups.length][];
        for (int i = 0; i < groups.length; i++) {
            double median = Summary.of(groups[i]).median();
            distances[i] = Arrays.stream(groups[i])
                    .map(value -> Math.abs(value - median))
                    .toArray();
        }
        FTest test = OneWay.of(distances).test();
        return new FTest(
                test.f(), test.numeratorDf(), test.denominatorDf(), test.p(), "Brown–Forsythe");
    }

    /**
     * Bartlett's test: sharp for normal values, wrong for others.
     *
     * <p>χ² = ((N − k) ln s² − Σ(nᵢ − 1) ln sᵢ²)/(1 + (Σ1/(nᵢ − 1) − 1/(N − k))/(3(k − 1))), s² the
     * pooled variance. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.7.
     *
     * @throws IllegalArgumentException if there are fewer than 2 groups, one has fewer than 2
     *     values, or the values of one are all equal: its variance has no logarithm
     */
    public static Significance bartlett(double[]... groups) {
        int k = Arguments.requireAtLeast(groups.length, 2, "number of groups");
        double df = 0;
        double pooled = 0;
        double logs = 0;
        double reciprocals = 0;
        for (double[] group : groups) {
            Arguments.requireAtLeast(group.length, 2, "number of values in a group");
            double variance = Arguments.requirePositive(
                    Summary.of(group).variance(), "variance of each group");
            double own = group.length - 1;
            df += own;
            pooled += own * variance;
            logs += own * StrictMath.log(variance);
            reciprocals += 1 / own;
        }
        double correction = 1 + (reciprocals - 1 / df) / (3.0 * (k - 1));
        double statistic = Math.max(0, (df * StrictMath.log(pooled / df) - logs) / correction);
        return new Significance(
                statistic, k - 1, new ChiSquared(k - 1).above(statistic), "Bartlett");
    }
}
