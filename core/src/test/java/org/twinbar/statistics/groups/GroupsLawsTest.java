package org.twinbar.statistics.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.TwoMeans;

class GroupsLawsTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 5);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twoGroupsAreStudentsT(long seed) {
        double[][] groups = random(seed, 4, 6);
        StudentT t = new StudentT(8);

        double[] sizes = {4, 6};
        OneWay analysis = OneWay.of(groups);
        double pooled = analysis.sd() * Math.sqrt(1 / sizes[0] + 1 / sizes[1]);
        double statistic = (Summary.of(groups[1]).mean() - Summary.of(groups[0]).mean()) / pooled;
        double reach = Math.abs(statistic);

        assertThat(analysis.test().f()).isCloseTo(statistic * statistic, within(1e-9));
        assertThat(new StudentizedRange(2, 8).above(reach * Math.sqrt(2)))
                .isCloseTo(t.twoSidedP(statistic), within(1e-9));
        assertThat(DunnettRange.of(4, new int[] {6}, 8).above(reach))
                .isCloseTo(t.twoSidedP(statistic), within(1e-9));
        assertThat(DunnettRange.ofVariances(1 / sizes[0], new double[] {1 / sizes[1]}, 3)
                        .withDf(8)
                        .quantile(0.95))
                .isCloseTo(t.twoSided(0.95), within(1e-8));
    }

    /** Equal variances of single specimens leave what numbers of specimens say. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void variancesInPlaceOfNumbersSayTheSame(long seed) {
        Random random = new Random(seed);
        double sd = 0.1 + 10 * random.nextDouble();
        int[] counts = {3 + random.nextInt(5), 3 + random.nextInt(5), 3 + random.nextInt(5)};
        double[] variances = Arrays.stream(counts).mapToDouble(n -> sd / n).toArray();
        double byNumbers = DunnettRange.of(5, counts, 12).below(2.4);

        assertThat(DunnettRange.ofVariances(sd / 5, variances, 12).below(2.4))
                .isCloseTo(byNumbers, within(1e-12));
        assertThatThrownBy(() -> DunnettRange.ofVariances(0, variances, 12))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void unitsAndOrderOfRowsAreNothing(long seed) {
        double[][] groups = random(seed, 4, 5, 3);
        double[][] other = Arrays.stream(groups)
                .map(group -> {
                    double[] turned = new double[group.length];
                    for (int i = 0; i < group.length; i++) {
                        turned[i] = 1000 * group[group.length - 1 - i];
                    }
                    return turned;
                })
                .toArray(double[][]::new);

        assertThat(OneWay.of(other).test().f())
                .isCloseTo(OneWay.of(groups).test().f(), within(1e-9));
    }

    @ParameterizedTest(name = "{0} groups")
    @ValueSource(ints = {2, 3, 5, 9})
    void quantileAndProbabilityAgree(int groups) {
        int[] treated = new int[groups];
        Arrays.fill(treated, 4);
        for (double df : new double[] {1.3, 4, 17.5}) {
            StudentizedRange range = new StudentizedRange(groups, df);
            assertThat(range.above(range.quantile(0.95))).isCloseTo(0.05, within(1e-9));
            DunnettRange dunnett = DunnettRange.of(4, treated, df);
            assertThat(dunnett.above(dunnett.quantile(0.95))).isCloseTo(0.05, within(1e-9));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void swappingPlacesTurnsAnInteractionRound(long seed) {
        double[][] groups = random(seed, 4, 3, 5, 4);
        TwoMeans here = TwoMeans.of(groups[0], groups[1]);
        TwoMeans there = TwoMeans.of(groups[2], groups[3]);

        assertThat(Interaction.ofDifferences(here, there, 0.9).low())
                .isCloseTo(-Interaction.ofDifferences(there, here, 0.9).high(), within(1e-10));
        assertThat(Interaction.ofRatios(here, there, 0.9).low()
                        * Interaction.ofRatios(there, here, 0.9).high())
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void equalValuesDifferInNothing() {
        double[] fives = {5, 5, 5};

        assertThat(OneWay.of(fives, fives).test().p()).isEqualTo(1);
    }

    @Test
    void refusesWhatHasNoAnswer() {
        double[] fives = {5, 5, 5};
        TwoMeans equal = TwoMeans.of(fives, fives);

        assertThatThrownBy(() -> OneWay.of(fives)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OneWay.of(new double[] {1}, new double[] {2}))
                .hasMessageContaining("degrees of freedom within groups");
        assertThatThrownBy(() -> Interaction.ofDifferences(equal, equal, 0.95))
                .hasMessageContaining("no scatter");
        assertThatThrownBy(() -> new StudentizedRange(3, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DunnettRange.of(3, new int[0], 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Holm.adjusted(0.5, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double[][] random(long seed, int... counts) {
        Random random = new Random(seed);
        return Arrays.stream(counts)
                .mapToObj(count -> random.doubles(count, 40, 50).toArray())
                .toArray(double[][]::new);
    }
}
