package org.twinbar.decision;

import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.Power;
import org.twinbar.statistics.SampleSize;
import org.twinbar.statistics.TwoMeans;

/** What would settle an open question: specimens per group for the effect as seen. */
record Settling(Judge judge) {

    private static final double POWER = 0.8;

    /**
     * Returns the specimens per group until the verdict would be "supported" with a power of 80 %,
     * if the true effect and scatter are what was seen.
     */
    Needed needed(Verdict verdict, Judge.Judged judged) {
        Question question = judge.question();
        if (verdict != Verdict.OPEN && verdict != Verdict.BETTER_SIZE_OPEN) {
            return new Needed.None("Nothing is open.");
        }
        if (judged.layout() == Layout.CONFOUNDED) {
            return new Needed.None("No number of specimens from these blocks would settle it.");
        }
        if (question.expectation() == Expectation.SAME) {
            return new Needed.None(
                    "More specimens make the interval narrower, until it fits inside the limits or outside.");
        }
        if (!judged.found().estimate().isKnown()) {
            return new Needed.None("Nothing was seen that a number could be reckoned from.");
        }
        double estimate = judged.found().estimate().orElse(question.none());
        boolean upwards = question.expectation() == Expectation.HIGHER;
        if (upwards ? estimate <= question.worth() : estimate >= question.worth()) {
            return new Needed.None(
                    question.worth() == question.none()
                            ? "The effect as seen doesn't go the way that is claimed: more specimens like these would not support it."
                            : "The effect as seen lies short of what is worth having: more specimens like these would not support the claim.");
        }
        boolean means = question.effect() == Effect.RATIO || question.effect() == Effect.DIFFERENCE;
        int fewest = Math.min(judged.treated().values().length, judged.control().values().length);
        return means && fewest > 1
                ? specimens(
                        estimate,
                        new Means(question, judge.step()).means(judged.treated(), judged.control()))
                : new Needed.None(
                        "No scatter is known that a number of specimens could be reckoned from.");
    }

    private Needed specimens(double estimate, TwoMeans means) {
        double treated = means.treated().variance() * means.treated().n();
        double control = means.control().variance() * means.control().n();
        if (!(treated + control > 0)) {
            return new Needed.None(
                    "The specimens show no scatter that a number could be reckoned from.");
        }
        PlannedEffect effect;
        if (judge.question().effect() == Effect.RATIO) {
            double mean = means.control().mean();
            double worth = judge.question().worth();
            // The one coefficient of variation that gives this effect the same noncentrality.
            double variation = Math.sqrt((treated + worth * worth * control)
                            / (estimate * estimate + worth * worth))
                    / mean;
            effect = new PlannedEffect.Ratio(estimate, worth, variation);
        } else {
            effect = new PlannedEffect.Difference(
                    estimate, judge.question().worth(), Math.sqrt((treated + control) / 2));
        }
        SampleSize size = Power.perGroup(effect, POWER, judge.question().errorRate() / 2);
        return new Needed.Specimens(
                size.perGroup(), size.power(), "if the true effect and scatter are as seen");
    }
}
