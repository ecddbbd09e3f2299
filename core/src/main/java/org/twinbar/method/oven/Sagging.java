package org.twinbar.method.oven;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Yield;
import org.twinbar.method.heating.BrokenStick;
import org.twinbar.method.heating.Heated;

/** One cantilever's record in one world: its onset, and the temperature at a deflection. */
final class Sagging {

    /** Above this chance a straight line alone explains the bend. */
    private static final double DOUBT = 0.05;

    /** Draws about a straight line; with them a chance of 5 % is known to ±0.7 %. */
    private static final int TRIALS = 999;

    private static final long SEED = 20;

    /** Beyond this share of the arm the formulas of small deflections are off (METHODS D.3). */
    private static final double LONG_DEFLECTION = 0.10;

    private static final double PER_CENT = 100;

    private final Readings readings;
    private final Outcome.Builder out;
    private final Heated heated;
    private final Optional<Cantilever> bar;

    Sagging(Readings readings, Outcome.Builder out, Heated heated, Optional<Cantilever> bar) {
        this.readings = readings;
        this.out = out;
        this.heated = heated;
        this.bar = bar;
    }

    void calculate() {
        double ramp = readings.once(
                "ramp", Double.class, () -> heated.rate(heated.end()).orElse(Double.NaN));
        OptionalDouble recorded =
                Double.isNaN(ramp) ? OptionalDouble.empty() : OptionalDouble.of(ramp);
        Lag lag = Lag.of(readings, bar, recorded);
        int to = readings.mark(OvenForm.FIT_TO, () -> OptionalInt.of(lastShort()))
                .getAsInt();
        onset(lag, to);
        atDeflection(lag);
        if (readings.atRest()) {
            heated.findings(out, heated.end());
            OvenFindings.ofLag(readings, lag, lagAt(lag, heated.temperature(to)), out);
            if (to < heated.end()) {
                OvenFindings.stopsShort(heated.temperature(to), out);
            }
        }
    }

    /** Returns the last row before the deflection leaves the range of the formulas. */
    private int lastShort() {
        if (bar.isEmpty()) {
            return heated.end();
        }
        double most = LONG_DEFLECTION * bar.get().armMm();
        int row = heated.start();
        while (row < heated.end() && !(heated.sag(row + 1) > most)) {
            row++;
        }
        return row;
    }

    private double lagAt(Lag lag, double airC) {
        return lag.at(airC, heated.temperature(heated.start()));
    }

    /** What the two lines gave in the world without errors. */
    private record Onset(
            double bendC, double uncertainty, double freedom, String bound, String missing) {

        static Onset missing(String reason) {
            return new Onset(0, 0, 1, "", reason);
        }

        static Onset bound(String reason) {
            return new Onset(0, 0, 1, reason, "");
        }
    }

    private void onset(Lag lag, int to) {
        Onset onset = readings.once("onset", Onset.class, () -> fit(to));
        if (!onset.missing().isEmpty()) {
            out.missing(OvenForm.ONSET, onset.missing());
        } else if (!onset.bound().isEmpty()) {
            double end = heated.temperature(to);
            double bound = end - lagAt(lag, end);
            out.put(
                    OvenForm.ONSET,
                    Double.isFinite(bound)
                            ? new Yield.AtLeast(bound, onset.bound())
                            : Yield.of(Double.NaN));
        } else {
            double air = heated.asReadHere(onset.bendC());
            double bend = air - lagAt(lag, air);
            out.put(
                    OvenForm.ONSET,
                    Double.isFinite(bend)
                            ? new Yield.Fitted(bend, onset.uncertainty(), onset.freedom())
                            : Yield.of(Double.NaN));
        }
    }

    private Onset fit(int to) {
        int rows = Math.max(0, to - heated.start() + 1);
        double[] temperatures = new double[rows];
        double[] sags = new double[rows];
        for (int i = 0; i < rows; i++) {
            temperatures[i] = heated.temperature(heated.start() + i);
            sags[i] = heated.sag(heated.start() + i);
        }
        Optional<BrokenStick> found = BrokenStick.through(temperatures, sags);
        if (found.isEmpty()) {
            return Onset.missing("the record has fewer than 8 rows to lay two lines through");
        }
        BrokenStick stick = found.get();
        if (stick.straightLineProbability(TRIALS, SEED) > DOUBT) {
            return Onset.bound("one straight line fits as well as two: it had not begun to sag"
                    + " when heating ended");
        }
        if (stick.slopeAbove() <= stick.slopeBelow()) {
            return Onset.missing(
                    "the record flattens at its bend, where a bar that softens grows" + " steeper");
        }
        if (stick.isOpenBelow() || stick.isOpenAbove()) {
            return Onset.missing("the bend lies too near to an end of the record to be bounded:"
                    + " begin colder, or go on for longer");
        }
        if (readings.atRest()) {
            OvenFindings.ofLines(readings, stick, heated.sag(to), out);
        }
        double u = stick.safeUncertainty();
        return Double.isFinite(u)
                ? new Onset(stick.bend(), u, stick.degreesOfFreedom(), "", "")
                : Onset.missing("these readings give no finite number");
    }

    private void atDeflection(Lag lag) {
        if (bar.isEmpty()) {
            out.missing(OvenForm.AT_DEFLECTION, "arm, width and thickness are not all known");
            return;
        }
        double sag = bar.get().deflectionFor(readings.setting(OvenForm.STRAIN) / PER_CENT);
        OptionalInt row = heated.rowReaching(sag);
        double air = row.isPresent()
                ? heated.temperatureAt(sag, row.getAsInt())
                : heated.temperature(heated.end());
        double inBar = air - lagAt(lag, air);
        if (row.isPresent() || !Double.isFinite(inBar)) {
            out.value(OvenForm.AT_DEFLECTION, inBar);
        } else {
            out.put(
                    OvenForm.AT_DEFLECTION,
                    new Yield.AtLeast(inBar, "it had not sagged that far when heating ended"));
        }
        if (readings.atRest()) {
            row.ifPresent(at -> heated.findingAt(out, at));
        }
    }
}
