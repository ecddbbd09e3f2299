package org.twinbar.statistics;

/**
 * The difference of two means of unequal spread.
 *
 * <p>t = (x̄_T − x̄_C)/√v, v = v_T + v_C + Σ(Δ_T − Δ_C)², with Satterthwaite's degrees of freedom.
 * Without shared errors it is Welch's test; shared errors that move both means alike add nothing.
 * Exact for no finite sample, and within a fraction of a per cent of its level from three specimens
 * per group on where the scatter is normal.
 *
 * <p>Sources: B. L. Welch, The generalization of "Student's" problem when several different
 * population variances are involved (1947), doi:10.2307/2332510; METHODS.md I.1, J.5.
 */
public final class Welch {

    static final String METHOD = "Welch, unequal spread";

    private Welch() {}

    /**
     * Treated minus control with its two-sided interval.
     *
     * @param level of the interval, 0.95 say
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static Estimate difference(TwoMeans means, double level) {
        double difference = means.treated().mean() - means.control().mean();
        double df = means.df(1);
        double half = new StudentT(df).twoSided(level) * Math.sqrt(means.variance(1));
        return new Estimate(
                difference, difference - half, difference + half, level, df, means.n(), METHOD);
    }

    /**
     * How surprising the means are if the difference is {@code none}, on both sides.
     *
     * <p>Where nothing varies at all the statistic is 0 at {@code none} and infinite elsewhere.
     */
    public static Significance twoSided(TwoMeans means, double none) {
        double df = means.df(1);
        double t = statistic(means, none);
        return new Significance(t, df, new StudentT(df).twoSidedP(t), METHOD + ", two-sided");
    }

    /**
     * How surprising the means are if the difference is at most {@code margin}: small where treated
     * is better by more.
     *
     * <p>A margin below zero asks for no more than "not worse by so much".
     */
    public static Significance above(TwoMeans means, double margin) {
        double df = means.df(1);
        double t = statistic(means, margin);
        return new Significance(t, df, new StudentT(df).above(t), METHOD + ", above a margin");
    }

    /**
     * How surprising the means are if the difference is at least {@code margin}: small where it is
     * less.
     */
    public static Significance below(TwoMeans means, double margin) {
        double df = means.df(1);
        double t = statistic(means, margin);
        return new Significance(t, df, new StudentT(df).below(t), METHOD + ", below a margin");
    }

    /**
     * How surprising the means are if the difference is {@code margin} or more on either side: the
     * larger of the two one-sided probabilities (TOST), small where both groups are alike within
     * the margin.
     *
     * <p>It is below α exactly where the interval of level 1 − 2α lies inside ±margin.
     *
     * @throws IllegalArgumentException unless margin > 0
     */
    public static Significance alike(TwoMeans means, double margin) {
        Arguments.requirePositive(margin, "margin");
        Significance fromBelow = above(means, -margin);
        Significance fromAbove = below(means, margin);
        Significance weaker = fromBelow.p() >= fromAbove.p() ? fromBelow : fromAbove;
        return new Significance(
                weaker.statistic(), weaker.df(), weaker.p(), METHOD + ", two one-sided tests");
    }

    private static double statistic(TwoMeans means, double none) {
        Arguments.requireFinite(none, "difference to test against");
        double excess = means.treated().mean() - means.control().mean() - none;
        return excess == 0 ? 0 : excess / Math.sqrt(means.variance(1));
    }
}
