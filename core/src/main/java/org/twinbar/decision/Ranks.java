package org.twinbar.decision;

import org.twinbar.statistics.BrunnerMunzel;
import org.twinbar.statistics.MannWhitney;

/** The chance that a treated specimen lies above one of the control. */
record Ranks(Question question) implements Calculation {

    @Override
    public Found found(Sample treated, Sample control) {
        double[] ours = treated.values();
        double[] others = control.values();
        int fewest = Math.min(ours.length, others.length);
        String least = ours.length <= others.length ? treated.group() : control.group();
        if (fewest == 0) {
            String reason = Wording.noValue(least);
            return Found.open(
                    Effect.RANK, Amount.none(reason), question.confidence(), "none", reason);
        }
        if (fewest == 1) {
            return Found.open(
                    Effect.RANK,
                    Amount.of(MannWhitney.more(ours, others).statistic()
                            / ours.length
                            / others.length),
                    question.confidence(),
                    "ranks of single values",
                    Wording.oneSpecimen(least));
        }
        return Founds.of(
                Effect.RANK,
                BrunnerMunzel.guarded(ours, others, question.confidence()),
                Amount.of(MannWhitney.twoSided(ours, others).p()));
    }
}
