package org.twinbar.statistics;

import java.util.List;
import java.util.Optional;

/**
 * How much longer the treated lasted on average, up to a time that both groups were watched.
 *
 * <p>The difference of the two restricted means ({@link KaplanMeier#restrictedMeanDifference}) up
 * to the shorter of the two longest watches. Where times are known only to lie between two looks,
 * the ends are those of the orders that favour the treated least and most, the estimate that of the
 * middles. The limits are normal ones, too narrow for a few specimens; for reference beside a rate.
 *
 * @param limit time up to which means are taken
 * @param estimate mean time of the treated less that of the control
 */
public record LongerLasting(double limit, Estimate estimate) {

    private static final String BETWEEN =
            "difference of restricted means, widest over the times between looks";

    /**
     * The difference of two groups; empty where it happened to nobody before the limit, which would
     * leave two means without scatter.
     *
     * @param level of the interval, 0.95 say
     * @throws IllegalArgumentException if a group is empty, or unless 0 < level < 1
     */
    public static Optional<LongerLasting> of(
            List<Lifetime> treated, List<Lifetime> control, double level) {
        double limit = Math.min(watched(treated), watched(control));
        boolean before = treated.stream().anyMatch(life -> life.until() <= limit)
                || control.stream().anyMatch(life -> life.until() <= limit);
        if (!(limit > 0) || !before) {
            return Optional.empty();
        }
        boolean exact = treated.stream().noneMatch(Lifetime::isBetweenLooks)
                && control.stream().noneMatch(Lifetime::isBetweenLooks);
        Estimate middle = difference(
                each(treated, HazardRatio.Look.MIDDLE),
                each(control, HazardRatio.Look.MIDDLE),
                limit,
                level);
        if (exact) {
            return Optional.of(new LongerLasting(limit, middle));
        }
        Estimate worst = difference(
                each(treated, HazardRatio.Look.FIRST),
                each(control, HazardRatio.Look.LAST),
                limit,
                level);
        Estimate best = difference(
                each(treated, HazardRatio.Look.LAST),
                each(control, HazardRatio.Look.FIRST),
                limit,
                level);
        return Optional.of(new LongerLasting(
                limit,
                new Estimate(
                        middle.value(),
                        Math.min(middle.low(), worst.low()),
                        Math.max(middle.high(), best.high()),
                        level,
                        middle.df(),
                        middle.n(),
                        BETWEEN)));
    }

    /** The last time at which somebody is known to have been watched, wherever looks enclose it. */
    private static double watched(List<Lifetime> lives) {
        return lives.stream().mapToDouble(Lifetime::after).max().orElse(0);
    }

    private static Estimate difference(
            List<Lifetime> treated, List<Lifetime> control, double limit, double level) {
        return KaplanMeier.restrictedMeanDifference(
                KaplanMeier.of(treated, level), KaplanMeier.of(control, level), limit);
    }

    private static List<Lifetime> each(List<Lifetime> lives, HazardRatio.Look look) {
        return HazardRatio.each(lives, look);
    }
}
