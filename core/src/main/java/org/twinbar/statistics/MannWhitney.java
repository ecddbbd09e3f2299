package org.twinbar.statistics;

import java.util.Arrays;
import java.util.Optional;

/**
 * The sum of ranks of one group among both, exact for any number of ties.
 *
 * <p>If the treatment does nothing, every choice of n_T of the N ranks was as likely. The number of
 * choices with each sum is counted by adding one rank at a time; ranks are doubled so that halves
 * from ties stay whole. Source: H. B. Mann, D. R. Whitney, On a test of whether one of two random
 * variables is stochastically larger than the other (1947), doi:10.1214/aoms/1177730491; METHODS.md
 * F.
 */
public final class MannWhitney {

    static final String METHOD = "Mann–Whitney, exact";

    /** Beyond this many values counts of choices leave the doubles' whole numbers far behind. */
    private static final int MOST_VALUES = 400;

    private MannWhitney() {}

    /**
     * The two-sided p: the share of choices whose rank sum lies as far from its middle.
     *
     * @throws IllegalArgumentException if a group is empty, has a value that isn't finite, or both
     *     together have more than 400
     */
    public static Significance twoSided(double[] treated, double[] control) {
        int[] ranks = ranks(treated, control);
        int middle = Arrays.stream(ranks).sum() * treated.length;
        long seen = seen(treated, control);
        double[] ways = ways(ranks, treated.length);
        // Twice the distance times N keeps the middle whole.
        long n = ranks.length;
        double far = 0;
        double all = 0;
        for (int sum = 0; sum < ways.length; sum++) {
            all += ways[sum];
            far += Math.abs(n * sum - middle) >= Math.abs(n * seen - middle) ? ways[sum] : 0;
        }
        return significance(treated, control, far / all, "two-sided");
    }

    /**
     * The two-sided p by the normal approximation, corrected for ties and continuity: for whoever
     * judges thousands of studies.
     *
     * <p>z = (|W − n_T(N + 1)/2| − 1/2)/√(n_T·n_C/12·(N + 1 − Σ(t³ − t)/(N(N − 1)))), W the rank
     * sum, t the sizes of ties; p is 1 where all values are equal.
     *
     * @throws IllegalArgumentException under the conditions of {@link #twoSided}
     */
    public static Significance approximate(double[] treated, double[] control) {
        int[] doubled = ranks(treated, control);
        double n = doubled.length;
        Arrays.sort(doubled);
        double ties = 0;
        for (int from = 0; from < doubled.length; ) {
            int to = from;
            while (to < doubled.length && doubled[to] == doubled[from]) {
                to++;
            }
            double size = to - from;
            ties += size * size * size - size;
            from = to;
        }
        double variance =
                treated.length * (double) control.length / 12 * (n + 1 - ties / (n * (n - 1)));
        double away = Math.abs(seen(treated, control) / 2.0 - treated.length * (n + 1) / 2) - 0.5;
        double p = variance > 0
                ? 2 * Normal.STANDARD.below(-Math.max(0, away) / Math.sqrt(variance))
                : 1;
        return significance(treated, control, p, "normal approximation, two-sided");
    }

    /** The one-sided p of a rank sum at least as large among the treated. */
    public static Significance more(double[] treated, double[] control) {
        int[] ranks = ranks(treated, control);
        long seen = seen(treated, control);
        double[] ways = ways(ranks, treated.length);
        double asLarge = 0;
        double all = 0;
        for (int sum = 0; sum < ways.length; sum++) {
            all += ways[sum];
            asLarge += sum >= seen ? ways[sum] : 0;
        }
        return significance(treated, control, asLarge / all, "more among the treated");
    }

    /**
     * The shift between the groups, its interval from the exact test inverted: the middle of all
     * pairwise differences, and the k-th from either end, k the largest number with P(U &lt; k) ≤
     * (1 − level)/2.
     *
     * <p>It moves little when one specimen is odd, and asks for no shape of scatter but the same in
     * both. Source: J. L. Hodges, E. L. Lehmann, Estimates of location based on rank tests (1963),
     * doi:10.1214/aoms/1177704172.
     *
     * @return empty where there are too few values for an interval of this level: from 3 and 3 none
     *     at 95 % exists
     * @throws IllegalArgumentException under the conditions of {@link #twoSided}, or unless 0 <
     *     level < 1
     */
    public static Optional<Estimate> shift(double[] treated, double[] control, double level) {
        ranks(treated, control);
        double tail = (1 - Arguments.requireInside(level, "level")) / 2;
        int k = pairsOff(treated.length, control.length, tail);
        if (k == 0) {
            return Optional.empty();
        }
        double[] differences = new double[treated.length * control.length];
        int at = 0;
        for (double value : treated) {
            for (double other : control) {
                differences[at++] = value - other;
            }
        }
        Summary summary = Summary.of(differences);
        Arrays.sort(differences);
        return Optional.of(new Estimate(
                summary.median(),
                differences[k - 1],
                differences[differences.length - k],
                level,
                Double.POSITIVE_INFINITY,
                treated.length + control.length,
                "Hodges–Lehmann, exact"));
    }

    /** The largest k with P(U < k) ≤ tail, U the pairs won without ties. */
    private static int pairsOff(int treated, int control, double tail) {
        int[] ranks = new int[treated + control];
        for (int i = 0; i < ranks.length; i++) {
            ranks[i] = i + 1;
        }
        double[] ways = ways(ranks, treated);
        double all = Arrays.stream(ways).sum();
        int least = treated * (treated + 1) / 2;
        double below = 0;
        int k = 0;
        while (below + ways[least + k] <= tail * all) {
            below += ways[least + k];
            k++;
        }
        return k;
    }

    private static int[] ranks(double[] treated, double[] control) {
        Arguments.requireFinite(treated, 1, "treated values");
        Arguments.requireFinite(control, 1, "control's values");
        if (treated.length + control.length > MOST_VALUES) {
            throw new IllegalArgumentException("The exact rank test takes up to " + MOST_VALUES
                    + " values, not " + (treated.length + control.length) + ".");
        }
        return MidRanks.among(treated, control).doubled();
    }

    private static long seen(double[] treated, double[] control) {
        double sum = 0;
        for (double rank : MidRanks.among(treated, control).of(treated)) {
            sum += 2 * rank;
        }
        return Math.round(sum);
    }

    /**
     * In how many ways so many of the ranks add to each sum; small ranks first, so that few sums
     * are within reach for long.
     */
    private static double[] ways(int[] ranks, int choose) {
        int[] upwards = ranks.clone();
        Arrays.sort(upwards);
        int most = Arrays.stream(upwards).sum();
        double[][] ways = new double[choose + 1][most + 1];
        ways[0][0] = 1;
        int taken = 0;
        int reach = 0;
        for (int rank : upwards) {
            taken = Math.min(choose, taken + 1);
            reach += rank;
            for (int many = taken; many > 0; many--) {
                double[] with = ways[many];
                double[] without = ways[many - 1];
                for (int sum = reach; sum >= rank; sum--) {
                    with[sum] += without[sum - rank];
                }
            }
        }
        return ways[choose];
    }

    private static Significance significance(
            double[] treated, double[] control, double p, String sides) {
        double ranks =
                Arrays.stream(MidRanks.among(treated, control).of(treated)).sum();
        double pairsWon = ranks - treated.length * (treated.length + 1) / 2.0;
        return new Significance(
                pairsWon, Double.POSITIVE_INFINITY, Math.min(1, p), METHOD + ", " + sides);
    }
}
