package org.twinbar.statistics.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.statistics.StudentT;
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

        SeveralGroups two = SeveralGroups.of(groups);
        double pooled = two.sd() * Math.sqrt(1 / 4.0 + 1 / 6.0);
        double statistic = (two.means().get(1) - two.means().get(0)) / pooled;

        assertThat(OneWay.of(groups).test().f()).isCloseTo(statistic * statistic, within(1e-9));
        assertThat(two.allPairs(0.95).get(0).p()).isCloseTo(t.twoSidedP(statistic), within(1e-9));
        assertThat(two.against(0, 0.95).get(0).p()).isCloseTo(t.twoSidedP(statistic), within(1e-9));
        assertThat(two.against(0, 0.95).get(0).difference().high())
                .isCloseTo(two.allPairs(0.95).get(0).difference().high(), within(1e-8));
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
        List<SeveralGroups.Difference> before = SeveralGroups.of(groups).against(1, 0.95);
        List<SeveralGroups.Difference> after = SeveralGroups.of(other).against(1, 0.95);
        for (int i = 0; i < 2; i++) {
            assertThat(after.get(i).difference().low())
                    .isCloseTo(1000 * before.get(i).difference().low(), within(1e-7));
            assertThat(after.get(i).p()).isCloseTo(before.get(i).p(), within(1e-9));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void intervalAndProbabilityAgree(long seed) {
        for (double[][] groups : List.of(random(seed, 4, 5, 3), random(seed + 99, 6, 6, 6, 6))) {
            SeveralGroups several = SeveralGroups.of(groups);
            for (List<SeveralGroups.Difference> all :
                    List.of(several.allPairs(0.95), several.against(0, 0.95))) {
                for (SeveralGroups.Difference one : all) {
                    assertThat(one.difference().holds(0)).isEqualTo(one.p() >= 0.05);
                }
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void balancedCellsHaveOneAnswerForEveryType(long seed) {
        double[][] groups = random(seed, 3, 3, 3, 3);
        double[][][] cells = {{groups[0], groups[1]}, {groups[2], groups[3]}};

        TwoWay analysis = TwoWay.of(cells);

        assertThat(analysis.firstTypeThree().squares())
                .isCloseTo(analysis.firstTypeTwo().squares(), within(1e-9));
        double together = analysis.firstTypeTwo().squares()
                + analysis.secondTypeTwo().squares()
                + analysis.interaction().squares();
        assertThat(together).isCloseTo(OneWay.of(groups).betweenSquares(), within(1e-9));
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
        SeveralGroups.Difference difference =
                SeveralGroups.of(fives, fives, fives).against(0, 0.95).get(0);
        assertThat(difference.p()).isEqualTo(1);
        assertThat(difference.difference().high()).isZero();
    }

    @Test
    void refusesWhatHasNoAnswer() {
        double[] fives = {5, 5, 5};
        TwoMeans equal = TwoMeans.of(fives, fives);

        assertThatThrownBy(() -> OneWay.of(fives)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OneWay.of(new double[] {1}, new double[] {2}))
                .hasMessageContaining("degrees of freedom within groups");
        assertThatThrownBy(() -> SeveralGroups.of(fives, fives).against(2, 0.95))
                .hasMessage("The control must be one of the groups 0 to 1, not 2.");
        assertThatThrownBy(() -> Interaction.ofDifferences(equal, equal, 0.95))
                .hasMessageContaining("no scatter");
        assertThatThrownBy(() -> TwoWay.of(new double[][][] {{{1}, {}}, {{1, 2}, {3}}}))
                .isInstanceOf(IllegalArgumentException.class);
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
