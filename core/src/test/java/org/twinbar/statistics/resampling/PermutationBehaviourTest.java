package org.twinbar.statistics.resampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.resampling.Permutation.Effect;
import org.twinbar.statistics.resampling.Permutation.Statistic;

class PermutationBehaviourTest {

    private final Permutation permutation = Permutation.seeded(3);

    @Test
    void threeAgainstThreeHasNoBoundedIntervalHoweverFarApart() {
        TwoGroups apart = TwoGroups.of(new double[] {101, 102, 103}, new double[] {1, 2, 3});

        assertThat(permutation.test(apart, Statistic.WELCH_T).pTwoSided()).isEqualTo(0.1);
        PermutationInterval interval = permutation.interval(apart, Effect.DIFFERENCE, 0.95);
        assertThat(interval.isBounded()).isFalse();
        assertThat(interval.low()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(permutation.interval(apart, Effect.RATIO, 0.95).low()).isZero();
    }

    @Test
    void equalValuesSpeakForNothing() {
        TwoGroups equal = TwoGroups.of(new double[] {5, 5, 5, 5}, new double[] {5, 5, 5, 5, 5});

        for (Statistic statistic : Statistic.values()) {
            assertThat(permutation.test(equal, statistic).pTwoSided()).isEqualTo(1);
        }
        PermutationInterval interval = permutation.interval(equal, Effect.DIFFERENCE, 0.95);
        assertThat(interval.low()).isZero();
        assertThat(interval.high()).isZero();
    }

    @Test
    void roundedReadingsTieInSpiteOfBinaryFractions() {
        TwoGroups groups = TwoGroups.of(new double[] {0.1, 0.2, 0.7}, new double[] {0.3, 0.3, 0.4});

        PermutationTest test = permutation.test(groups, Statistic.DIFFERENCE_OF_MEANS);

        assertThat(test.pTwoSided()).isEqualTo(1);
        assertThat(test.pGreater()).isGreaterThan(0.5);
    }

    @Test
    void listedSplitsNeedNoSeedAndDrawnOnesNameTheirs() {
        double[] many = new double[40];
        for (int i = 0; i < many.length; i++) {
            many[i] = i % 7 + 1;
        }
        TwoGroups large = TwoGroups.of(many, many);

        PermutationTest drawn =
                permutation.withDraws(999).test(large, Statistic.DIFFERENCE_OF_MEANS);

        assertThat(drawn.seed()).isEqualTo(OptionalLong.of(3));
        assertThat(drawn.splits()).isEqualTo(1000);
        assertThat(drawn.method()).contains("drawn");
        assertThat(permutation
                        .test(
                                TwoGroups.of(new double[] {1, 2}, new double[] {2, 3}),
                                Statistic.WELCH_T)
                        .seed())
                .isEmpty();
    }

    @Test
    void refusesWhatHasNoAnswer() {
        TwoGroups oneGroup = TwoGroups.of(new double[] {1, 2}, new double[0]);
        TwoGroups belowZero = TwoGroups.of(new double[] {1, 2}, new double[] {-1, 2});
        TwoGroups fine = belowZero.swapped();

        assertThatThrownBy(() -> permutation.test(oneGroup, Statistic.WELCH_T))
                .hasMessage("A permutation needs a block that holds both groups.");
        assertThatThrownBy(() -> permutation.test(belowZero, Statistic.LOG_RATIO_OF_MEANS))
                .hasMessage("A ratio needs values above 0, but one is -1.0.");
        assertThatThrownBy(() -> permutation.interval(fine, Effect.DIFFERENCE, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> permutation.withDraws(0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TwoGroups.of(new double[] {Double.NaN}, new double[] {1}))
                .hasMessage("The values of the treated group must be finite, but one is NaN.");
    }

    @Test
    void resamplesOfEqualValuesHaveNoWidth() {
        TwoGroups equal = TwoGroups.of(new double[] {4, 4, 4}, new double[] {2, 2, 2});

        BootstrapInterval interval =
                Bootstrap.seeded(1).twoGroups(equal, TwoGroupStatistic.RATIO_OF_MEANS, 0.95);

        assertThat(interval.low()).isEqualTo(2);
        assertThat(interval.high()).isEqualTo(2);
        assertThat(interval.acceleration()).isZero();
    }

    @Test
    void aBootstrapNeedsTwoValuesInEachGroup() {
        TwoGroups single = TwoGroups.of(new double[] {4}, new double[] {2, 3});

        assertThatThrownBy(() -> Bootstrap.seeded(1)
                        .twoGroups(single, TwoGroupStatistic.RATIO_OF_MEANS, 0.95))
                .hasMessage("Each group needs at least 2 values, but one has 1.");
        assertThatThrownBy(() -> Bootstrap.seeded(1).withResamples(10))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
