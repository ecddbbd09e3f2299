package org.twinbar.statistics.assumption;

import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.Summary;

/** Whether values drift or clump in the order in which they were read. */
public final class Order {

    /** Up to here the number of orders with each count of inversions is exact enough in doubles. */
    private static final int MOST_EXACT = 150;

    private Order() {}

    /**
     * Kendall's rank correlation of the values with their order: +1 where each is larger than all
     * before.
     *
     * <p>τ_b = S/√((n₀ − n₁)n₀), S rising pairs less falling ones, n₀ = n(n − 1)/2, n₁ tied pairs.
     * The two-sided p is exact without ties up to 150 values; with ties it is the normal one with
     * S's variance corrected for ties and |S| less 1 for continuity. Where all values are equal τ
     * is 0 and p 1. Source: M. G. Kendall, Rank Correlation Methods, 4th ed. 1970.
     *
     * @throws IllegalArgumentException if there are fewer than 3 values or one isn't finite
     */
    public static Significance trend(double[] values) {
        Arguments.requireFinite(values, 3, "values");
        int n = values.length;
        int score = 0;
        int ties = 0;
        double tieTerm = 0;
        for (int i = 0; i < n; i++) {
            int equal = 0;
            for (int j = 0; j < n; j++) {
                equal += values[j] == values[i] ? 1 : 0;
                if (j > i) {
                    score += values[j] > values[i] ? 1 : values[j] < values[i] ? -1 : 0;
                    ties += values[j] == values[i] ? 1 : 0;
                }
            }
            // A tie of t values is met t times, each adding (t − 1)(2t + 5).
            tieTerm += (equal - 1) * (2.0 * equal + 5);
        }
        double pairs = n * (n - 1) / 2.0;
        if (ties == pairs) {
            return new Significance(
                    0, Double.POSITIVE_INFINITY, 1, "Kendall's τ with order, all values equal");
        }
        double tau = score / Math.sqrt((pairs - ties) * pairs);
        if (ties == 0 && n <= MOST_EXACT) {
            return new Significance(
                    tau,
                    Double.POSITIVE_INFINITY,
                    exactTail(n, score),
                    "Kendall's τ with order, exact");
        }
        double variance = (n * (n - 1.0) * (2.0 * n + 5) - tieTerm) / 18;
        double z = Math.max(0, Math.abs(score) - 1) / Math.sqrt(variance);
        return new Significance(
                tau,
                Double.POSITIVE_INFINITY,
                Math.min(1, 2 * Normal.STANDARD.above(z)),
                "Kendall's τ with order, normal approximation");
    }

    /**
     * The number of runs above and below the median: few where values drift or clump, many where
     * they alternate.
     *
     * <p>Values at the median are passed over. With a above and b below, 2·C(a−1, r−1)·C(b−1, r−1)
     * of the C(a + b, a) orders have 2r runs, and C(a−1, r)·C(b−1, r−1) + C(a−1, r−1)·C(b−1, r)
     * have 2r + 1. The two-sided p is twice the smaller tail, at most 1. Source: A. Wald, J.
     * Wolfowitz, On a test whether two samples are from the same population (1940),
     * doi:10.1214/aoms/1177731909.
     *
     * @throws IllegalArgumentException if there are fewer than 3 values, one isn't finite, or none
     *     lies above and none below the median
     */
    public static Significance runs(double[] values) {
        double median = Summary.of(Arguments.requireFinite(values, 3, "values")).median();
        int above = 0;
        int below = 0;
        int runs = 0;
        int before = 0;
        for (double value : values) {
            int side = (int) Math.signum(value - median);
            if (side != 0) {
                above += side > 0 ? 1 : 0;
                below += side < 0 ? 1 : 0;
                runs += side == before ? 0 : 1;
                before = side;
            }
        }
        if (above == 0 || below == 0) {
            throw new IllegalArgumentException("Runs need values above and below the median.");
        }
        double fewer = 0;
        double more = 0;
        for (int count = 2; count <= above + below; count++) {
            double share = runsProbability(above, below, count);
            fewer += count <= runs ? share : 0;
            more += count >= runs ? share : 0;
        }
        return new Significance(
                runs,
                Double.POSITIVE_INFINITY,
                Math.min(1, 2 * Math.min(fewer, more)),
                "runs about the median, exact");
    }

    /** Share of orders of n values whose |S| is at least as large. */
    private static double exactTail(int n, int score) {
        int pairs = n * (n - 1) / 2;
        double[] share = new double[pairs + 1];
        share[0] = 1;
        for (int size = 2; size <= n; size++) {
            double[] next = new double[pairs + 1];
            int reached = size * (size - 1) / 2;
            double window = 0;
            for (int inversions = 0; inversions <= reached; inversions++) {
                window += share[inversions] - (inversions >= size ? share[inversions - size] : 0);
                next[inversions] = window / size;
            }
            share = next;
        }
        double tail = 0;
        for (int inversions = 0; inversions <= pairs; inversions++) {
            tail += Math.abs(pairs - 2 * inversions) >= Math.abs(score) ? share[inversions] : 0;
        }
        return Math.min(1, tail);
    }

    private static double runsProbability(int above, int below, int runs) {
        int half = runs / 2;
        double ways = runs % 2 == 0
                ? 2 * choose(above - 1, half - 1) * choose(below - 1, half - 1)
                : choose(above - 1, half) * choose(below - 1, half - 1)
                        + choose(above - 1, half - 1) * choose(below - 1, half);
        return ways / choose(above + below, above);
    }

    private static double choose(int n, int k) {
        double ways = k > n ? 0 : 1;
        for (int i = 1; i <= k && i <= n; i++) {
            ways = ways * (n - k + i) / i;
        }
        return ways;
    }
}
