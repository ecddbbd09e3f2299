package org.twinbar.statistics.resampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.resampling.Permutation.Effect;
import org.twinbar.statistics.resampling.Permutation.Statistic;

class ResamplingLawsTest {

    private final Permutation permutation = Permutation.seeded(7).withDraws(2_000);
    private final Bootstrap bootstrap = Bootstrap.seeded(7).withResamples(20_000);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 8);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void swappingTheGroupsTurnsThePermutationIntervalRound(long seed) {
        TwoGroups groups = random(seed);

        PermutationInterval ratio = permutation.interval(groups, Effect.RATIO, 0.95);
        PermutationInterval inverse = permutation.interval(groups.swapped(), Effect.RATIO, 0.95);
        PermutationInterval difference = permutation.interval(groups, Effect.DIFFERENCE, 0.95);
        PermutationInterval opposite =
                permutation.interval(groups.swapped(), Effect.DIFFERENCE, 0.95);

        assertThat(ratio.low() * inverse.high()).isCloseTo(1, within(1e-12));
        assertThat(ratio.high() * inverse.low()).isCloseTo(1, within(1e-12));
        assertThat(difference.low() + opposite.high()).isCloseTo(0, within(1e-10));
        assertThat(difference.high() + opposite.low()).isCloseTo(0, within(1e-10));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aPermutationIntervalLeavesNoneOutExactlyWhenAOneSidedTestRejectsIt(long seed) {
        TwoGroups groups = random(seed);

        PermutationTest test = permutation.test(groups, Statistic.DIFFERENCE_OF_MEANS);
        PermutationInterval interval = permutation.interval(groups, Effect.DIFFERENCE, 0.95);

        boolean rejected = Math.min(test.pGreater(), test.pLess()) <= 0.025;
        assertThat(interval.low() > 0 || interval.high() < 0).isEqualTo(rejected);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aChangeOfUnitChangesNoShareAndScalesTheEnds(long seed) {
        TwoGroups groups = random(seed);
        TwoGroups scaled =
                TwoGroups.of(times(groups.treated(), 1024), times(groups.control(), 1024));

        for (Statistic statistic : Statistic.values()) {
            assertThat(permutation.test(scaled, statistic).pTwoSided())
                    .isEqualTo(permutation.test(groups, statistic).pTwoSided());
        }
        assertThat(permutation.interval(scaled, Effect.DIFFERENCE, 0.95).low())
                .isEqualTo(1024
                        * permutation.interval(groups, Effect.DIFFERENCE, 0.95).low());
        assertThat(bootstrap
                        .twoGroups(scaled, TwoGroupStatistic.RATIO_OF_MEANS, 0.95)
                        .low())
                .isEqualTo(bootstrap
                        .twoGroups(groups, TwoGroupStatistic.RATIO_OF_MEANS, 0.95)
                        .low());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void orderOfRowsIsNothingToAListedPermutation(long seed) {
        TwoGroups groups = random(seed);
        TwoGroups shuffled =
                TwoGroups.of(shuffled(groups.treated(), seed), shuffled(groups.control(), seed));

        for (Statistic statistic : Statistic.values()) {
            assertThat(permutation.test(shuffled, statistic).pTwoSided())
                    .isEqualTo(permutation.test(groups, statistic).pTwoSided());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aConstantLeavesDifferencesAsTheyAre(long seed) {
        TwoGroups groups = random(seed);
        TwoGroups moved = TwoGroups.of(plus(groups.treated(), 100), plus(groups.control(), 100));

        BootstrapInterval before =
                bootstrap.twoGroups(groups, TwoGroupStatistic.DIFFERENCE_OF_MEDIANS, 0.95);
        BootstrapInterval after =
                bootstrap.twoGroups(moved, TwoGroupStatistic.DIFFERENCE_OF_MEDIANS, 0.95);

        assertThat(after.low()).isCloseTo(before.low(), within(1e-10));
        assertThat(after.high()).isCloseTo(before.high(), within(1e-10));
        assertThat(permutation.interval(moved, Effect.DIFFERENCE, 0.95).low())
                .isCloseTo(
                        permutation.interval(groups, Effect.DIFFERENCE, 0.95).low(), within(1e-10));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void oneSeedGivesOneResultAndDrawnSplitsComeNearTheListedOnes(long seed) {
        TwoGroups groups = random(seed);
        Permutation drawing = Permutation.seeded(seed).withMostSplits(10).withDraws(20_000);

        PermutationTest drawn = drawing.test(groups, Statistic.WELCH_T);

        assertThat(drawing.test(groups, Statistic.WELCH_T)).isEqualTo(drawn);
        double listed = permutation.test(groups, Statistic.WELCH_T).pTwoSided();
        double error = Math.sqrt(listed * (1 - listed) / 20_000);
        assertThat(drawn.pTwoSided()).isCloseTo(listed, within(5 * error + 1e-4));
        PermutationInterval drawnEnds = drawing.interval(groups, Effect.RATIO, 0.90);
        PermutationInterval listedEnds = permutation.interval(groups, Effect.RATIO, 0.90);
        double width = listedEnds.high() - listedEnds.low();
        assertThat(drawnEnds.low()).isCloseTo(listedEnds.low(), within(0.05 * width));
        assertThat(drawnEnds.high()).isCloseTo(listedEnds.high(), within(0.05 * width));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void oneBlockIsNoBlock(long seed) {
        TwoGroups groups = random(seed);
        TwoGroups onlyTreated = TwoGroups.of(new double[] {3, 4}, new double[0]);

        for (Statistic statistic : Statistic.values()) {
            PermutationTest alone = permutation.test(groups, statistic);
            PermutationTest besideAnEmptyBlock =
                    permutation.test(List.of(groups, onlyTreated), statistic);
            assertThat(besideAnEmptyBlock.pTwoSided()).isEqualTo(alone.pTwoSided());
            assertThat(besideAnEmptyBlock.estimate()).isEqualTo(alone.estimate());
        }
    }

    private static TwoGroups random(long seed) {
        Random random = new Random(seed);
        return TwoGroups.of(
                IntStream.range(0, 5 + (int) (seed % 3))
                        .mapToDouble(i -> 31 + 2 * random.nextGaussian())
                        .toArray(),
                IntStream.range(0, 6)
                        .mapToDouble(i -> 29 + 1.5 * random.nextGaussian())
                        .toArray());
    }

    private static double[] times(double[] values, double factor) {
        return Arrays.stream(values).map(value -> factor * value).toArray();
    }

    private static double[] plus(double[] values, double constant) {
        return Arrays.stream(values).map(value -> value + constant).toArray();
    }

    private static double[] shuffled(double[] values, long seed) {
        List<Double> list = Arrays.asList(Arrays.stream(values).boxed().toArray(Double[]::new));
        Collections.shuffle(list, new Random(seed));
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
