package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.Power;
import org.twinbar.statistics.SampleSize;
import org.twinbar.statistics.TwoMeans;

/** What would settle an open question: specimens per group for the effect as seen. */
record Settling(Judge judge) {

    private static final double POWER = 0.8;
    private static final int MOST_PER_GROUP = 10_000;

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
        Optional<SampleSize> size = size(judged, estimate);
        if (size.isEmpty()) {
            return new Needed.None(reasonForNone(judged));
        }
        int perGroup = size.get().perGroup();
        double simulated = new SimulatedStudies(judge, judged, estimate).supported(perGroup);
        return new Needed.Specimens(perGroup, size.get().power(), assuming(judged, simulated));
    }

    /**
     * Returns the specimens per group until the verdict would be "supported" if the true effect
     * were the claimed one; where that lies beyond what is worth having.
     */
    Optional<SampleSize> ifClaimHolds(Verdict verdict, Judge.Judged judged) {
        Question question = judge.question();
        boolean unsettled = verdict == Verdict.OPEN || verdict == Verdict.BETTER_SIZE_OPEN;
        if (!unsettled || question.claimed().isEmpty()) {
            return Optional.empty();
        }
        double claimed = question.claimed().getAsDouble();
        boolean upwards = question.expectation() == Expectation.HIGHER;
        boolean beyond = upwards ? claimed > question.worth() : claimed < question.worth();
        return beyond ? size(judged, claimed) : Optional.empty();
    }

    private static String reasonForNone(Judge.Judged judged) {
        return judged.layout() == Layout.CROSSED
                ? "How many more blocks would settle it hangs on how differently the treatment acts in them."
                : "No number of specimens can be reckoned from what was seen.";
    }

    private Optional<SampleSize> size(Judge.Judged judged, double truth) {
        Effect kind = judge.question().effect();
        int fewest = Math.min(judged.treated().values().length, judged.control().values().length);
        boolean means = kind == Effect.RATIO || kind == Effect.DIFFERENCE;
        if (!means || fewest < 2 || judged.layout() == Layout.CROSSED) {
            return Optional.empty();
        }
        Means calculation = new Means(judge.question(), judge.step());
        Optional<PlannedEffect> planned =
                planned(calculation.means(judged.treated(), judged.control()), truth);
        double alpha = judge.question().errorRate() / 2;
        // Past what anybody makes a number says no more than that there is none.
        if (planned.isEmpty() || Power.of(planned.get(), MOST_PER_GROUP, alpha) < POWER) {
            return Optional.empty();
        }
        return Optional.of(Power.perGroup(planned.get(), POWER, alpha));
    }

    private static String assuming(Judge.Judged judged, double simulated) {
        boolean units =
                judged.layout() == Layout.SEPARATE || judged.layout() == Layout.TREATED_IN_SEVERAL;
        String counted = units ? ", each block counting as one" : "";
        return "if the true effect and scatter are as seen%s (%s%s%% of studies simulated from their own scatter)"
                .formatted(counted, Written.fixed(100 * simulated, 0), Written.THIN);
    }

    private Optional<PlannedEffect> planned(TwoMeans means, double truth) {
        double treated = means.treated().variance() * means.treated().n();
        double control = means.control().variance() * means.control().n();
        double worth = judge.question().worth();
        if (!(treated + control > 0)) {
            return Optional.empty();
        }
        if (judge.question().effect() == Effect.DIFFERENCE) {
            return Optional.of(
                    new PlannedEffect.Difference(truth, worth, Math.sqrt((treated + control) / 2)));
        }
        // The one coefficient of variation that gives this effect the same noncentrality.
        double variation =
                Math.sqrt((treated + worth * worth * control) / (truth * truth + worth * worth))
                        / means.control().mean();
        return Optional.of(new PlannedEffect.Ratio(truth, worth, variation));
    }
}
