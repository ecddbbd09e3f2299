package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.Count;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Share;
import org.twinbar.statistics.Summary;

/** Samples as the groups that a comparison shows. */
final class Groups {

    private Groups() {}

    static Group of(Sample sample, Question question, double step) {
        double[] values = sample.values();
        if (question.effect() == Effect.SHARE || values.length == 0) {
            return counted(sample, question);
        }
        Summary summary = Summary.of(values);
        boolean alone = values.length < 2;
        Amount low = Amount.none(Wording.NO_SD);
        Amount high = low;
        if (!alone) {
            Estimate mean = sample.mean(step).interval(question.confidence());
            low = Amount.of(mean.low());
            high = Amount.of(mean.high());
        }
        return new Group(
                sample.group(),
                values.length,
                Amount.of(summary.mean()),
                alone ? Amount.none(Wording.NO_SD) : Amount.of(summary.sd()),
                Amount.of(summary.median()),
                low,
                high,
                tally(sample, question));
    }

    private static Group counted(Sample sample, Question question) {
        int n = sample.answers();
        Amount none = Amount.none(
                n == 0 ? Wording.noValue(sample.group()) : "a yes or no has no mean, but a share");
        return new Group(sample.group(), n, none, none, none, none, none, tally(sample, question));
    }

    private static Optional<Group.Tally> tally(Sample sample, Question question) {
        if (sample.answers() == 0) {
            return Optional.empty();
        }
        Count count = Shares.count(sample);
        Estimate share = Share.exact(count, question.confidence());
        return Optional.of(
                new Group.Tally("yes", count.yes(), count.n(), share.low(), share.high()));
    }
}
