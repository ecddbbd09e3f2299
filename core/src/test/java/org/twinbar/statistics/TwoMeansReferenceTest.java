package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.Checks;

/** Differences and ratios of two means, against R and METHODS.md. */
class TwoMeansReferenceTest {

    private final Checks checks = Checks.of(getClass());
    private final TwoMeans sleep = TwoMeans.of(Data.SLEEP_1, Data.SLEEP_2);
    private final TwoMeans w = TwoMeans.of(Data.W_TREATED, Data.W_CONTROL);

    @Test
    void welchOfSleep() {
        Significance test = Welch.twoSided(sleep, 0);
        checks.row("80-t").expects(test.statistic());
        checks.row("80-df").expects(test.df());
        checks.row("80-p").expects(test.p());
        expectsEnds("80", Welch.difference(sleep, 0.95));
    }

    @Test
    void welchOfSetW() {
        Significance test = Welch.twoSided(w, 0);
        checks.row("81-t").expects(test.statistic());
        checks.row("81-df").expects(test.df());
        checks.row("81-p").expects(test.p());
        expectsEnds("81", Welch.difference(w, 0.95));
    }

    @Test
    void fiellerOfSetW() {
        RatioInterval.Finite finite = finite(Fieller.ratio(w, 0.95));
        expectsEnds("82", finite.estimate());
        checks.row("82-g").expects(finite.g());
        checks.row("82-df").expects(finite.estimate().df());
        checks.row("82-ratio").expects(finite.value());
    }

    @Test
    void pooledFiellerOfSetW() {
        expectsEnds(
                "83",
                finite(Fieller.pooled(Data.W_TREATED, Data.W_CONTROL, 0.95)).estimate());
    }

    @Test
    void logarithmsOfSetW() {
        expectsEnds("84", LogRatio.ofMeans(w, 0.95));
        Estimate geometric = LogRatio.ofGeometricMeans(Data.W_TREATED, Data.W_CONTROL, 0.95);
        expectsEnds("85", geometric);
        checks.row("85-ratio").expects(geometric.value());
    }

    @Test
    void marginsOfSetW() {
        checks.row("88-p").expects(Welch.alike(w, 6).p());
        checks.row("88-other-p").expects(Welch.above(w, -6).p());
        expectsEnds("88", Welch.difference(w, 0.90));
        checks.row("89-t").expects(Welch.above(w, 2).statistic());
        checks.row("89-p").expects(Welch.above(w, 2).p());
    }

    /**
     * The relative standard deviation of s is √(1 − c₄²)/c₄; √(1/(2ν)) is only its approximation.
     */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 10, 20, 30})
    void uncertaintyOfAStandardDeviation(int n) {
        checks.row("161-" + n).expects(100 * StandardDeviation.relativeUncertainty(n));
    }

    private void expectsEnds(String id, Estimate estimate) {
        checks.row(id + "-low").expects(estimate.low());
        checks.row(id + "-high").expects(estimate.high());
    }

    private static RatioInterval.Finite finite(RatioInterval interval) {
        assertThat(interval).isInstanceOf(RatioInterval.Finite.class);
        return (RatioInterval.Finite) interval;
    }
}
