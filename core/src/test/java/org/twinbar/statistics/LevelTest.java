package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Limits of the value that a share of parts clears. */
class LevelTest {

    private static final double[] STRENGTHS = {
        31.2, 35.6, 38.9, 40.1, 42.3, 43.8, 45.0, 46.2, 48.7, 51.5
    };

    @Test
    void theLowerNormalLimitIsTheBBasis() {
        Summary summary = Summary.of(STRENGTHS);
        double low = NormalLevel.quantile(STRENGTHS, 0.10, 0.95).low();
        assertThat(low)
                .isCloseTo(
                        summary.mean() - ToleranceFactor.oneSided(10, 0.90, 0.95) * summary.sd(),
                        within(1e-10));
    }

    /** "At most" is "at least" upside down. */
    @Test
    void theUpperNormalLimitOfAHighShareMirrorsTheLower() {
        double[] turned = Arrays.stream(STRENGTHS).map(x -> -x).toArray();
        Estimate low = NormalLevel.quantile(STRENGTHS, 0.10, 0.95);
        Estimate high = NormalLevel.quantile(turned, 0.90, 0.95);
        assertThat(high.high()).isCloseTo(-low.low(), within(1e-9));
        assertThat(high.low()).isCloseTo(-low.high(), within(1e-9));
    }

    @Test
    void anotherUnitScalesTheLimits() {
        double[] psi = Arrays.stream(STRENGTHS).map(x -> 145.0377 * x).toArray();
        WeibullPivots pivots = WeibullPivots.simulate(10, 10, 1000, 1);
        Estimate one = pivots.quantile((Weibull.Fit) Weibull.fit(STRENGTHS), 0.10, 0.95);
        Estimate other = pivots.quantile((Weibull.Fit) Weibull.fit(psi), 0.10, 0.95);
        assertThat(other.low() / one.low()).isCloseTo(145.0377, within(1e-8));
        assertThat(other.high() / one.high()).isCloseTo(145.0377, within(1e-8));
        Estimate normal = NormalLevel.quantile(psi, 0.10, 0.95);
        assertThat(normal.low() / NormalLevel.quantile(STRENGTHS, 0.10, 0.95).low())
                .isCloseTo(145.0377, within(1e-9));
    }

    @Test
    void theSameSeedGivesTheSameLimits() {
        Weibull.Fit fit = (Weibull.Fit) Weibull.fit(STRENGTHS);
        assertThat(WeibullPivots.simulate(10, 10, 1000, 5).quantile(fit, 0.10, 0.95))
                .isEqualTo(WeibullPivots.simulate(10, 10, 1000, 5).quantile(fit, 0.10, 0.95));
    }

    /**
     * 2000 simulated studies, seed 3: 95 % of lower limits lie below the true quantile, within
     * three errors.
     */
    @Test
    void thePivotalLimitsHoldAsOftenAsTheySay() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(3);
        WeibullPivots pivots = WeibullPivots.simulate(5, 5, 10_000, 1);
        double truth = 40 * StrictMath.exp(Weibull.logOfLog(0.10) / 9);
        int below = 0;
        int above = 0;
        int studies = 2000;
        for (int study = 0; study < studies; study++) {
            double[] values = random.doubles(5)
                    .map(u -> 40 * StrictMath.pow(-StrictMath.log1p(-u), 1.0 / 9))
                    .toArray();
            Estimate estimate = pivots.quantile((Weibull.Fit) Weibull.fit(values), 0.10, 0.95);
            below += estimate.low() <= truth ? 1 : 0;
            above += estimate.high() >= truth ? 1 : 0;
        }
        double threeErrors = 3 * Math.sqrt(0.95 * 0.05 / studies);
        assertThat(below / (double) studies).isCloseTo(0.95, within(threeErrors + 0.003));
        assertThat(above / (double) studies).isCloseTo(0.95, within(threeErrors + 0.003));
    }

    @Test
    void thereIsNoFitWithoutScatterOrFailures() {
        assertThat(Weibull.fit(40, 40, 40))
                .isInstanceOfSatisfying(
                        Weibull.NoFit.class,
                        none -> assertThat(none.reason()).contains("at one value"));
        assertThat(Weibull.fit(List.of(Lifetime.event(5), Lifetime.censored(9))))
                .isEqualTo(new Weibull.NoFit(
                        "A Weibull distribution needs at least 2 failures; there is 1."));
        assertThatThrownBy(() -> Weibull.fit(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Weibull.fit(List.of(Lifetime.between(1, 2))))
                .hasMessageContaining("between 1.0 and 2.0");
    }

    @Test
    void nearlyEqualStrengthsStillFit() {
        Weibull.Fit fit = (Weibull.Fit) Weibull.fit(40, 40.0001, 40.0002);
        assertThat(fit.shape()).isBetween(1e5, 1e7);
        assertThat(fit.scale()).isBetween(40.0, 40.0003);
    }

    @Test
    void refusesAFitOfAnotherSize() {
        Weibull.Fit fit = (Weibull.Fit) Weibull.fit(STRENGTHS);
        WeibullPivots pivots = WeibullPivots.simulate(5, 5, 100, 1);
        assertThatThrownBy(() -> pivots.quantile(fit, 0.10, 0.95))
                .hasMessage("The fit has 10 failures of 10, the simulation 5 of 5.");
        assertThatThrownBy(() -> NormalLevel.quantile(STRENGTHS, 0.10, 0.5))
                .hasMessageContaining("confidence");
        assertThatThrownBy(() -> WeibullPivots.simulate(5, 1, 100, 1))
                .hasMessageContaining("number of failures");
    }
}
