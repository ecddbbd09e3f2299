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
        if (question.effect() == Effect.RATE) {
            return timed(sample, question);
        }
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

    /**
     * A mean of times would take tests that ended first for events; how many it happened to is
     * shown.
     */
    private static Group timed(Sample sample, Question question) {
        int events = 0;
        int n = 0;
        for (Observation one : sample.observations()) {
            boolean told = !(one.observed() instanceof Observed.Unknown)
                    && !(one.observed() instanceof Observed.YesNo);
            n += told ? 1 : 0;
            events += told && !(one.observed() instanceof Observed.AtLeast) ? 1 : 0;
        }
        Amount none =
                Amount.none(n == 0 ? Wording.noValue(sample.group()) : Wording.TIMES_HAVE_NO_MEAN);
        Optional<Group.Tally> happened = n == 0
                ? Optional.empty()
                : Optional.of(tally("happened", new Count(events, n), question));
        return new Group(sample.group(), n, none, none, none, none, none, happened);
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
        return Optional.of(tally("yes", Shares.count(sample), question));
    }

    private static Group.Tally tally(String what, Count count, Question question) {
        Estimate share = Share.exact(count, question.confidence());
        return new Group.Tally(what, count.yes(), count.n(), share.low(), share.high());
    }
}
