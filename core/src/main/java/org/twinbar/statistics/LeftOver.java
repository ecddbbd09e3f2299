package org.twinbar.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * The share of a group that it has not happened to yet, from each time on at which some of it fell,
 * with pointwise limits, whether times are moments or lie between two looks.
 *
 * <p>Moments: {@link KaplanMeier}. Between looks: the shares of {@link Turnbull}, which leave open
 * where between them the curve falls; the limits are the lower one of the curve that falls at the
 * first look and the upper one of the curve that falls at the last, so that no order within is
 * taken for granted.
 *
 * @param falls in the order of time; none where it happened to nobody
 * @param watchedTo last time at which somebody was watched
 */
public record LeftOver(List<Fall> falls, double watchedTo) {

    /** What is left of shares that add to one but for rounding is nothing. */
    private static final double ROUNDING = 1e-9;

    /**
     * A fall of the curve.
     *
     * @param after time after which it fell (or at which, where both are the same)
     * @param until time by which it had
     * @param left share left then
     * @param low lower pointwise limit of that share
     * @param high upper pointwise limit
     */
    public record Fall(double after, double until, double left, double low, double high) {}

    public LeftOver {
        falls = List.copyOf(falls);
    }

    /**
     * The curve of one group.
     *
     * @param level of its pointwise limits, 0.95 say
     * @throws IllegalArgumentException if the group is empty, or unless 0 < level < 1
     */
    public static LeftOver of(List<Lifetime> lives, double level) {
        double watchedTo = lives.stream()
                .mapToDouble(life -> life.isCensored() ? life.after() : life.until())
                .max()
                .orElse(0);
        List<Fall> falls = lives.stream().anyMatch(Lifetime::isBetweenLooks)
                ? betweenLooks(lives, level)
                : atMoments(lives, level);
        return new LeftOver(falls, watchedTo);
    }

    private static List<Fall> atMoments(List<Lifetime> lives, double level) {
        return KaplanMeier.of(lives, level).steps().stream()
                .map(step -> new Fall(
                        step.time(), step.time(), step.survival(), step.low(), step.high()))
                .toList();
    }

    private static List<Fall> betweenLooks(List<Lifetime> lives, double level) {
        KaplanMeier first = KaplanMeier.of(HazardRatio.each(lives, HazardRatio.Look.FIRST), level);
        KaplanMeier last = KaplanMeier.of(HazardRatio.each(lives, HazardRatio.Look.LAST), level);
        List<Fall> falls = new ArrayList<>();
        double left = 1;
        for (Turnbull.Mass mass : Turnbull.of(lives).masses()) {
            if (mass.until() == Double.POSITIVE_INFINITY) {
                break;
            }
            left = Math.max(0, left - mass.share());
            double low = first.at(mass.until()).map(Estimate::low).orElse(0.0);
            double high = last.at(mass.until()).map(Estimate::high).orElse(1.0);
            falls.add(new Fall(
                    mass.after(),
                    mass.until(),
                    left < ROUNDING ? 0 : left,
                    Math.min(low, left),
                    Math.max(high, left)));
        }
        return falls;
    }
}
