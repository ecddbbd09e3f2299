package org.twinbar.method.tensile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.curve.Toe;
import org.twinbar.quantity.Quantity;

/** Pulls whose truth is known, so that bias and stated uncertainty can be held against it. */
class SimulatedPullTest {

    private static final int RUNS = 300;

    /** 95 % of 300 runs are 285; the binomial's own 99.9 % range is 273 to 296. */
    private static final int FEWEST_COVERED = 273;

    private static final int MOST_COVERED = 296;

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
    void statedUncertaintyOfAStrengthCoversTheTruthAsOftenAsItSays() {
        int covered = 0;
        double bias = 0;
        double truth = 30;
        Random random = new Random(1000);
        for (int run = 0; run < RUNS; run++) {
            Bench bench = Exactly.bench()
                    .withGain("load cell", 0.005)
                    .withZero("load cell", Quantity.parse("2 N"))
                    .withResolution("load cell", Quantity.parse("5 N"))
                    .withZero("caliper", Quantity.parse("0.02 mm"))
                    .withResolution("caliper", Quantity.parse("0.05 mm"));
            double caliper = 0.02 * random.nextGaussian();
            double width = 9.5 + random.nextDouble();
            double thickness = 3.5 + random.nextDouble();
            double exact = truth * width * thickness;
            double force = exact * (1 + 0.005 * random.nextGaussian()) + 2 * random.nextGaussian();
            Result result = Pulled.pull(Pulled.bar(
                            rounded(width + caliper, 0.05),
                            rounded(thickness + caliper, 0.05),
                            bench)
                    .number(PullForm.PEAK_FORCE, rounded(force, 5)));
            double off = Exactly.value(result, PullForm.STRENGTH) - truth;
            bias += off / RUNS;
            covered += Math.abs(off) <= 1.96 * Exactly.u(result, PullForm.STRENGTH) ? 1 : 0;
        }
        assertThat(covered).as("of %s, seed 1000", RUNS).isBetween(FEWEST_COVERED, MOST_COVERED);
        assertThat(bias / truth).isCloseTo(0, within(0.002));
    }

    @Test
    void statedUncertaintyOfAModulusCoversTheTruthAsOftenAsItSays() {
        double truth = modulus(SimulatedPull.brittle().withToe(0).withRows(900).readings());
        int covered = 0;
        double bias = 0;
        for (int run = 0; run < RUNS; run++) {
            Readings.Builder noisy = SimulatedPull.brittle()
                    .withToe(0)
                    .withRows(900)
                    .withNoise(2, 5000 + run)
                    .readings();
            Result result = Pulled.pull(noisy.word(Toe.CHOICE, Toe.AS_RECORDED));
            double off = Exactly.value(result, PullForm.MODULUS) - truth;
            bias += off / RUNS;
            covered += Math.abs(off) <= 1.97 * Exactly.u(result, PullForm.MODULUS) ? 1 : 0;
        }
        assertThat(covered)
                .as("of %s, seeds 5000 on", RUNS)
                .isBetween(FEWEST_COVERED, MOST_COVERED);
        assertThat(bias / truth).isCloseTo(0, within(0.002));
    }

    private static double modulus(Readings.Builder readings) {
        Result result = Pulled.pull(readings.word(Toe.CHOICE, Toe.AS_RECORDED));
        return Exactly.value(result, PullForm.MODULUS);
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

    private static double rounded(double value, double step) {
        return step * Math.rint(value / step);
    }
}
