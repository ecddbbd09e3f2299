package org.twinbar.statistics;

import java.util.Arrays;

/**
 * The chance that a treated specimen lies above one of the control, ties counting half.
 *
 * <p>p̂ = (R̄_T − (n_T + 1)/2)/n_C; its variance is S_T²/(n_T·n_C²) + S_C²/(n_C·n_T²), S² the
 * variance of each value's rank among all less its rank among its own; Satterthwaite's degrees of
 * freedom, the ends cut at 0 and 1. Where the groups don't overlap S² is zero in both, which would
 * give an interval of no width: it is then taken with the nearest pair exchanged, the least change
 * that makes them overlap. Where all values are equal nothing is known, and the interval is the
 * whole scale.
 *
 * <p>Source: E. Brunner, U. Munzel, The nonparametric Behrens-Fisher problem (2000),
 * doi:10.1002/(SICI)1521-4036(200001)42:1<17::AID-BIMJ17>3.0.CO;2-U; METHODS.md F. Good from about
 * ten per group on; with fewer {@link #guarded} holds it at no difference where the exact test
 * does.
 */
public final class BrunnerMunzel {

    private static final String METHOD = "Brunner–Munzel";
    private static final double NONE = 0.5;

    private BrunnerMunzel() {}

    /**
     * The chance with its two-sided interval.
     *
     * @throws IllegalArgumentException if a group has fewer than 2 values or one that isn't finite,
     *     or unless 0 < level < 1
     */
    public static Estimate superiority(double[] treated, double[] control, double level) {
        Arguments.requireFinite(treated, 2, "treated values");
        Arguments.requireFinite(control, 2, "control's values");
        Arguments.requireInside(level, "level");
        double chance = chance(treated, control);
        Spread spread = Spread.of(treated, control);
        if (!(spread.variance() > 0) && (chance == 0 || chance == 1)) {
            spread = nearestPairExchanged(treated, control);
        }
        int n = treated.length + control.length;
        if (!(spread.variance() > 0)) {
            return new Estimate(
                    chance,
                    0,
                    1,
                    level,
                    Double.POSITIVE_INFINITY,
                    n,
                    METHOD + ", nothing told apart");
        }
        double half = new StudentT(spread.df()).twoSided(level) * Math.sqrt(spread.variance());
        return new Estimate(
                chance,
                Math.max(0, chance - half),
                Math.min(1, chance + half),
                level,
                spread.df(),
                n,
                METHOD);
    }

    /**
     * {@link #superiority} with an exact guard: where the exact two-sided p of the ranks is above 1
     * − level, the end nearer to no difference becomes no difference. Source: COMMANDS.md.
     */
    public static Estimate guarded(double[] treated, double[] control, double level) {
        Estimate free = superiority(treated, control, level);
        if (free.holds(NONE) || !(MannWhitney.twoSided(treated, control).p() > 1 - level)) {
            return free;
        }
        return new Estimate(
                free.value(),
                Math.min(NONE, free.low()),
                Math.max(NONE, free.high()),
                level,
                free.df(),
                free.n(),
                METHOD + ", held at no difference by the exact test of ranks");
    }

    /** How surprising the ranks are if the chance is a half, by Student's t. */
    public static Significance twoSided(double[] treated, double[] control) {
        Estimate estimate = superiority(treated, control, 0.95);
        Spread spread = Spread.of(treated, control);
        if (!(spread.variance() > 0)) {
            return MannWhitney.twoSided(treated, control);
        }
        double t = (estimate.value() - NONE) / Math.sqrt(spread.variance());
        return new Significance(
                t, spread.df(), new StudentT(spread.df()).twoSidedP(t), METHOD + ", two-sided");
    }

    private static double chance(double[] treated, double[] control) {
        double won = 0;
        for (double value : treated) {
            for (double other : control) {
                won += value > other ? 1 : value == other ? 0.5 : 0;
            }
        }
        return won / ((double) treated.length * control.length);
    }

    private static Spread nearestPairExchanged(double[] treated, double[] control) {
        double[] ours = treated.clone();
        double[] others = control.clone();
        Arrays.sort(ours);
        Arrays.sort(others);
        boolean above = ours[0] > others[others.length - 1];
        int mine = above ? 0 : ours.length - 1;
        int theirs = above ? others.length - 1 : 0;
        double kept = ours[mine];
        ours[mine] = others[theirs];
        others[theirs] = kept;
        return Spread.of(ours, others);
    }

    /** Variance of the chance and its degrees of freedom. */
    private record Spread(double variance, double df) {

        static Spread of(double[] treated, double[] control) {
            double t =
                    placements(treated, control) / treated.length / control.length / control.length;
            double c =
                    placements(control, treated) / control.length / treated.length / treated.length;
            double df = t + c > 0
                    ? (t + c)
                            * (t + c)
                            / (t * t / (treated.length - 1) + c * c / (control.length - 1))
                    : Math.min(treated.length, control.length) - 1;
            return new Spread(t + c, df);
        }

        /** The variance of rank among all less rank among its own. */
        private static double placements(double[] group, double[] other) {
            double[] among = MidRanks.among(group, other).of(group);
            double[] own = MidRanks.among(group).of(group);
            double[] placements = new double[group.length];
            for (int i = 0; i < group.length; i++) {
                placements[i] = among[i] - own[i];
            }
            return Summary.of(placements).variance();
        }
    }
}
