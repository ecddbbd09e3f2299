package org.twinbar.statistics.panel;

import java.util.Arrays;
import java.util.Optional;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.MidRanks;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.Summary;

/**
 * Wilcoxon's signed ranks of paired differences, exact for any number of ties.
 *
 * <p>V is the sum of the ranks of |d| that belong to positive differences; zeros are passed over.
 * If the treatment does nothing, each sign is as likely. Source: F. Wilcoxon, Individual
 * comparisons by ranking methods (1945), doi:10.2307/3001968; M. Hollander, D. A. Wolfe,
 * Nonparametric Statistical Methods (1973).
 */
public final class SignedRank {

    /** Beyond this the counts of sign patterns make tables that nobody waits for. */
    private static final int MOST_PAIRS = 500;

    private SignedRank() {}

    /**
     * The two-sided p: the share of sign patterns whose V lies as far from its middle.
     *
     * <p>Where all differences are zero, V is 0 and p 1.
     *
     * @throws IllegalArgumentException if there is no difference, one isn't finite, or more than
     *     500 aren't zero
     */
    public static Significance twoSided(double... differences) {
        Ranked ranked = Ranked.of(differences);
        double[] share = ranked.shares();
        double p = 0;
        int most = share.length - 1;
        for (int doubled = 0; doubled <= most; doubled++) {
            boolean asFar =
                    Math.abs(2 * doubled - most) >= Math.abs(2 * ranked.doubledSum() - most);
            p += asFar ? share[doubled] : 0;
        }
        return significance(ranked, p, "two-sided");
    }

    /** The one-sided p of a V at least as large, under the conditions of {@link #twoSided}. */
    public static Significance more(double... differences) {
        Ranked ranked = Ranked.of(differences);
        double[] share = ranked.shares();
        double p = 0;
        for (int doubled = ranked.doubledSum(); doubled < share.length; doubled++) {
            p += share[doubled];
        }
        return significance(ranked, p, "more");
    }

    /**
     * The middle of the differences, by Hodges and Lehmann: the median of the means of all pairs of
     * them, itself included, and the k-th from either end, k the largest number with P(V < k) ≤ (1
     * − level)/2 without ties.
     *
     * @return empty where there are too few differences for this level: from 5 none at 95 % exists
     * @throws IllegalArgumentException under the conditions of {@link #twoSided}, or unless 0 <
     *     level < 1
     */
    public static Optional<Estimate> shift(double[] differences, double level) {
        int n = Arguments.requireFinite(differences, 1, "differences").length;
        double tail = (1 - Arguments.requireInside(level, "level")) / 2;
        requireFew(n);
        int[] ranks = new int[n];
        for (int i = 0; i < n; i++) {
            ranks[i] = i + 1;
        }
        double[] share = new Ranked(ranks, 0).shares();
        double below = 0;
        int k = 0;
        while (below + share[k] <= tail) {
            below += share[k++];
        }
        if (k == 0) {
            return Optional.empty();
        }
        double[] means = new double[n * (n + 1) / 2];
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                means[at++] = differences[i] / 2 + differences[j] / 2;
            }
        }
        Arrays.sort(means);
        return Optional.of(new Estimate(
                Summary.of(means).median(),
                means[k - 1],
                means[means.length - k],
                level,
                Double.POSITIVE_INFINITY,
                n,
                "Hodges–Lehmann of pairs, exact"));
    }

    private static void requireFew(int pairs) {
        if (pairs > MOST_PAIRS) {
            throw new IllegalArgumentException("The exact signed-rank test takes up to "
                    + MOST_PAIRS + " pairs, not " + pairs + ".");
        }
    }

    private static Significance significance(Ranked ranked, double p, String sides) {
        return new Significance(
                ranked.doubledSum() / 2.0,
                Double.POSITIVE_INFINITY,
                Math.min(1, p),
                "signed rank, exact, " + sides);
    }

    /**
     * Ranks of the differences that aren't zero, doubled so that they are whole.
     *
     * @param ranks doubled ranks of the distances from zero
     * @param doubledSum 2V
     */
    private record Ranked(int[] ranks, int doubledSum) {

        static Ranked of(double[] differences) {
            Arguments.requireFinite(differences, 1, "differences");
            double[] moved = Arrays.stream(differences).filter(one -> one != 0).toArray();
            requireFew(moved.length);
            double[] distances = Arrays.stream(moved).map(Math::abs).toArray();
            double[] ranks = MidRanks.among(distances).of(distances);
            int[] doubled = new int[ranks.length];
            int sum = 0;
            for (int i = 0; i < doubled.length; i++) {
                doubled[i] = (int) Math.rint(2 * ranks[i]);
                sum += moved[i] > 0 ? doubled[i] : 0;
            }
            return new Ranked(doubled, sum);
        }

        /** The share of sign patterns with each sum of positive ranks. */
        double[] shares() {
            double[] shares = new double[Arrays.stream(ranks).sum() + 1];
            shares[0] = 1;
            int reached = 0;
            for (int rank : ranks) {
                reached += rank;
                for (int sum = reached; sum >= 0; sum--) {
                    shares[sum] = (shares[sum] + (sum >= rank ? shares[sum - rank] : 0)) / 2;
                }
            }
            return shares;
        }
    }
}
