package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Fieller;
import org.twinbar.statistics.RatioInterval;
import org.twinbar.statistics.Shift;
import org.twinbar.statistics.TwoMeans;
import org.twinbar.statistics.Welch;

/** The default intervals of two means: Fieller's for a ratio, Welch's for a difference. */
record Means(Question question, double step) implements Calculation {

    @Override
    public Found found(Sample treated, Sample control) {
        if (question.effect() == Effect.RATIO) {
            requireAboveZero(treated);
            requireAboveZero(control);
        }
        double[] ours = treated.values();
        double[] others = control.values();
        if (ours.length == 0 || others.length == 0) {
            return nothing(Wording.noValue(ours.length == 0 ? treated.group() : control.group()));
        }
        if (ours.length == 1 || others.length == 1) {
            return Found.open(
                    question.effect(),
                    Amount.of(
                            estimate(treated.summary().mean(), control.summary().mean())),
                    question.confidence(),
                    "difference of single values",
                    Wording.oneSpecimen(ours.length == 1 ? treated.group() : control.group()));
        }
        return found(means(treated, control));
    }

    /** Returns the effect of two means; for a ratio both are above zero. */
    Found found(TwoMeans means) {
        return question.effect() == Effect.RATIO ? ratio(means) : difference(means);
    }

    /**
     * Returns the two means with the errors that they share; both samples have two values or more.
     */
    TwoMeans means(Sample treated, Sample control) {
        Set<String> sources = new TreeSet<>(treated.sources());
        sources.addAll(control.sources());
        return means(treated, control, sources);
    }

    /** Returns the two means with the moves by these errors, in the order given. */
    TwoMeans means(Sample treated, Sample control, Set<String> sources) {
        List<Shift> shared = new ArrayList<>();
        for (String source : sources) {
            shared.add(new Shift(
                    treated.moveOfMean(source),
                    control.moveOfMean(source),
                    Double.POSITIVE_INFINITY));
        }
        return new TwoMeans(treated.mean(step), control.mean(step), shared);
    }

    private Found ratio(TwoMeans means) {
        RatioInterval interval = Fieller.ratio(means, question.confidence());
        // Equal means are a ratio of 1 and a difference of 0; the trade knows Welch's p of it.
        double p = Welch.twoSided(means, 0).p();
        if (interval instanceof RatioInterval.Finite finite) {
            return found(finite.estimate(), p);
        }
        RatioInterval.Unbounded none = (RatioInterval.Unbounded) interval;
        return new Found(
                Effect.RATIO,
                Amount.of(none.value()),
                Amount.none(none.reason()),
                Amount.none(none.reason()),
                none.level(),
                Amount.finite(none.df(), Wording.NO_SCATTER),
                none.method(),
                Amount.of(p));
    }

    private Found difference(TwoMeans means) {
        return found(
                Welch.difference(means, question.confidence()),
                Welch.twoSided(means, question.none()).p());
    }

    private Found found(Estimate estimate, double p) {
        return Founds.of(question.effect(), estimate, Amount.of(p));
    }

    private Found nothing(String reason) {
        return Found.open(
                question.effect(), Amount.none(reason), question.confidence(), "none", reason);
    }

    private double estimate(double treated, double control) {
        return question.effect() == Effect.RATIO ? treated / control : treated - control;
    }

    private void requireAboveZero(Sample sample) {
        double[] values = sample.values();
        if (values.length > 0 && !(sample.summary().mean() > 0)) {
            throw new QuestionException(
                    "The mean of %s is %s%s; a ratio needs means above zero, so compare by difference."
                            .formatted(
                                    sample.group(),
                                    Written.exact(sample.summary().mean()),
                                    Written.unit(question.subject().unit())));
        }
    }
}
