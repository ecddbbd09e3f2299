package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PowerTest {

    @Test
    void aHugeEffectStillNeedsThreePerGroup() {
        SampleSize size = Power.perGroup(new PlannedEffect.Difference(100, 0, 1), 0.8, 0.025);
        assertThat(size.perGroup()).isEqualTo(3);
        assertThat(size.power()).isGreaterThan(0.999);
        assertThat(size.exact()).isEqualTo(2);
    }

    @Test
    void theSideOfTheEffectIsNothing() {
        SampleSize up = Power.perGroup(new PlannedEffect.Ratio(1.25, 1, 0.1), 0.8, 0.025);
        SampleSize down = Power.perGroup(new PlannedEffect.Ratio(0.8, 1, 0.1), 0.8, 0.025);
        assertThat(down.exact()).isCloseTo(up.exact(), within(1e-9));
        assertThat(down.smallestEffect().orElseThrow())
                .isCloseTo(1 / up.smallestEffect().orElseThrow(), within(1e-12));
    }

    @Test
    void theSmallestEffectIsFoundWithThePowerAskedFor() {
        PlannedEffect.Ratio planned = new PlannedEffect.Ratio(1.15, 1.05, 0.06);
        double smallest = Power.smallestEffect(planned, 6, 0.8, 0.025).orElseThrow();
        double power = Power.of(new PlannedEffect.Ratio(smallest, 1.05, 0.06), 6, 0.025);
        assertThat(power).isCloseTo(0.8, within(1e-10));
        PlannedEffect.Difference fall = new PlannedEffect.Difference(-5, -2, 3);
        double lowest = Power.smallestEffect(fall, 6, 0.8, 0.025).orElseThrow();
        assertThat(lowest).isLessThan(-2);
        assertThat(Power.of(new PlannedEffect.Difference(lowest, -2, 3), 6, 0.025))
                .isCloseTo(0.8, within(1e-10));
    }

    @Test
    void scatterMayHideEveryRatio() {
        assertThat(Power.smallestEffect(new PlannedEffect.Ratio(1.5, 1, 0.9), 3, 0.8, 0.025))
                .isEmpty();
    }

    @Test
    void powerRisesWithNumberAndFallsWithScatter() {
        double before = 0;
        for (double n = 2; n < 60; n += 0.5) {
            double now = Power.of(new PlannedEffect.Difference(1, 0, 1), n, 0.025);
            assertThat(now).isGreaterThan(before);
            before = now;
        }
        assertThat(Power.of(new PlannedEffect.Difference(1, 0, 2), 10, 0.025))
                .isLessThan(Power.of(new PlannedEffect.Difference(1, 0, 1), 10, 0.025));
    }

    @Test
    void anEffectThatIsTheWorthIsRefused() {
        assertThatThrownBy(() -> new PlannedEffect.Difference(2, 2, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no number of specimens");
        assertThatThrownBy(() -> new PlannedEffect.Ratio(1.1, 1, 0))
                .hasMessageContaining("coefficient of variation");
    }

    @Test
    void aTinyEffectGetsALargeNumberOrARefusal() {
        assertThat(Power.perGroup(new PlannedEffect.Difference(0.01, 0, 1), 0.8, 0.025)
                        .perGroup())
                .isBetween(156_000, 158_000);
        PlannedEffect hopeless = new PlannedEffect.Difference(1e-6, 0, 1);
        assertThatThrownBy(() -> Power.perGroup(hopeless, 0.8, 0.025))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("More than 1e8 specimens");
    }

    @Test
    void alikeCannotBeShownOutsideItsLimits() {
        double atLimit = Power.alike(new Power.Alike(-1, 1, 1), 0.1, 18, 0.05);
        assertThat(atLimit).isCloseTo(0.05, within(1e-9));
        assertThat(Power.alike(new Power.Alike(-1, 1, 0), 10, 4, 0.05)).isBetween(0.0, 0.05);
    }

    @Test
    void theUpperLimitOfAScatterLiesAboveIt() {
        // R 4.2.2: sqrt(9 / qchisq(0.2, 9))
        assertThat(StandardDeviation.upperLimit(1, 9, 0.8)).isCloseTo(1.293385, within(5e-7));
    }

    @Test
    void toleranceFactorsShrinkWithNumber() {
        for (int n = 3; n < 40; n++) {
            assertThat(ToleranceFactor.oneSided(n + 1, 0.9, 0.95))
                    .isLessThan(ToleranceFactor.oneSided(n, 0.9, 0.95));
        }
        assertThatThrownBy(() -> ToleranceFactor.oneSided(1, 0.9, 0.95))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ToleranceFactor.twoSided(5, 1, 0.95))
                .hasMessageContaining("share of parts");
    }
}
