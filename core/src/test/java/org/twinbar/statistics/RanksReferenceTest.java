package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

/** Brunner–Munzel and Mann–Whitney against published examples and R (core/src/test/R/ranks.R). */
class RanksReferenceTest {

    private final Checks checks = Checks.of(getClass());

    /** METHODS.md N.18, Brunner and Munzel (2000). */
    private static final double[] PAIN_Y = {1, 2, 1, 1, 1, 1, 1, 1, 1, 1, 2, 4, 1, 1};

    private static final double[] PAIN_N = {3, 3, 4, 3, 1, 2, 3, 1, 1, 5, 4};

    @Test
    void agreesOnPainScores() {
        Estimate estimate = BrunnerMunzel.superiority(PAIN_N, PAIN_Y, 0.95);
        Significance test = BrunnerMunzel.twoSided(PAIN_N, PAIN_Y);
        checks.row("66-chance").expects(estimate.value());
        checks.row("66-low").expects(estimate.low());
        checks.row("66-high").expects(estimate.high());
        checks.row("66-df").expects(estimate.df());
        checks.row("66-statistic").expects(test.statistic());
        checks.row("66-p").expects(test.p());
    }

    @Test
    void agreesOnPermeability() {
        double[] x = {0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46};
        double[] y = {1.15, 0.88, 0.90, 0.74, 1.21};
        Significance more = MannWhitney.more(x, y);
        checks.row("67-w").expects(more.statistic());
        checks.row("67-p").expects(more.p());
    }

    @Test
    void agreesWithRanksInR() {
        double[] x = {10.1, 11.2, 9.8, 12.4, 10.9, 11.7, 10.3};
        double[] y = {11.9, 10.6, 12.8, 13.1, 11.1, 12.2};
        Estimate shift = MannWhitney.shift(y, x, 0.95).orElseThrow();
        checks.row("hl-estimate").expects(shift.value());
        checks.row("hl-low").expects(shift.low());
        checks.row("hl-high").expects(shift.high());
        checks.row("mw-p").expects(MannWhitney.twoSided(y, x).p());
        checks.row("mw-ties-p").expects(MannWhitney.twoSided(PAIN_N, PAIN_Y).p());
    }

    @Test
    void neverHasNoWidth() {
        double[] high = {10, 11, 12, 13, 14};
        double[] low = {1, 2, 3, 4, 5};
        Estimate apart = BrunnerMunzel.guarded(high, low, 0.95);
        assertThat(apart.value()).isEqualTo(1);
        assertThat(apart.low()).isBetween(0.5, 0.95);
        assertThat(apart.high()).isEqualTo(1);
        Estimate turned = BrunnerMunzel.guarded(low, high, 0.95);
        assertThat(turned.high()).isEqualTo(1 - apart.low());
        Estimate equal = BrunnerMunzel.guarded(new double[] {2, 2}, new double[] {2, 2, 2}, 0.95);
        assertThat(equal.low()).isZero();
        assertThat(equal.high()).isEqualTo(1);
    }

    /** Three and three split by chance alone one time in ten. */
    @Test
    void cannotTellThreeFromThree() {
        Estimate apart =
                BrunnerMunzel.guarded(new double[] {7, 8, 9}, new double[] {1, 2, 3}, 0.95);
        assertThat(apart.low()).isLessThanOrEqualTo(0.5);
        assertThat(MannWhitney.shift(new double[] {7, 8, 9}, new double[] {1, 2, 3}, 0.95))
                .isEmpty();
        assertThat(MannWhitney.twoSided(new double[] {7, 8, 9}, new double[] {1, 2, 3})
                        .p())
                .isEqualTo(0.1);
    }

    @Test
    void refusesSingleValues() {
        assertThatThrownBy(() ->
                        BrunnerMunzel.superiority(new double[] {1}, new double[] {1, 2}, 0.95))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
