package org.twinbar.statistics.assumption;

import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Significance;

/** Whether values drift in the order in which they were read. */
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
}
