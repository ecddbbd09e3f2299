package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class TwoMeansTest {

    private static final MeanEstimate PLAIN = new MeanEstimate(40, 0.25, 4, 5);
    private static final MeanEstimate COATED = new MeanEstimate(46, 0.36, 4, 5);

    @Test
    void aSharedGainCancelsInTheRatioAndNotInTheDifference() {
        TwoMeans without = TwoMeans.of(COATED, PLAIN);
        TwoMeans with = new TwoMeans(
                COATED, PLAIN, List.of(new Shift(0.46, 0.40, Double.POSITIVE_INFINITY)));
        assertThat(width(Fieller.ratio(with, 0.95)))
                .isCloseTo(width(Fieller.ratio(without, 0.95)), within(2e-4));
        assertThat(with.variance(46.0 / 40)).isCloseTo(without.variance(46.0 / 40), within(1e-15));
        assertThat(with.variance(1)).isCloseTo(without.variance(1) + 0.06 * 0.06, within(1e-15));
    }

    @Test
    void aSharedZeroCancelsInTheDifferenceAndNotInTheRatio() {
        TwoMeans without = TwoMeans.of(COATED, PLAIN);
        TwoMeans with = new TwoMeans(COATED, PLAIN, List.of(new Shift(0.3, 0.3, 50)));
        assertThat(Welch.difference(with, 0.95)).isEqualTo(Welch.difference(without, 0.95));
        assertThat(width(Fieller.ratio(with, 0.95)))
                .isGreaterThan(width(Fieller.ratio(without, 0.95)));
    }

    @Test
    void anErrorOfOneGroupAloneWidensBoth() {
        TwoMeans without = TwoMeans.of(COATED, PLAIN);
        TwoMeans with = new TwoMeans(COATED, PLAIN, List.of(new Shift(0.5, 0, 8)));
        assertThat(width(Welch.difference(with, 0.95)))
                .isGreaterThan(width(Welch.difference(without, 0.95)));
        assertThat(width(Fieller.ratio(with, 0.95)))
                .isGreaterThan(width(Fieller.ratio(without, 0.95)));
    }

    @Test
    void sharedErrorsBringTheirDegreesOfFreedom() {
        TwoMeans means = new TwoMeans(
                new MeanEstimate(46, 0, 4, 5),
                new MeanEstimate(40, 0, 4, 5),
                List.of(new Shift(0.5, 0, 8)));
        assertThat(means.df(1)).isCloseTo(8, within(1e-12));
    }

    @Test
    void knownErrorsAloneLeaveTheNormalDistribution() {
        TwoMeans means = new TwoMeans(
                new MeanEstimate(46, 0, 4, 5),
                new MeanEstimate(40, 0, 4, 5),
                List.of(new Shift(1, 0, Double.POSITIVE_INFINITY)));
        Estimate difference = Welch.difference(means, 0.95);
        assertThat(difference.df()).isInfinite();
        assertThat(difference.high()).isCloseTo(6 + 1.959963984540054, within(1e-12));
    }

    @Test
    void theFiellerEndsAreWhereTheTestTurns() {
        TwoMeans means = new TwoMeans(
                COATED, PLAIN, List.of(new Shift(0.5, 0.1, 8), new Shift(-0.2, 0.3, 30)));
        Estimate estimate = ((RatioInterval.Finite) Fieller.ratio(means, 0.95)).estimate();
        assertThat(Fieller.twoSided(means, estimate.low()).p()).isCloseTo(0.05, within(1e-10));
        assertThat(Fieller.twoSided(means, estimate.high()).p()).isCloseTo(0.05, within(1e-10));
    }

    @Test
    void aDoubtfulControlLeavesTwoRaysOrTheWholeLine() {
        MeanEstimate doubtful = new MeanEstimate(1, 0.3, 4, 5);
        RatioInterval rays =
                Fieller.ratio(TwoMeans.of(new MeanEstimate(10, 0.3, 4, 5), doubtful), 0.95);
        assertThat(rays).isInstanceOfSatisfying(RatioInterval.Unbounded.class, unbounded -> {
            assertThat(unbounded.ends()).hasSize(2).isSorted();
            assertThat(unbounded.ends().get(0)).isNegative();
            assertThat(unbounded.ends().get(1)).isBetween(1.0, 10.0);
            assertThat(unbounded.g()).isGreaterThan(1);
            assertThat(unbounded.reason())
                    .startsWith("The control's mean of 1.000 is uncertain by ±1.5")
                    .contains("95 %");
        });
        MeanEstimate noise = new MeanEstimate(0.5, 0.3, 4, 5);
        RatioInterval anything = Fieller.ratio(TwoMeans.of(noise, noise), 0.95);
        assertThat(anything)
                .isInstanceOfSatisfying(
                        RatioInterval.Unbounded.class,
                        unbounded -> assertThat(unbounded.ends()).isEmpty());
    }

    @Test
    void theEndsOfTheRaysAreWhereTheTestTurns() {
        TwoMeans means =
                TwoMeans.of(new MeanEstimate(10, 0.3, 4, 5), new MeanEstimate(1, 0.3, 4, 5));
        RatioInterval.Unbounded unbounded = (RatioInterval.Unbounded) Fieller.ratio(means, 0.95);
        for (double end : unbounded.ends()) {
            assertThat(Fieller.twoSided(means, end).p()).isCloseTo(0.05, within(1e-10));
        }
        double between = (unbounded.ends().get(0) + unbounded.ends().get(1)) / 2;
        assertThat(Fieller.twoSided(means, between).p()).isLessThan(0.05);
    }

    @Test
    void refusesARatioOfMeansNotAboveZero() {
        MeanEstimate negative = new MeanEstimate(-1, 0.1, 4, 5);
        assertThatThrownBy(() -> Fieller.ratio(TwoMeans.of(COATED, negative), 0.95))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "The mean of the control in a ratio must be above zero and finite, not -1.0.");
        assertThatThrownBy(() -> Fieller.ratio(TwoMeans.of(negative, PLAIN), 0.95))
                .hasMessageContaining("treated group");
        assertThatThrownBy(() -> LogRatio.ofMeans(TwoMeans.of(negative, PLAIN), 0.95))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        LogRatio.ofGeometricMeans(new double[] {1, 0}, new double[] {1, 2}, 0.95))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void scatterBelowTheReadingStepIsNotBelieved() {
        MeanEstimate equal = MeanEstimate.of(12, 12, 12, 12, 12);
        assertThat(equal.variance()).isZero();
        assertThat(equal.withResolution(0.5)).isEqualTo(new MeanEstimate(12, 0.25, 4, 5));
        MeanEstimate wide = MeanEstimate.of(10, 12, 14);
        assertThat(wide.withResolution(0.5)).isEqualTo(wide);
        MeanEstimate fine = new MeanEstimate(12, 1.0, 1, 2);
        assertThat(fine.withResolution(0.9))
                .as("s = √2 < √3·0.9, yet s²/n is larger than u²")
                .isEqualTo(fine);
    }

    @Test
    void refusesOneSpecimenAsAMean() {
        assertThatThrownBy(() -> MeanEstimate.of(3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The number of values must be at least 2, not 1.");
    }

    @Test
    void alikeAgreesWithTheNinetyPerCentInterval() {
        TwoMeans w = TwoMeans.of(Data.W_TREATED, Data.W_CONTROL);
        double end = Welch.difference(w, 0.90).high();
        assertThat(Welch.alike(w, end * 1.0001).p()).isLessThan(0.05);
        assertThat(Welch.alike(w, end * 0.9999).p()).isGreaterThan(0.05);
    }

    @Test
    void noScatterAtAllIsCertainOrNothing() {
        TwoMeans means = TwoMeans.of(new MeanEstimate(3, 0, 4, 5), new MeanEstimate(2, 0, 2, 3));
        assertThat(Welch.twoSided(means, 1).p()).isEqualTo(1);
        assertThat(Welch.twoSided(means, 0.5).p()).isZero();
        assertThat(Welch.difference(means, 0.95).df()).isEqualTo(2);
    }

    private static double width(Estimate estimate) {
        return estimate.high() - estimate.low();
    }

    private static double width(RatioInterval interval) {
        return width(((RatioInterval.Finite) interval).estimate());
    }
}
