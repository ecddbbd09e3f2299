package org.twinbar.decision;

import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.Power;
import org.twinbar.statistics.SampleSize;
import org.twinbar.statistics.TwoMeans;

/** What would settle an open question: specimens per group for the effect as seen. */
record Settling(Question question) {

    private static final double POWER = 0.8;

    /**
     * Returns the specimens per group until the verdict would be "supported" with a power of 80 %,
     * if the true effect and scatter are what was seen.
     */
    Needed needed(Verdict verdict, Found found, TwoMeans means) {
        if (verdict != Verdict.OPEN && verdict != Verdict.BETTER_SIZE_OPEN) {
            return new Needed.None("Nothing is open.");
        }
        if (question.expectation() == Expectation.SAME) {
            return new Needed.None(
                    "More specimens make the interval narrower; it has to fit inside the limits.");
        }
        double estimate = found.estimate().orElse(question.none());
        boolean upwards = question.expectation() == Expectation.HIGHER;
        if (upwards ? estimate <= question.worth() : estimate >= question.worth()) {
            return new Needed.None(
                    "The effect as seen lies short of what is worth having, so that no number of specimens like these would support the claim.");
        }
        return specimens(estimate, means);
    }

    private Needed specimens(double estimate, TwoMeans means) {
        double treated = means.treated().variance() * means.treated().n();
        double control = means.control().variance() * means.control().n();
        if (!(treated + control > 0)) {
            return new Needed.None(
                    "The specimens show no scatter that a number could be reckoned from.");
        }
        PlannedEffect effect;
        if (question.effect() == Effect.RATIO) {
            double mean = means.control().mean();
            double worth = question.worth();
            // The one coefficient of variation that gives this effect the same noncentrality.
            double variation = Math.sqrt((treated + worth * worth * control)
                            / (estimate * estimate + worth * worth))
                    / mean;
            effect = new PlannedEffect.Ratio(estimate, worth, variation);
        } else {
            effect = new PlannedEffect.Difference(
                    estimate, question.worth(), Math.sqrt((treated + control) / 2));
        }
        SampleSize size = Power.perGroup(effect, POWER, question.errorRate() / 2);
        return new Needed.Specimens(
                size.perGroup(), size.power(), "if the true effect and scatter are as seen");
    }
}
