package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RegressionTest {

    private static final double[] X = {0, 1, 2, 3, 4, 5, 7, 9};
    private static final double[] Y = {1.1, 2.9, 5.2, 7.1, 8.8, 11.3, 14.9, 19.2};

    @Test
    void theLineIsTheModelOfTwoColumns() {
        StraightLine line = StraightLine.of(X, Y);
        double[][] rows = new double[X.length][];
        for (int i = 0; i < X.length; i++) {
            rows[i] = new double[] {1, X[i]};
        }
        LinearFit fit = LinearFit.of(rows, Y);
        assertThat(line.intercept()).isCloseTo(fit.coefficient(0), within(1e-12));
        assertThat(line.slope()).isCloseTo(fit.coefficient(1), within(1e-12));
        assertThat(line.varianceAt(0)).isCloseTo(fit.covariance(0, 0), within(1e-14));
        assertThat(line.covariance()).isCloseTo(fit.covariance(0, 1), within(1e-14));
        assertThat(line.slope(0.95).low()).isCloseTo(fit.coefficient(1, 0.95).low(), within(1e-12));
        assertThat(line.mean(6, 0.95).high())
                .isCloseTo(fit.mean(new double[] {1, 6}, 0.95).high(), within(1e-12));
        assertThat(line.prediction(6, 0.95).low())
                .isCloseTo(fit.prediction(new double[] {1, 6}, 0.95).low(), within(1e-12));
        assertThat(line.intercept(0.95).df()).isEqualTo(6);
    }

    @Test
    void pointsOnALineAreFoundExactly() {
        StraightLine line = StraightLine.of(new double[] {1, 2, 4}, new double[] {3, 5, 9});
        assertThat(line.slope()).isCloseTo(2, within(1e-14));
        assertThat(line.intercept()).isCloseTo(1, within(1e-14));
        assertThat(line.residualSd()).isCloseTo(0, within(1e-14));
        assertThat(line.determination()).isCloseTo(1, within(1e-14));
    }

    @Test
    void aFarOriginLosesNoDigits() {
        double[] far = new double[X.length];
        for (int i = 0; i < X.length; i++) {
            far[i] = X[i] + 1e6;
        }
        StraightLine near = StraightLine.of(X, Y);
        StraightLine there = StraightLine.of(far, Y);
        assertThat(there.slope()).isCloseTo(near.slope(), within(1e-12));
        assertThat(there.varianceAt(1e6 + 6)).isCloseTo(near.varianceAt(6), within(1e-12));
    }

    @Test
    void duplicatingEveryPointNeverWidens() {
        double[] x = new double[2 * X.length];
        double[] y = new double[2 * X.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = X[i / 2];
            y[i] = Y[i / 2];
        }
        Estimate once = StraightLine.of(X, Y).slope(0.95);
        Estimate twice = StraightLine.of(x, y).slope(0.95);
        assertThat(twice.high() - twice.low()).isLessThan(once.high() - once.low());
    }

    @Test
    void refusesWhatHasNoAnswer() {
        assertThatThrownBy(() -> StraightLine.of(new double[] {2, 2, 2}, new double[] {1, 2, 3}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("All x are 2.0: no slope can be had from them.");
        assertThatThrownBy(() -> StraightLine.of(new double[] {1, 2}, new double[] {1, 2}))
                .hasMessageContaining("at least 3");
        assertThatThrownBy(() -> StraightLine.of(new double[] {1, 2, 3}, new double[] {1, 2}))
                .hasMessageContaining("3 rows of x and 2 observations");
        double[][] dependent = {{1, 2, 4}, {1, 3, 6}, {1, 5, 10}, {1, 6, 12}, {1, 8, 16}};
        assertThatThrownBy(() -> LinearFit.of(dependent, new double[] {1, 2, 3, 4, 5}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "Column 3 of the model depends on the others, so that its coefficient is open.");
        assertThatThrownBy(() -> LinearFit.of(
                        new double[][] {{1, 0}, {1, 0}, {1, 0}}, new double[] {1, 2, 3}))
                .hasMessageContaining("Column 2");
    }
}
