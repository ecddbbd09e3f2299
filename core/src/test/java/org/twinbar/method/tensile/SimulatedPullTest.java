package org.twinbar.method.tensile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.twinbar.method.Exactly;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.curve.Toe;

/** Pulls whose truth is known, so that bias and stated uncertainty can be held against it. */
class SimulatedPullTest {

    @Test
    void findsTheTruthOfACleanCurve() {
        SimulatedPull pull = SimulatedPull.brittle().withRows(4000).withCompliance(2e-4);
        Result result = Pulled.pull(pull.readings().number(PullForm.COMPLIANCE, 2e-4));
        assertThat(Exactly.value(result, PullForm.STRENGTH))
                .isCloseTo(pull.trueForceAtBreak() / SimulatedPull.AREA, within(1e-9));
        // The law bends from the start: its mean slope between 0.05 and 0.25 % is 93.9 % of E.
        double middle = 60
                / 0.002
                * (StrictMath.exp(-2500 * 0.0005 / 60) - StrictMath.exp(-2500 * 0.0025 / 60));
        assertThat(Exactly.value(result, PullForm.MODULUS))
                .isCloseTo(middle, Percentage.withPercentage(1.5));
        assertThat(Exactly.value(result, PullForm.STRAIN_AT_BREAK)).isCloseTo(2, within(0.03));
        double perVolume = 60 * (0.02 - 60 / 2500.0 * (1 - StrictMath.exp(-2500 * 0.02 / 60)));
        double joules = perVolume * SimulatedPull.AREA * SimulatedPull.LENGTH / 1000;
        assertThat(Exactly.value(result, PullForm.ENERGY))
                .isCloseTo(joules, Percentage.withPercentage(0.5));
    }

    @Test
    void offsetYieldIsWhereTheLawCrossesTheLine() {
        SimulatedPull pull = SimulatedPull.brittle().withToe(0).withRows(4000);
        Result result = Pulled.pull(pull.readings()
                .word(PullForm.YIELD_BY, PullForm.BY_OFFSET)
                .word(Toe.CHOICE, Toe.AS_RECORDED));
        double slope = Exactly.value(result, PullForm.MODULUS);
        double low = 0.002;
        double high = 0.02;
        for (int i = 0; i < 60; i++) {
            double strain = (low + high) / 2;
            double above =
                    60 * (1 - StrictMath.exp(-2500 * strain / 60)) - slope * (strain - 0.002);
            low = above > 0 ? strain : low;
            high = above > 0 ? high : strain;
        }
        double expected = 60 * (1 - StrictMath.exp(-2500 * low / 60));
        assertThat(Exactly.value(result, PullForm.YIELD_STRENGTH))
                .isCloseTo(expected, within(1e-4));
    }

    @Test
    void noiseLiftsThePeakByLessThanItsOwnSize() {
        SimulatedPull pull = SimulatedPull.brittle().withRows(2000);
        double lifted = 0;
        for (int run = 0; run < 100; run++) {
            Result result = Pulled.pull(pull.withNoise(1, 9000 + run).readings());
            lifted += Exactly.value(result, PullForm.PEAK_FORCE_OUT) - pull.trueForceAtBreak();
        }
        assertThat(lifted / 100).isBetween(0.0, 2.0);
    }

    @Test
    void toeIsTakenOffWhateverItsSize() {
        for (double toe : new double[] {0, 0.1, 0.3, 0.5}) {
            Result result = Pulled.pull(
                    SimulatedPull.brittle().withToe(toe).withRows(3000).readings());
            assertThat(Exactly.value(result, PullForm.STRAIN_AT_BREAK))
                    .as("toe of %s mm", toe)
                    .isCloseTo(2.0, within(0.04));
        }
    }

    @Test
    void aPropertyIsTheSameForTwiceTheRows() {
        for (Property property : PullForm.DESCRIPTION.properties().subList(0, 1)) {
            double few = Exactly.value(Pulled.pull(SimulatedPull.brittle().readings()), property);
            double many = Exactly.value(
                    Pulled.pull(SimulatedPull.brittle().withRows(4000).readings()), property);
            assertThat(many).isCloseTo(few, Percentage.withPercentage(0.1));
        }
    }
}
