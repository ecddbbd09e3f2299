package org.twinbar.decision;

import org.twinbar.statistics.Count;
import org.twinbar.statistics.FisherExact;
import org.twinbar.statistics.ShareDifference;

/** The difference of two shares of "yes". */
record Shares(Question question) implements Calculation {

    @Override
    public Found found(Sample treated, Sample control) {
        if (treated.answers() == 0 || control.answers() == 0) {
            String reason =
                    Wording.noValue(treated.answers() == 0 ? treated.group() : control.group());
            return Found.open(
                    Effect.SHARE, Amount.none(reason), question.confidence(), "none", reason);
        }
        Count ours = count(treated);
        Count others = count(control);
        return Founds.of(
                Effect.SHARE,
                ShareDifference.guarded(ours, others, question.confidence()),
                Amount.of(FisherExact.twoSided(ours, others).p()));
    }

    static Count count(Sample sample) {
        return new Count(sample.yes(), sample.answers());
    }
}
