package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.Count;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.LeftOver;
import org.twinbar.statistics.Share;
import org.twinbar.statistics.Summary;

/** Samples as the groups that a comparison shows. */
final class Groups {

    /** The product of a half that is due to rounding counts as a half. */
    private static final double HALF = 0.5 + 1e-12;

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
                tally(sample, question),
                Optional.empty());
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
        if (n == 0) {
            Amount nothing = Amount.none(Wording.noValue(sample.group()));
            return new Group(
                    sample.group(),
                    0,
                    nothing,
                    nothing,
                    nothing,
                    nothing,
                    nothing,
                    Optional.empty(),
                    Optional.empty());
        }
        Amount none = Amount.none(Wording.TIMES_HAVE_NO_MEAN);
        LeftOver leftOver = LeftOver.of(Rates.lives(sample), question.confidence());
        return new Group(
                sample.group(),
                n,
                none,
                none,
                median(leftOver, question),
                none,
                none,
                Optional.of(tally("happened", new Count(events, n), question)),
                Optional.of(leftOver));
    }

    /** The time at which half or less is left, where the readings tell one. */
    private static Amount median(LeftOver leftOver, Question question) {
        String unit = Written.unit(question.subject().unit());
        for (LeftOver.Fall fall : leftOver.falls()) {
            if (fall.left() <= HALF) {
                return fall.after() == fall.until()
                        ? Amount.of(fall.until())
                        : Amount.none("half were left between %s and %s%s, and no look tells when"
                                .formatted(
                                        Written.exact(fall.after()),
                                        Written.exact(fall.until()),
                                        unit));
            }
        }
        return Amount.none("more than half were left at %s%s, when watching ended"
                .formatted(Written.exact(leftOver.watchedTo()), unit));
    }

    private static Group counted(Sample sample, Question question) {
        int n = sample.answers();
        Amount none = Amount.none(
                n == 0 ? Wording.noValue(sample.group()) : "a yes or no has no mean, but a share");
        return new Group(
                sample.group(),
                n,
                none,
                none,
                none,
                none,
                none,
                tally(sample, question),
                Optional.empty());
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
