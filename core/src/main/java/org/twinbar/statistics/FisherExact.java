package org.twinbar.statistics;

/**
 * Fisher's exact test of two shares.
 *
 * <p>Given all four margins of the table, the number of "yes" among the treated is hypergeometric
 * if the treatment does nothing. Source: R. A. Fisher, Statistical methods for research workers
 * (1934), section 21.02; METHODS.md E.
 */
public final class FisherExact {

    /** Tables whose probabilities differ by rounding alone count as equally probable. */
    private static final double ROUNDING = 1 + 1e-7;

    private FisherExact() {}

    /** The two-sided p: the sum over the tables that are no more probable than the one seen. */
    public static Significance twoSided(Count treated, Count control) {
        double[] weights = weights(treated, control);
        double seen = weights[treated.yes() - fewest(treated, control)];
        double sum = 0;
        double all = 0;
        for (double weight : weights) {
            all += weight;
            sum += weight <= seen * ROUNDING ? weight : 0;
        }
        return significance(treated, control, sum / all, "two-sided");
    }

    /** The one-sided p of at least so many "yes" among the treated. */
    public static Significance more(Count treated, Count control) {
        double[] weights = weights(treated, control);
        int seen = treated.yes() - fewest(treated, control);
        double sum = 0;
        double all = 0;
        for (int i = weights.length - 1; i >= 0; i--) {
            all += weights[i];
            sum += i >= seen ? weights[i] : 0;
        }
        return significance(treated, control, sum / all, "more among the treated");
    }

    private static Significance significance(Count treated, Count control, double p, String sides) {
        return new Significance(
                treated.share() - control.share(),
                Double.POSITIVE_INFINITY,
                Math.min(1, p),
                "Fisher's exact test, " + sides);
    }

    private static int fewest(Count treated, Count control) {
        return Math.max(0, treated.yes() - control.no());
    }

    /**
     * The probabilities of all tables with these margins over that of the most probable one, by the
     * ratio of each to the one before; from the middle outwards, so that large tables neither
     * overflow nor vanish as a whole.
     */
    private static double[] weights(Count treated, Count control) {
        int yes = treated.yes() + control.yes();
        int fewest = fewest(treated, control);
        int most = Math.min(treated.n(), yes);
        int mode = (int) ((treated.n() + 1L) * (yes + 1L) / (treated.n() + control.n() + 2L));
        int middle = Math.max(fewest, Math.min(most, mode));
        double[] weights = new double[most - fewest + 1];
        weights[middle - fewest] = 1;
        for (int k = middle; k < most; k++) {
            weights[k + 1 - fewest] = weights[k - fewest] * ratio(k, yes, treated.n(), control.n());
        }
        for (int k = middle; k > fewest; k--) {
            weights[k - 1 - fewest] =
                    weights[k - fewest] / ratio(k - 1, yes, treated.n(), control.n());
        }
        return weights;
    }

    private static double ratio(int k, int yes, int treated, int control) {
        return ((double) (treated - k) * (yes - k)) / ((k + 1.0) * (control - yes + k + 1.0));
    }
}
