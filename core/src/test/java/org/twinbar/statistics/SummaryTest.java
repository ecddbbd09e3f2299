package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SummaryTest {

    @Test
    void takesTheMiddleOfAnOddAndAnEvenNumber() {
        assertThat(Summary.of(9, 1, 4).median()).isEqualTo(4);
        assertThat(Summary.of(9, 1, 4, 5).median()).isEqualTo(4.5);
        assertThat(Summary.of(Double.MAX_VALUE, Double.MAX_VALUE).median())
                .isEqualTo(Double.MAX_VALUE);
    }

    @Test
    void givesTheEnds() {
        assertThat(Summary.of(9, 1, 4).min()).isEqualTo(1);
        assertThat(Summary.of(9, 1, 4).max()).isEqualTo(9);
    }

    @Test
    void givesTheGeometricMean() {
        assertThat(Summary.of(2, 8).geometricMean()).isCloseTo(4, within(1e-15));
        assertThatThrownBy(() -> Summary.of(2, 0).geometricMean())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("the least is 0.0");
    }

    @Test
    void hasNoScatterOfOneValue() {
        assertThat(Summary.of(3).mean()).isEqualTo(3);
        assertThatThrownBy(() -> Summary.of(3).sd()).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void equalValuesHaveExactlyNoScatter() {
        assertThat(Summary.of(0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1).sd()).isZero();
        assertThatThrownBy(() -> Summary.of(5, 5).lagOneAutocorrelation())
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void keepsItsOwnCopy() {
        double[] values = {1, 2, 3};
        Summary summary = Summary.of(values);
        values[0] = 100;
        assertThat(summary.lagOneAutocorrelation()).isZero();
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThatThrownBy(() -> Summary.of())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least 1, not 0");
        assertThatThrownBy(() -> Summary.of(1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Number 2 of the values must be finite, not NaN.");
    }
}
