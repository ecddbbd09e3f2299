package org.twinbar.statistics.assumption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.twinbar.statistics.assumption.Outliers.Side;

class AssumptionTest {

    private static final double[] VALUES = {41.2, 43.9, 40.0, 42.5, 48.3, 41.8, 42.2, 40.9};

    @Test
    void unitsChangeNothing() {
        double[] scaled = Arrays.stream(VALUES).map(value -> 3 - 250 * value).toArray();

        assertThat(Outliers.grubbs(scaled, Side.LOW, 0.05).statistic())
                .isCloseTo(Outliers.grubbs(VALUES, Side.HIGH, 0.05).statistic(), within(1e-12));
        assertThat(Normality.shapiroWilk(scaled).statistic())
                .isCloseTo(Normality.shapiroWilk(VALUES).statistic(), within(1e-12));
        assertThat(Normality.andersonDarling(scaled).statistic())
                .isCloseTo(Normality.andersonDarling(VALUES).statistic(), within(1e-11));
        assertThat(Order.trend(scaled).statistic())
                .isEqualTo(-Order.trend(VALUES).statistic());
        assertThat(Order.trend(scaled).p()).isEqualTo(Order.trend(VALUES).p());
    }

    @Test
    void equalValuesHideNothingOdd() {
        double[] equal = {5, 5, 5, 5};

        assertThat(Outliers.grubbs(equal, Side.EITHER, 0.05).isBeyondChance()).isFalse();
        assertThat(Outliers.dixon(equal, 0.05).statistic()).isZero();
        assertThat(Outliers.beyondChance(Outliers.generalized(equal, 1, 0.05))).isZero();
        assertThat(Order.trend(equal).p()).isEqualTo(1);
    }

    @Test
    void readingsThatRiseAllTheWayDrift() {
        double[] rising = {1, 2, 3, 4, 5, 6};

        assertThat(Order.trend(rising).statistic()).isEqualTo(1);
        // Two of the 720 orders, rising and falling, are as extreme.
        assertThat(Order.trend(rising).p()).isCloseTo(2 / 720.0, within(1e-15));
    }

    @Test
    void refusesWhatHasNoAnswer() {
        double[] equal = {5, 5, 5, 5, 5, 5, 5, 5};

        assertThatThrownBy(() -> Normality.shapiroWilk(equal))
                .hasMessage("Equal values have no shape; at least two must differ.");
        assertThatThrownBy(() -> Normality.andersonDarling(new double[] {1, 2, 3}))
                .hasMessage("The number of values must be at least 8, not 3.");
        assertThatThrownBy(() -> Spread.bartlett(equal, VALUES))
                .hasMessageContaining("variance of each group must be above zero");
        assertThatThrownBy(() -> Outliers.generalized(VALUES, 6, 0.05))
                .hasMessage("Among 8 values 1 to 5 odd ones can be looked for, not 6.");
        assertThatThrownBy(() -> Outliers.dixon(VALUES, 0.2)).hasMessageContaining("tabled");
        assertThatThrownBy(() -> Outliers.grubbs(new double[] {1, 2}, Side.EITHER, 0.05))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Outliers.grubbs(VALUES, Side.EITHER, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
