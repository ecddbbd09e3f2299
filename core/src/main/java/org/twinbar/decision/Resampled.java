package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.resampling.Bootstrap;
import org.twinbar.statistics.resampling.BootstrapInterval;
import org.twinbar.statistics.resampling.Permutation;
import org.twinbar.statistics.resampling.PermutationInterval;
import org.twinbar.statistics.resampling.TwoGroupStatistic;

/**
 * Intervals from the values themselves, rearranged or drawn again, to see whether a verdict stands.
 */
record Resampled(Question question) {

    /** Enough to see whether a verdict stands, few enough not to be waited for. */
    private static final int RESAMPLES = 10_000;

    private static final int FEWEST_TO_RESAMPLE = 3;
    private static final int SPLITS = 20_000;
    private static final int DRAWS = 9_999;

    /** Returns the permutation interval; none where values of a ratio aren't above zero. */
    Optional<PermutationInterval> permutation(Judge.Judged judged) {
        Permutation quick =
                Permutation.seeded(question.seed()).withMostSplits(SPLITS).withDraws(DRAWS);
        return groups(judged).map(groups -> interval(quick, groups));
    }

    /**
     * Returns the BCa interval; none where values of a ratio aren't above zero, or a group has two:
     * a resample of two values has three means, and says nothing of the next value.
     */
    Optional<BootstrapInterval> bootstrap(Judge.Judged judged) {
        Bootstrap quick = Bootstrap.seeded(question.seed()).withResamples(RESAMPLES);
        return groups(judged)
                .filter(groups -> Math.min(groups.treatedCount(), groups.controlCount())
                        >= FEWEST_TO_RESAMPLE)
                .map(groups -> interval(quick, groups));
    }

    private PermutationInterval interval(Permutation permutation, TwoGroups groups) {
        Permutation.Effect effect = question.effect() == Effect.RATIO
                ? Permutation.Effect.RATIO
                : Permutation.Effect.DIFFERENCE;
        return permutation.interval(groups, effect, question.confidence());
    }

    private BootstrapInterval interval(Bootstrap bootstrap, TwoGroups groups) {
        TwoGroupStatistic statistic = question.effect() == Effect.RATIO
                ? TwoGroupStatistic.RATIO_OF_MEANS
                : TwoGroupStatistic.DIFFERENCE_OF_MEANS;
        return bootstrap.twoGroups(groups, statistic, question.confidence());
    }

    private Optional<TwoGroups> groups(Judge.Judged judged) {
        boolean means = question.effect() == Effect.RATIO || question.effect() == Effect.DIFFERENCE;
        double[] ours = judged.treated().values();
        double[] others = judged.control().values();
        if (!means || Math.min(ours.length, others.length) < 2) {
            return Optional.empty();
        }
        double least = Math.min(
                judged.treated().summary().min(), judged.control().summary().min());
        return question.effect() == Effect.RATIO && !(least > 0)
                ? Optional.empty()
                : Optional.of(TwoGroups.of(ours, others));
    }
}
