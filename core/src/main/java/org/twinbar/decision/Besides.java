package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Fieller;
import org.twinbar.statistics.Lifetime;
import org.twinbar.statistics.LogRatio;
import org.twinbar.statistics.LongerLasting;
import org.twinbar.statistics.RatioInterval;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.TwoMeans;
import org.twinbar.statistics.Welch;
import org.twinbar.statistics.resampling.Bootstrap;
import org.twinbar.statistics.resampling.BootstrapInterval;
import org.twinbar.statistics.resampling.Permutation;
import org.twinbar.statistics.resampling.PermutationInterval;
import org.twinbar.statistics.resampling.TwoGroupStatistic;

/** The intervals that were asked for beside the default one. */
record Besides(Question question, double step) {

    static final String RESTRICTED_MEAN = "restricted-mean";

    private static final String NEEDS_MEANS =
            "this interval compares two means, with two specimens or more in each group";

    private static final String NEEDS_ABOVE_ZERO = "a ratio needs values above zero";

    private static final String TOO_FEW_SPLITS =
            "so few specimens can be dealt into two groups in too few ways for this level";

    List<Beside> of(Judge.Judged judged) {
        List<Beside> all = new ArrayList<>();
        longer(judged).ifPresent(all::add);
        for (IntervalKind kind : question.beside()) {
            all.add(beside(kind, judged));
        }
        return all;
    }

    /** Returns how much longer the treated lasted, which people grasp sooner than a rate. */
    private Optional<Beside> longer(Judge.Judged judged) {
        if (question.effect() != Effect.RATE) {
            return Optional.empty();
        }
        List<Lifetime> ours = Rates.lives(judged.treated());
        List<Lifetime> others = Rates.lives(judged.control());
        if (ours.isEmpty() || others.isEmpty()) {
            return Optional.empty();
        }
        return LongerLasting.of(ours, others, question.confidence())
                .map(longer -> new Beside(
                        RESTRICTED_MEAN,
                        Amount.of(longer.estimate().value()),
                        Amount.of(longer.estimate().low()),
                        Amount.of(longer.estimate().high()),
                        "%s, up to %s%s"
                                .formatted(
                                        longer.estimate().method(),
                                        Written.exact(longer.limit()),
                                        Written.unit(question.subject().unit())),
                        Optional.of(question.subject().unit())));
    }

    private Beside beside(IntervalKind kind, Judge.Judged judged) {
        double[] ours = judged.treated().values();
        double[] others = judged.control().values();
        if (Math.min(ours.length, others.length) < 2) {
            return none(kind, NEEDS_MEANS);
        }
        TwoMeans means = new Means(question, step).means(judged.treated(), judged.control());
        boolean aboveZero = means.treated().mean() > 0 && means.control().mean() > 0;
        boolean ratio = question.effect() == Effect.RATIO;
        return switch (kind) {
            case WELCH -> welch(means);
            case FIELLER ->
                aboveZero ? fieller(means) : none(kind, "a ratio needs means above zero");
            case LOG ->
                aboveZero
                        ? estimate(kind, LogRatio.ofMeans(means, question.confidence()))
                        : none(kind, "a ratio needs means above zero");
            case BCA -> resampled(kind, TwoGroups.of(ours, others), ratio);
            case PERMUTATION -> permuted(kind, TwoGroups.of(ours, others), ratio);
        };
    }

    private Beside welch(TwoMeans means) {
        return estimate(IntervalKind.WELCH, Welch.difference(means, question.confidence()));
    }

    private Beside fieller(TwoMeans means) {
        RatioInterval interval = Fieller.ratio(means, question.confidence());
        if (interval instanceof RatioInterval.Finite finite) {
            return estimate(IntervalKind.FIELLER, finite.estimate());
        }
        RatioInterval.Unbounded open = (RatioInterval.Unbounded) interval;
        return new Beside(
                IntervalKind.FIELLER.word(),
                Amount.of(open.value()),
                Amount.none(open.reason()),
                Amount.none(open.reason()),
                open.method());
    }

    private Beside resampled(IntervalKind kind, TwoGroups groups, boolean ratio) {
        if (ratio && !groups.isAboveZero()) {
            return none(kind, NEEDS_ABOVE_ZERO);
        }
        BootstrapInterval interval = Bootstrap.seeded(question.seed())
                .twoGroups(
                        groups,
                        ratio
                                ? TwoGroupStatistic.RATIO_OF_MEANS
                                : TwoGroupStatistic.DIFFERENCE_OF_MEANS,
                        question.confidence());
        return new Beside(
                kind.word(),
                Amount.of(interval.estimate()),
                Amount.of(interval.low()),
                Amount.of(interval.high()),
                interval.method());
    }

    private Beside permuted(IntervalKind kind, TwoGroups groups, boolean ratio) {
        if (ratio && !groups.isAboveZero()) {
            return none(kind, NEEDS_ABOVE_ZERO);
        }
        PermutationInterval interval = Permutation.seeded(question.seed())
                .interval(
                        groups,
                        ratio ? Permutation.Effect.RATIO : Permutation.Effect.DIFFERENCE,
                        question.confidence());
        if (!interval.isBounded()) {
            Amount none = Amount.none(TOO_FEW_SPLITS);
            return new Beside(
                    kind.word(), Amount.of(interval.estimate()), none, none, interval.method());
        }
        return new Beside(
                kind.word(),
                Amount.of(interval.estimate()),
                Amount.of(interval.low()),
                Amount.of(interval.high()),
                interval.method());
    }

    private static Beside estimate(IntervalKind kind, Estimate estimate) {
        Found found = Founds.of(Effect.RATIO, estimate, Amount.none("not asked"));
        return new Beside(
                kind.word(), found.estimate(), found.low(), found.high(), estimate.method());
    }

    private static Beside none(IntervalKind kind, String reason) {
        Amount none = Amount.none(reason);
        return new Beside(kind.word(), none, none, none, kind.word());
    }
}
