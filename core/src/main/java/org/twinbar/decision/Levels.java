package org.twinbar.decision;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntFunction;
import org.twinbar.statistics.Count;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Share;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.ToleranceFactor;
import org.twinbar.statistics.Weibull;
import org.twinbar.statistics.WeibullPivots;

/**
 * What a stated share of parts reaches, from the values of one group, less the errors that all of
 * them share.
 *
 * <p>The worse of two limits. Normal: x̄ − k·s, k the one-sided tolerance factor; the limit on the
 * other side is x̄ − k'·s with k' of the opposite tail. Weibull, where all values are above zero:
 * pivotal limits of the quantile. Where a specimen only held so far, or the values are yes or no,
 * the share that clears the level has exact binomial limits instead. Sources: METHODS.md I.7;
 * DESIGN.md, "The verdict rule".
 */
record Levels(Question question, double step, IntFunction<WeibullPivots> pivots) {

    /** The 95 % point of the pivots is then good to about 2 % of its size. */
    private static final int WEIBULL_TRIALS = 4_000;

    Levels(Question question, double step) {
        this(question, step, n -> simulated(n, question.seed()));
    }

    /** Returns how Weibull fits to n specimens scatter. */
    static WeibullPivots simulated(int n, long seed) {
        return WeibullPivots.simulate(n, n, WEIBULL_TRIALS, seed);
    }

    /**
     * What was found, with what its ends are held against.
     *
     * @param threshold the level in the unit of the property, or the share where shares are counted
     * @param counted whether shares are counted
     */
    record Limit(Found found, double threshold, boolean counted) {}

    Limit of(Sample sample) {
        Level level = question.level().orElseThrow();
        boolean counted = sample.observations().stream()
                .anyMatch(one -> one.observed() instanceof Observed.YesNo
                        || one.observed() instanceof Observed.AtLeast
                        || one.observed() instanceof Observed.Below
                        || one.observed() instanceof Observed.Between);
        if (counted) {
            return new Limit(share(sample, level), level.share(), true);
        }
        return new Limit(normal(sample, level), level.value(), false);
    }

    /** How many of a group clear the level, among those of which that can be told. */
    Optional<Count> clearing(Sample sample) {
        int yes = 0;
        int told = 0;
        for (Observation one : sample.observations()) {
            Optional<Boolean> clears =
                    clears(one.observed(), question.level().orElseThrow().value());
            told += clears.isPresent() ? 1 : 0;
            yes += clears.orElse(false) ? 1 : 0;
        }
        return told == 0 ? Optional.empty() : Optional.of(new Count(yes, told));
    }

    private Found share(Sample sample, Level level) {
        Optional<Count> count = clearing(sample);
        if (count.isEmpty()) {
            String reason = Wording.noValue(sample.group());
            return Found.open(
                    Effect.LEVEL, Amount.none(reason), question.confidence(), "none", reason);
        }
        return new Found(
                Effect.LEVEL,
                Amount.of(count.get().share()),
                Amount.of(Share.exactLowerLimit(count.get(), question.confidence())),
                Amount.of(Share.exactUpperLimit(count.get(), question.confidence())),
                question.confidence(),
                Amount.none(Wording.NO_SCATTER),
                "share that clears %s, exact one-sided binomial limits"
                        .formatted(Written.exact(level.value())),
                Amount.none(Wording.NO_TEST));
    }

    private Found normal(Sample sample, Level level) {
        double[] values = sample.values();
        if (values.length < 2) {
            String reason = values.length == 0
                    ? Wording.noValue(sample.group())
                    : Wording.oneSpecimen(sample.group());
            Amount seen = values.length == 0 ? Amount.none(reason) : Amount.of(values[0]);
            return Found.open(Effect.LEVEL, seen, question.confidence(), "single value", reason);
        }
        // Downwards is upwards with the scale turned round.
        double sign = question.expectation() == Expectation.LOWER ? -1 : 1;
        Summary summary = sample.summary();
        int n = values.length;
        double sd = Math.max(summary.sd(), sample.resolution(step));
        double shared = 0;
        for (String source : sample.sources()) {
            double move = sample.moveOfMean(source);
            shared += move * move;
        }
        double less = Normal.STANDARD.quantile(question.confidence()) * Math.sqrt(shared);
        double mean = sign * summary.mean();
        double reached = mean
                - ToleranceFactor.oneSided(n, level.share(), question.confidence()) * sd
                - less;
        double most = mean
                + ToleranceFactor.oneSided(n, 1 - level.share(), question.confidence()) * sd
                + less;
        double estimate = mean - Normal.STANDARD.quantile(level.share()) * sd;
        Optional<Estimate> weibull = weibull(values, sign > 0 ? 1 - level.share() : level.share());
        if (weibull.isPresent()) {
            Estimate other = weibull.get();
            reached = Math.min(reached, (sign > 0 ? other.low() : -other.high()) - less);
            most = Math.max(most, (sign > 0 ? other.high() : -other.low()) + less);
        }
        return new Found(
                Effect.LEVEL,
                Amount.of(sign * estimate),
                Amount.of(sign > 0 ? reached : -most),
                Amount.of(sign > 0 ? most : -reached),
                question.confidence(),
                Amount.of(n - 1),
                "%s limits for %s of parts, one-sided"
                        .formatted(
                                weibull.isPresent()
                                        ? "the worse of normal and Weibull"
                                        : "normal tolerance",
                                Written.percent(level.share())),
                Amount.none(Wording.NO_TEST));
    }

    /** Returns the pivotal limits of a quantile, where a Weibull distribution can be fitted. */
    private Optional<Estimate> weibull(double[] values, double below) {
        boolean positive = Arrays.stream(values).allMatch(value -> value > 0);
        if (!positive || !(Weibull.fit(values) instanceof Weibull.Fit fit)) {
            return Optional.empty();
        }
        return Optional.of(pivots.apply(values.length).quantile(fit, below, question.confidence()));
    }

    private Optional<Boolean> clears(Observed observed, double level) {
        boolean upwards = question.expectation() != Expectation.LOWER;
        if (observed instanceof Observed.YesNo word) {
            return Optional.of(word.yes());
        }
        if (observed instanceof Observed.Number number) {
            return Optional.of(upwards ? number.value() >= level : number.value() <= level);
        }
        if (observed instanceof Observed.AtLeast bound) {
            return bound.bound() >= level ? Optional.of(upwards) : Optional.empty();
        }
        if (observed instanceof Observed.Below bound) {
            return bound.bound() <= level ? Optional.of(!upwards) : Optional.empty();
        }
        if (observed instanceof Observed.Between between) {
            if (between.from() >= level) {
                return Optional.of(upwards);
            }
            return between.to() <= level ? Optional.of(!upwards) : Optional.empty();
        }
        return Optional.empty();
    }
}
