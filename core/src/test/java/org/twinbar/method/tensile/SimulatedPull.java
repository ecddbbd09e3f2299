package org.twinbar.method.tensile;

import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;

/**
 * Pulls whose truth is known: a bar of 10 by 4 mm, 115 mm between the grips, E = 2500 MPa, on a
 * machine that gives, behind a toe of slack.
 *
 * <p>Invented; the law is σ = s·(1 − exp(−E·ε/s)) up to the break, with the toe as a start of half
 * the slope.
 */
record SimulatedPull(
        double modulus,
        double ceiling,
        double strainAtBreak,
        double toeMm,
        double compliance,
        int rows,
        double noiseN,
        double stepMm,
        double slipN,
        long seed) {

    static final double AREA = 40;
    static final double LENGTH = 115;

    /** A bar that breaks at 2 % without having yielded. */
    static SimulatedPull brittle() {
        return new SimulatedPull(2500, 60, 0.02, 0.15, 0, 600, 0, 0, 0, 1);
    }

    SimulatedPull withSlip() {
        return new SimulatedPull(
                modulus,
                ceiling,
                strainAtBreak,
                toeMm,
                compliance,
                rows,
                noiseN,
                stepMm,
                120,
                seed);
    }

    SimulatedPull withCompliance(double mmPerN) {
        return new SimulatedPull(
                modulus, ceiling, strainAtBreak, toeMm, mmPerN, rows, noiseN, stepMm, slipN, seed);
    }

    SimulatedPull withToe(double mm) {
        return new SimulatedPull(
                modulus, ceiling, strainAtBreak, mm, compliance, rows, noiseN, stepMm, slipN, seed);
    }

    SimulatedPull withRows(int count) {
        return new SimulatedPull(
                modulus,
                ceiling,
                strainAtBreak,
                toeMm,
                compliance,
                count,
                noiseN,
                stepMm,
                slipN,
                seed);
    }

    SimulatedPull withNoise(double newtons, long newSeed) {
        return new SimulatedPull(
                modulus,
                ceiling,
                strainAtBreak,
                toeMm,
                compliance,
                rows,
                newtons,
                stepMm,
                slipN,
                newSeed);
    }

    SimulatedPull withSteps(double mm) {
        return new SimulatedPull(
                modulus, ceiling, strainAtBreak, toeMm, compliance, rows, noiseN, mm, slipN, seed);
    }

    double trueForceAtBreak() {
        return AREA * stress(strainAtBreak);
    }

    private double stress(double strain) {
        return ceiling * (1 - StrictMath.exp(-modulus * strain / ceiling));
    }

    /** Force (N) of each row, the last five behind the break. */
    double[] force() {
        Random random = new Random(seed);
        double[] force = new double[rows];
        for (int row = 0; row < rows; row++) {
            double strain = strain(row);
            double value = row < rows - 5 ? AREA * stress(strain) : 0;
            boolean slipped = row > rows / 2 && row < rows / 2 + 8;
            force[row] = value - (slipped ? slipN : 0) + noiseN * random.nextGaussian();
        }
        return force;
    }

    /** Travel of the crosshead (mm) of each row: toe, specimen and machine together. */
    double[] travel() {
        double[] travel = new double[rows];
        for (int row = 0; row < rows; row++) {
            double strain = strain(row);
            double exact = toeMm * (1 - StrictMath.exp(-strain / 5e-5))
                    + LENGTH * strain
                    + compliance * AREA * stress(strain);
            travel[row] = stepMm > 0 ? stepMm * Math.rint(exact / stepMm) : exact;
        }
        return travel;
    }

    private double strain(int row) {
        return strainAtBreak * Math.min(1, row / (rows - 6.0));
    }

    Readings.Builder readings() {
        return readings(Exactly.bench());
    }

    Readings.Builder readings(Bench bench) {
        return withoutGrips(bench).number(PullForm.GRIP_DISTANCE, LENGTH);
    }

    Readings.Builder withoutGrips() {
        return withoutGrips(Exactly.bench());
    }

    private Readings.Builder withoutGrips(Bench bench) {
        return Pulled.bar(10, 4, bench)
                .channel(PullForm.FORCE, force())
                .channel(PullForm.DISPLACEMENT, travel());
    }
}
