package org.twinbar.statistics.assumption;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;

/**
 * Values that lie farther from their fellows than chance explains; named, never dropped.
 *
 * <p>Grubbs's test looks for one, the generalized extreme studentized deviate for up to a stated
 * number, which do not hide each other, Dixon's ratio compares a gap with the range.
 */
public final class Outliers {

    /** On which side an odd value is looked for. */
    public enum Side {
        EITHER,
        LOW,
        HIGH
    }

    /**
     * The farthest value and how far is too far.
     *
     * @param index its place among the values, from 0
     * @param statistic its distance, in standard deviations or as a share of the range
     * @param critical what chance exceeds at the error rate
     * @param errorRate the error rate, of one test of all values
     * @param n how many values it was compared among
     * @param method the test, in words
     */
    public record Suspect(
            int index, double statistic, double critical, double errorRate, int n, String method) {

        /** Whether it lies beyond what chance explains at the error rate. */
        public boolean isBeyondChance() {
            return statistic > critical;
        }
    }

    /** Table's columns are the two-sided error rates 10, 5 and 1 %; rows are n = 3 to 10. */
    private static final double[][] DIXON = {
        {0.941, 0.970, 0.994},
        {0.765, 0.829, 0.926},
        {0.642, 0.710, 0.821},
        {0.560, 0.625, 0.740},
        {0.507, 0.568, 0.680},
        {0.468, 0.526, 0.634},
        {0.437, 0.493, 0.598},
        {0.412, 0.466, 0.568}
    };

    private Outliers() {}

    /**
     * Grubbs's test for one odd value.
     *
     * <p>G = max|x − x̄|/s (or the one-sided distance) against (n − 1)/√n·√(t²/(n − 2 + t²)), t the
     * upper α/(2n) point, one-sided α/n, of Student's t with n − 2 degrees of freedom. Where all
     * values are equal G is 0. Two odd values may hide each other. Source: F. E. Grubbs, Procedures
     * for detecting outlying observations in samples (1969), doi:10.1080/00401706.1969.10490657.
     *
     * @throws IllegalArgumentException if there are fewer than 3 values, one isn't finite, or
     *     errorRate is not within (0, 1)
     */
    public static Suspect grubbs(double[] values, Side side, double errorRate) {
        Arguments.requireFinite(values, 3, "values");
        int n = values.length;
        return suspect(values, side, criticalGrubbs(n, side, errorRate), errorRate, "Grubbs");
    }

    /** Grubbs's critical value for n values; the formula and conditions of {@link #grubbs}. */
    public static double criticalGrubbs(int n, Side side, double errorRate) {
        Arguments.requireAtLeast(n, 3, "number of values");
        double tail = Arguments.requireInside(errorRate, "error rate")
                / (side == Side.EITHER ? 2.0 * n : n);
        double t = -new StudentT(n - 2).quantile(tail);
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    /**
     * Generalized extreme studentized deviate: up to so many odd values, on either side.
     *
     * <p>Rᵢ is Grubbs's distance after i − 1 values were set aside; λᵢ = (n − i)t/√((n − i − 1 +
     * t²)(n − i + 1)), t the upper α/(2(n − i + 1)) point with n − i − 1 degrees of freedom. As
     * many values are odd as the largest i with Rᵢ > λᵢ says; earlier steps need not exceed theirs.
     * Good from about 15 values on, tolerable from 10. Source: B. Rosner, Percentage points for a
     * generalized ESD many-outlier procedure (1983), doi:10.1080/00401706.1983.10487848.
     *
     * @return the steps, the farthest value first
     * @throws IllegalArgumentException if most < 1 or most > n − 3, a value isn't finite, or
     *     errorRate is not within (0, 1)
     */
    public static List<Suspect> generalized(double[] values, int most, double errorRate) {
        int n = Arguments.requireFinite(values, 4, "values").length;
        Arguments.requireInside(errorRate, "error rate");
        if (!(most >= 1 && most <= n - 3)) {
            throw new IllegalArgumentException("Among " + n + " values 1 to " + (n - 3)
                    + " odd ones can be looked for, not " + most + ".");
        }
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            places.add(i);
        }
        List<Suspect> steps = new ArrayList<>();
        for (int i = 1; i <= most; i++) {
            double[] left = places.stream().mapToDouble(place -> values[place]).toArray();
            double t = -new StudentT(n - i - 1).quantile(errorRate / (2.0 * (n - i + 1)));
            double critical = (n - i) * t / Math.sqrt((n - i - 1 + t * t) * (n - i + 1));
            Suspect step = suspect(left, Side.EITHER, critical, errorRate, "generalized ESD");
            int place = places.remove(step.index());
            steps.add(new Suspect(
                    place, step.statistic(), critical, errorRate, step.n(), step.method()));
        }
        return List.copyOf(steps);
    }

    /**
     * How many of the steps of {@link #generalized} are odd values: the largest step beyond chance.
     */
    public static int beyondChance(List<Suspect> steps) {
        int count = 0;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).isBeyondChance()) {
                count = i + 1;
            }
        }
        return count;
    }

    /**
     * Dixon's r₁₀ on either side: the larger gap at an end, over the range; 3 to 10 values.
     *
     * <p>Where all values are equal the ratio is 0. Critical values: D. B. Rorabacher, Statistical
     * treatment for rejection of deviant values (1991), doi:10.1021/ac00002a010, confirmed by
     * simulation within 0.003 (METHODS.md I.5).
     *
     * @param errorRate 0.10, 0.05 or 0.01, for which the critical values are tabled
     * @throws IllegalArgumentException if there are fewer than 3 or more than 10 values, one isn't
     *     finite, or the error rate is not one of the three
     */
    public static Suspect dixon(double[] values, double errorRate) {
        Arguments.requireFinite(values, 3, "values");
        int n = values.length;
        if (n > 10) {
            throw new IllegalArgumentException(
                    "Dixon's ratio r10 is for 3 to 10 values, not " + n + ".");
        }
        int column = errorRate == 0.10 ? 0 : errorRate == 0.05 ? 1 : errorRate == 0.01 ? 2 : -1;
        if (column < 0) {
            throw new IllegalArgumentException(
                    "Dixon's ratio is tabled for error rates 0.1, 0.05 and 0.01, not " + errorRate
                            + ".");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double range = sorted[n - 1] - sorted[0];
        double lowGap = sorted[1] - sorted[0];
        double highGap = sorted[n - 1] - sorted[n - 2];
        double odd = highGap >= lowGap ? sorted[n - 1] : sorted[0];
        int index = 0;
        while (values[index] != odd) {
            index++;
        }
        double ratio = range > 0 ? Math.max(lowGap, highGap) / range : 0;
        return new Suspect(index, ratio, DIXON[n - 3][column], errorRate, n, "Dixon r10");
    }

    private static Suspect suspect(
            double[] values, Side side, double critical, double errorRate, String method) {
        Summary summary = Summary.of(values);
        int index = 0;
        double farthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            double above = values[i] - summary.mean();
            double distance = switch (side) {
                case EITHER -> Math.abs(above);
                case LOW -> -above;
                case HIGH -> above;
            };
            if (distance > farthest) {
                farthest = distance;
                index = i;
            }
        }
        double sd = summary.sd();
        return new Suspect(
                index, sd > 0 ? farthest / sd : 0, critical, errorRate, values.length, method);
    }
}
