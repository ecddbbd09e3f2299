package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Fieller;
import org.twinbar.statistics.LogRatio;
import org.twinbar.statistics.RatioInterval;
import org.twinbar.statistics.TwoMeans;
import org.twinbar.statistics.Welch;

/** The intervals that were asked for beside the default one. */
record Besides(Question question, double step) {

    private static final String NEEDS_MEANS =
            "this interval compares two means, with two specimens or more in each group";

    List<Beside> of(Judge.Judged judged) {
        List<Beside> all = new ArrayList<>();
        for (IntervalKind kind : question.beside()) {
            all.add(beside(kind, judged));
        }
        return all;
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
            case BCA, PERMUTATION -> none(kind, NEEDS_MEANS);
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
