package org.twinbar.statistics;

/**
 * The value that a share of all parts stays below, if they scatter normally.
 *
 * <p>x̄ + z_p·s, with one-sided limits x̄ + t′(γ or 1 − γ; n − 1, z_p√n)/√n · s. "90 % of parts
 * withstand it" asks for p = 0.10 and its lower limit, the B-basis of handbooks. Source: METHODS.md
 * I.7.
 */
public final class NormalLevel {

    private NormalLevel() {}

    /**
     * The estimate with a lower and an upper limit, each one-sided.
     *
     * @param p share of parts below the value, 0.10 say
     * @param confidence of each limit alone, 0.95 say; the level of both together is 2 · confidence
     *     − 1
     * @throws IllegalArgumentException if there are fewer than 2 values or one isn't finite, or
     *     unless 0 < p < 1 and 0.5 < confidence < 1
     */
    public static Estimate quantile(double[] values, double p, double confidence) {
        Arguments.requireFinite(values, 2, "values");
        Arguments.requireInside(p, "share of parts");
        double level = bothSided(confidence);
        Summary summary = Summary.of(values);
        double root = Math.sqrt(summary.n());
        double z = Normal.STANDARD.quantile(p);
        NoncentralT pivot = new NoncentralT(summary.n() - 1, z * root);
        return new Estimate(
                summary.mean() + z * summary.sd(),
                summary.mean() + pivot.quantile(1 - confidence) / root * summary.sd(),
                summary.mean() + pivot.quantile(confidence) / root * summary.sd(),
                level,
                summary.n() - 1,
                summary.n(),
                "normal tolerance limits, each one-sided at " + Arguments.perCent(confidence));
    }

    static double bothSided(double confidence) {
        if (!(confidence > 0.5 && confidence < 1)) {
            throw Arguments.refused(
                    "The %s must lie between 0.5 and 1, not %s.", "confidence", confidence);
        }
        return 2 * confidence - 1;
    }
}
