package org.twinbar.method.tensile;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Result;
import org.twinbar.method.curve.SlopeWindow;
import org.twinbar.method.curve.Toe;
import org.twinbar.quantity.Quantity;

class TensileReferenceTest {

    private static final Checks CHECKS = Checks.of(TensileReferenceTest.class);

    /** Stresses (MPa) of A-2 at 0.05 to 0.25 % on 40 mm² and a gauge of 50 mm. */
    private static final double[] STRESS = {1.20, 2.68, 4.14, 5.58, 7.00};

    private static final double[] STRAIN = {0.0005, 0.0010, 0.0015, 0.0020, 0.0025};

    @Test
    void stressFromLargestForce() {
        Result result = Pulled.pull(Pulled.bar(10.02, 4.05).number(PullForm.PEAK_FORCE, 1250));
        CHECKS.row("stress").expects(Exactly.value(result, PullForm.STRENGTH));
    }

    @Test
    void chordAndRegressionModulus() {
        CHECKS.row("chord").expects(modulusBy(SlopeWindow.CHORD));
        CHECKS.row("regression").expects(modulusBy(SlopeWindow.REGRESSION));
    }

    private static double modulusBy(String way) {
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .word(SlopeWindow.BY, way)
                .word(Toe.CHOICE, Toe.AS_RECORDED)
                .channel(PullForm.FORCE, times(with0(STRESS), 40))
                .channel(PullForm.EXTENSION, times(with0(STRAIN), 50)));
        return Exactly.value(result, PullForm.MODULUS);
    }

    @Test
    void toeStrainOfTheStraightStretch() {
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .word(PullForm.BROKE_AT, PullForm.BROKE_IN_GAUGE)
                .channel(PullForm.FORCE, times(STRESS, 40))
                .channel(PullForm.EXTENSION, times(STRAIN, 50)));
        double toe = 0.0025 - Exactly.value(result, PullForm.STRAIN_AT_STRENGTH) / 100;
        CHECKS.row("toe").expects(toe);
    }

    @Test
    void poissonRatio() {
        double[] along = {0, 0.05, 0.08, 0.12, 0.16, 0.2, 0.23, 0.25, 0.5};
        double[] across = {0, -0.0182, -0.0288, -0.0441, -0.0579, -0.0726, -0.0841, -0.0907, -0.17};
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .word(Toe.CHOICE, Toe.AS_RECORDED)
                .channel(PullForm.FORCE, times(along, 1200))
                .channel(PullForm.STRAIN, along)
                .channel(PullForm.TRANSVERSE_STRAIN, across));
        CHECKS.row("poisson").expects(Exactly.value(result, PullForm.POISSON_RATIO));
        CHECKS.row("poisson-u").expects(Exactly.u(result, PullForm.POISSON_RATIO));
    }

    @Test
    void nominalStrainByMethodB() {
        CHECKS.row("nominal-b")
                .expects(
                        Exactly.value(Pulled.pull(TensileTest.necking()), PullForm.NOMINAL_STRAIN));
    }

    @Test
    void nominalStrainLessTheMachinesGive() {
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.GRIP_DISTANCE, 115)
                .number(PullForm.COMPLIANCE, 3e-4)
                .word(Toe.CHOICE, Toe.AS_RECORDED)
                .channel(PullForm.FORCE, new double[] {0, 250, 500, 750, 1000, 10})
                .channel(PullForm.DISPLACEMENT, new double[] {0, 0.6, 1.2, 1.8, 2.5, 2.6}));
        CHECKS.row("nominal").expects(Exactly.value(result, PullForm.STRAIN_AT_STRENGTH));
    }

    @Test
    void complianceFromSeveralLengths() {
        var found = MachineCompliance.ofLengths(
                new double[] {60, 90, 115}, new double[] {8.0e-4, 1.05e-3, 1.258333e-3}, 40);
        CHECKS.row("lengths-compliance").expects(found.compliance());
        CHECKS.row("lengths-modulus").expects(found.modulus());
    }

    @Test
    void energyToBreak() {
        double[] strain = {0, 0.005, 0.010, 0.015, 0.020, 0.025, 0.030};
        double[] stress = {0, 15, 28, 38, 44, 46, 45};
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .word(PullForm.BROKE_AT, PullForm.BROKE_IN_GAUGE)
                .channel(PullForm.FORCE, times(stress, 40))
                .channel(PullForm.EXTENSION, times(strain, 50)));
        CHECKS.row("energy").expects(Exactly.value(result, PullForm.ENERGY));
    }

    @Test
    void budgetOfOneStress() {
        Bench bench = Exactly.bench().withGain("load cell", 0.0025);
        Result result = Pulled.pull(Pulled.bar(10.02, 4.05, bench)
                .numberWithUncertainty(PullForm.WIDTH, 10.02, 0.0202)
                .numberWithUncertainty(PullForm.THICKNESS, 4.05, 0.0253)
                .number(PullForm.PEAK_FORCE, 1250));
        CHECKS.row("budget").expects(Exactly.u(result, PullForm.STRENGTH));
    }

    @Test
    void budgetWithTheCalipersErrorShared() {
        Bench bench = Exactly.bench()
                .withGain("load cell", 0.0025)
                .withZero("caliper", Quantity.parse("0.010 mm"));
        Result result = Pulled.pull(Pulled.bar(10.02, 4.05, bench)
                .numberWithUncertainty(PullForm.WIDTH, 10.02, Math.sqrt(0.0202 * 0.0202 - 1e-4))
                .numberWithUncertainty(PullForm.THICKNESS, 4.05, Math.sqrt(0.0253 * 0.0253 - 1e-4))
                .number(PullForm.PEAK_FORCE, 1250));
        CHECKS.row("budget-caliper").expects(Exactly.u(result, PullForm.STRENGTH));
    }

    @Test
    void realPullsOfNylon() {
        CHECKS.row("nylon-annealed-xy")
                .expects(mean(
                        25,
                        1711.2463333333335,
                        1767.3766666666668,
                        1776.1090000000002,
                        1725.0596666666668,
                        1749.1523333333334));
        CHECKS.row("nylon-plain-xy")
                .expects(mean(
                        25,
                        1459.039,
                        1625.4643333333333,
                        1596.5753333333334,
                        1384.8950000000002,
                        1672.4773333333333));
        CHECKS.row("nylon-annealed-z")
                .expects(mean(
                        50,
                        471.9406666666667,
                        462.4493333333333,
                        493.92800000000005,
                        492.897,
                        474.22133333333335));
        CHECKS.row("nylon-plain-z")
                .expects(mean(
                        50,
                        480.11100000000005,
                        473.9696666666667,
                        478.91799999999995,
                        429.1483333333333,
                        434.74133333333333));
    }

    private static double mean(double area, double... forces) {
        return Arrays.stream(forces)
                .map(force -> Exactly.value(
                        Pulled.pull(org.twinbar.method.Readings.of("N", "nylon", Exactly.bench())
                                .number(PullForm.AREA, area)
                                .number(PullForm.PEAK_FORCE, force)),
                        PullForm.STRENGTH))
                .average()
                .orElseThrow();
    }

    private static double[] with0(double[] values) {
        double[] more = new double[values.length + 1];
        System.arraycopy(values, 0, more, 1, values.length);
        return more;
    }

    private static double[] times(double[] values, double factor) {
        return Arrays.stream(values).map(value -> value * factor).toArray();
    }
}
