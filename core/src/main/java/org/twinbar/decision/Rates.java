package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.statistics.HazardRatio;
import org.twinbar.statistics.Lifetime;

/**
 * How much faster it happens to the treated: the hazard ratio, where tests may have ended first.
 */
record Rates(Question question) implements Calculation {

    @Override
    public Found found(Sample treated, Sample control) {
        List<Lifetime> ours = lives(treated);
        List<Lifetime> others = lives(control);
        if (ours.isEmpty() || others.isEmpty()) {
            String reason = Wording.noValue(ours.isEmpty() ? treated.group() : control.group());
            return Found.open(
                    Effect.RATE, Amount.none(reason), question.confidence(), "none", reason);
        }
        HazardRatio ratio = HazardRatio.of(ours, others, question.confidence());
        if (ratio instanceof HazardRatio.Known known) {
            return Founds.of(
                    Effect.RATE, known.estimate(), Amount.of(known.test().p()));
        }
        String reason = ((HazardRatio.Unknown) ratio).reason();
        return Found.open(
                Effect.RATE, Amount.none(reason), question.confidence(), "hazard ratio", reason);
    }

    /**
     * Returns when it happened to each, as far as that was seen; what has no time at all has no
     * say.
     */
    static List<Lifetime> lives(Sample sample) {
        List<Lifetime> lives = new ArrayList<>();
        for (Observation one : sample.observations()) {
            Observed observed = one.observed();
            if (observed instanceof Observed.Number number) {
                lives.add(Lifetime.event(time(one, number.value())));
            } else if (observed instanceof Observed.AtLeast bound) {
                lives.add(Lifetime.censored(time(one, bound.bound())));
            } else if (observed instanceof Observed.Between looks) {
                lives.add(Lifetime.between(time(one, looks.from()), looks.to()));
            } else if (observed instanceof Observed.Below bound) {
                lives.add(Lifetime.between(0, time(one, bound.bound())));
            }
        }
        return lives;
    }

    private static double time(Observation one, double time) {
        if (!(time >= 0)) {
            throw new QuestionException("The time of %s is %s; a rate needs times of zero or more."
                    .formatted(one.specimen(), Written.exact(time)));
        }
        return time;
    }
}
