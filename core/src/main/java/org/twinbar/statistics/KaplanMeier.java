package org.twinbar.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The share of specimens that it has not happened to yet, over time, where some tests ended first.
 *
 * <p>Ŝ(t) = Π(1 − dᵢ/nᵢ); Greenwood's variance Ŝ²·Σdᵢ/(nᵢ(nᵢ − dᵢ)); pointwise limits from ln(−ln
 * Ŝ), which stay within 0 and 1. Where the curve is 1 or 0 these have no width, and the exact
 * binomial limit of those at risk is taken instead.
 *
 * <p>Sources: E. L. Kaplan, P. Meier, Nonparametric estimation from incomplete observations (1958),
 * doi:10.1080/01621459.1958.10501452; METHODS.md E.
 */
public final class KaplanMeier {

    /** The product of a half that is due to rounding counts as a half. */
    private static final double HALF = 0.5 + 1e-12;

    /**
     * The curve from one event on.
     *
     * @param time of the event
     * @param atRisk specimens there just before
     * @param events specimens to which it happened
     * @param survival share left after it
     * @param standardError Greenwood's; 0 where none is left
     * @param low lower pointwise limit
     * @param high upper pointwise limit
     */
    public record Step(
            double time,
            int atRisk,
            int events,
            double survival,
            double standardError,
            double low,
            double high) {}

    /** The time by which it has happened to half. */
    public sealed interface Median {}

    /**
     * @param estimate the first time at which half or less are left; its upper end is ∞ where that
     *     was not reached
     */
    public record Reached(Estimate estimate) implements Median {}

    /**
     * More than half were left when the last test ended.
     *
     * @param followedTo longest time that was followed
     * @param low lower limit of the median; empty where that was not reached either
     */
    public record NotReached(double followedTo, OptionalDouble low) implements Median {}

    private final List<Step> steps;
    private final int n;
    private final double level;
    private final double followedTo;
    private final double z;

    private KaplanMeier(List<Step> steps, int n, double level, double followedTo, double z) {
        this.steps = List.copyOf(steps);
        this.n = n;
        this.level = level;
        this.followedTo = followedTo;
        this.z = z;
    }

    /**
     * The curve of one group.
     *
     * @param level of its pointwise limits, 0.95 say
     * @throws IllegalArgumentException if the group is empty, or a time is known only to lie
     *     between two looks ({@link Turnbull} takes those), or unless 0 < level < 1
     */
    public static KaplanMeier of(List<Lifetime> lives, double level) {
        Arguments.requireAtLeast(lives.size(), 1, "number of specimens");
        double z = Normal.STANDARD.quantile((1 + Arguments.requireInside(level, "level")) / 2);
        List<Step> steps = new ArrayList<>();
        double survival = 1;
        double greenwood = 0;
        double high = 1;
        for (RiskTable.Row row : RiskTable.of(lives, List.of())) {
            int left = row.atRisk() - row.events();
            survival = left == 0 ? 0 : survival * left / row.atRisk();
            if (left == 0) {
                double exact = Share.exact(new Count(0, row.atRisk()), level).high();
                steps.add(new Step(
                        row.time(), row.atRisk(), row.events(), 0, 0, 0, Math.min(high, exact)));
                break;
            }
            greenwood += row.events() / ((double) row.atRisk() * left);
            double factor = StrictMath.exp(z * Math.sqrt(greenwood) / StrictMath.log(survival));
            high = StrictMath.pow(survival, factor);
            double low = StrictMath.pow(survival, 1 / factor);
            steps.add(new Step(
                    row.time(),
                    row.atRisk(),
                    row.events(),
                    survival,
                    survival * Math.sqrt(greenwood),
                    low,
                    high));
        }
        double followedTo = lives.stream()
                .mapToDouble(life -> life.isCensored() ? life.after() : life.until())
                .max()
                .orElseThrow();
        return new KaplanMeier(steps, lives.size(), level, followedTo, z);
    }

    /** The curve's steps in the order of time; none where no event was seen. */
    public List<Step> steps() {
        return steps;
    }

    /**
     * The share left at a time, with pointwise limits; empty past the end of the last test, where
     * the data say nothing (unless none is left).
     *
     * @throws IllegalArgumentException unless time ≥ 0 and finite
     */
    public Optional<Estimate> at(double time) {
        Arguments.requireNotNegative(time, "time");
        Step last = null;
        for (Step step : steps) {
            if (step.time() <= time) {
                last = step;
            }
        }
        if (time > followedTo && (last == null || last.survival() > 0)) {
            return Optional.empty();
        }
        return Optional.of(
                last == null
                        ? estimate(
                                1,
                                Share.exact(new Count(n, n), level).low(),
                                1,
                                "Kaplan–Meier, exact limit")
                        : estimate(
                                last.survival(),
                                last.low(),
                                last.high(),
                                "Kaplan–Meier, limits by ln(−ln S)"));
    }

    /** The median time, or that it was not reached. */
    public Median median() {
        OptionalDouble middle = firstTimeAtHalf(Curve.ESTIMATE);
        OptionalDouble low = firstTimeAtHalf(Curve.LOW);
        if (middle.isEmpty()) {
            return new NotReached(followedTo, low);
        }
        double high = firstTimeAtHalf(Curve.HIGH).orElse(Double.POSITIVE_INFINITY);
        return new Reached(estimate(
                middle.getAsDouble(),
                low.orElse(middle.getAsDouble()),
                high,
                "Kaplan–Meier, median"));
    }

    /**
     * The mean time up to a limit, ∫₀^τ Ŝ dt.
     *
     * <p>Variance Σ(∫ from tᵢ to τ of Ŝ)²·dᵢ/(nᵢ(nᵢ − dᵢ)), normal limits cut at 0 and τ. Without
     * any event before τ it is τ, and its lower limit τ times the exact lower limit of the share
     * left.
     *
     * @param limit τ
     * @throws IllegalArgumentException unless 0 < τ, and τ is not past the end of the last test
     */
    public Estimate restrictedMean(double limit) {
        Arguments.requirePositive(limit, "limit of time");
        if (limit > followedTo
                && (steps.isEmpty() || steps.get(steps.size() - 1).survival() > 0)) {
            throw new IllegalArgumentException("The limit of time, " + limit
                    + ", lies past the end of the last test, " + followedTo + ".");
        }
        List<Step> used = steps.stream().filter(step -> step.time() < limit).toList();
        if (used.isEmpty()) {
            double low = limit * Share.exact(new Count(n, n), level).low();
            return estimate(limit, low, limit, "restricted mean, exact limit");
        }
        double after = 0;
        double variance = 0;
        for (int i = used.size() - 1; i >= 0; i--) {
            Step step = used.get(i);
            double end = i + 1 < used.size() ? used.get(i + 1).time() : limit;
            after += step.survival() * (end - step.time());
            int left = step.atRisk() - step.events();
            variance +=
                    left == 0 ? 0 : after * after * step.events() / ((double) step.atRisk() * left);
        }
        double mean = used.get(0).time() + after;
        double half = z * Math.sqrt(variance);
        return estimate(
                mean,
                Math.max(0, mean - half),
                Math.min(limit, mean + half),
                "restricted mean, Greenwood");
    }

    /**
     * How much longer the treated lasted on average up to a limit.
     *
     * <p>The limits combine those of the two means, d − √((m_T − l_T)² + (u_C − m_C)²) and likewise
     * above: the normal interval where both have one, and still of some width where a group had no
     * event.
     *
     * @throws IllegalArgumentException under the conditions of {@link #restrictedMean}, or if the
     *     levels differ
     */
    public static Estimate restrictedMeanDifference(
            KaplanMeier treated, KaplanMeier control, double limit) {
        if (treated.level != control.level) {
            throw new IllegalArgumentException("The two curves have different levels, "
                    + treated.level + " and " + control.level + ".");
        }
        Estimate t = treated.restrictedMean(limit);
        Estimate c = control.restrictedMean(limit);
        double difference = t.value() - c.value();
        double below = Math.sqrt(square(t.value() - t.low()) + square(c.high() - c.value()));
        double above = Math.sqrt(square(t.high() - t.value()) + square(c.value() - c.low()));
        return new Estimate(
                difference,
                difference - below,
                difference + above,
                treated.level,
                Double.POSITIVE_INFINITY,
                t.n() + c.n(),
                "difference of restricted means");
    }

    private enum Curve {
        LOW,
        ESTIMATE,
        HIGH;

        double of(Step step) {
            return switch (this) {
                case LOW -> step.low();
                case ESTIMATE -> step.survival();
                case HIGH -> step.high();
            };
        }
    }

    private OptionalDouble firstTimeAtHalf(Curve curve) {
        return steps.stream()
                .filter(step -> curve.of(step) <= HALF)
                .mapToDouble(Step::time)
                .findFirst();
    }

    private Estimate estimate(double value, double low, double high, String method) {
        return new Estimate(value, low, high, level, Double.POSITIVE_INFINITY, n, method);
    }

    private static double square(double x) {
        return x * x;
    }
}
