package org.twinbar.method.oven;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Readings;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * How far a bar trails the air that the thermometer read, in one world.
 *
 * <pre>ΔT = r·τ·(1 − exp(−t/τ)),  t = (T − T_start)/r</pre>
 *
 * <p>r is the ramp, τ the bar's time constant; t, the time since heating began, is taken as long
 * where the start is not known. The lumped body holds for Biot numbers below 0.1 (METHODS D.4).
 *
 * <p>What is wrong with τ has two parts: of a heat transfer that was reckoned, what all bars in the
 * oven share, which cancels between groups as far as their lags are alike; and what one group has
 * and no other, since a coat has a mass and a skin of its own. Where nothing is taken off the same
 * two errors stand for it, about a lag of nothing.
 *
 * @param origin where τ comes from
 * @param ramp °C/s; 0 where nothing is taken off
 * @param seconds τ
 * @param factor what this world multiplies the lag by: 1 and its errors
 * @param offset what this world adds to it (K), 0 but where nothing is taken off
 * @param share standard uncertainty of the factor
 * @param reckoned the largest lag that is likely (K) where nothing is taken off, else 0
 */
record Lag(
        Origin origin,
        double ramp,
        double seconds,
        double factor,
        double offset,
        double share,
        double reckoned) {

    /** Where a time constant comes from. */
    enum Origin {
        /** The thermometer was in a bar: there is no lag. */
        READ_IN_BAR,
        /** By a step of a dummy of the group. */
        MEASURED,
        /** From the bar's size, and how the air moves. */
        RECKONED,
        /** Nobody knows: nothing is taken off. */
        UNKNOWN
    }

    private static final Lag IN_BAR = new Lag(Origin.READ_IN_BAR, 0, 0, 1, 0, 0, 0);

    /** Twice the standard uncertainty, by which the ends of an interval between looks go apart. */
    private static final double WIDEN = 2;

    /**
     * Standard uncertainty of a reckoned heat transfer, as a share: still air is 2 to 10 W/(m²K), a
     * gentle fan 10 to 50, and radiation adds 7 (METHODS D.4).
     */
    private static final double TRANSFER_SHARE = 0.4;

    /** Middle of the 4 to 15 K of METHODS D.4, where neither ramp nor size are known. */
    private static final double USUAL_LAG = 10;

    private static final double SECONDS_PER_MINUTE = 60;
    private static final double PER_CENT = 100;

    /** A measured lag without any error, for formulas alone. */
    static Lag exactly(double ramp, double seconds) {
        return new Lag(Origin.MEASURED, ramp, seconds, 1, 0, 0, 0);
    }

    /**
     * Returns the lag of a specimen's group.
     *
     * @param bar its size, where that is known
     * @param recordedRamp ramp (°C/min) of the record, where it has a clock
     */
    static Lag of(Readings readings, Optional<Cantilever> bar, OptionalDouble recordedRamp) {
        if (readings.has(OvenForm.THERMOMETER_IN)
                && readings.word(OvenForm.THERMOMETER_IN).equals(OvenForm.IN_BAR)) {
            return IN_BAR;
        }
        OptionalDouble perMinute = readings.has(OvenForm.RAMP)
                ? OptionalDouble.of(readings.number(OvenForm.RAMP))
                : recordedRamp;
        double ramp = Math.max(0, perMinute.orElse(0)) / SECONDS_PER_MINUTE;
        double ofGroup = readings.setting(OvenForm.LAG_UNCERTAINTY) / PER_CENT;
        if (perMinute.isEmpty()) {
            return unknown(readings, USUAL_LAG, ofGroup, 0);
        }
        if (ramp == 0) {
            return exactly(0, 0);
        }
        if (readings.has(OvenForm.TIME_CONSTANT)) {
            return measured(readings, ramp, ofGroup);
        }
        if (bar.isEmpty()) {
            return unknown(readings, USUAL_LAG, ofGroup, 0);
        }
        if (readings.has(OvenForm.AIR)) {
            double moves = readings.word(OvenForm.AIR).equals(OvenForm.STILL)
                    ? Warming.STILL_AIR
                    : Warming.FAN;
            double factor = 1
                    + readings.error(ofGroup(readings, ofGroup))
                    + readings.error(Source.shared(
                            "heat transfer in the oven", Shape.NORMAL, TRANSFER_SHARE));
            double share = Math.sqrt(ofGroup * ofGroup + TRANSFER_SHARE * TRANSFER_SHARE);
            double seconds = timeConstant(bar.get(), moves);
            return new Lag(Origin.RECKONED, ramp, seconds, factor, 0, share, 0);
        }
        double largest = ramp * timeConstant(bar.get(), Warming.STILL_AIR);
        return unknown(readings, largest, ofGroup, largest);
    }

    /**
     * Returns the lag by a step test. One dummy stands for its whole group, so that what is wrong
     * with its time constant is an error of the group, not of each bar.
     */
    private static Lag measured(Readings readings, double ramp, double ofGroup) {
        double seconds =
                Arrays.stream(readings.each(OvenForm.TIME_CONSTANT)).average().orElseThrow();
        double ofStep = readings.readingUncertainty(OvenForm.TIME_CONSTANT) / seconds;
        double share = Math.sqrt(ofGroup * ofGroup + ofStep * ofStep);
        double factor = 1 + readings.error(ofGroup(readings, share));
        return new Lag(Origin.MEASURED, ramp, seconds, factor, 0, share, 0);
    }

    private static Source ofGroup(Readings readings, double u) {
        return Source.shared("thermal lag of " + readings.group(), Shape.NORMAL, u);
    }

    /**
     * Returns the lag of nothing, with the errors that stand for what was not taken off.
     *
     * <p>It lies anywhere from none to the largest that is likely; about none its root mean square
     * is a √3rd of that (JCGM 100:2008, F.2.4.5).
     */
    private static Lag unknown(Readings readings, double largest, double ofGroup, double reckoned) {
        double offset = readings.error(ofGroup(readings, ofGroup * largest))
                + readings.error(Source.shared(
                        "thermal lag that was not taken off",
                        Shape.RECTANGULAR,
                        largest / Math.sqrt(3)));
        return new Lag(Origin.UNKNOWN, 0, 0, 1, offset, 0, reckoned);
    }

    /** Returns the time constant (s) of a bar's mean: all round it, and within it. */
    static double timeConstant(Cantilever bar, double transfer) {
        return Warming.timeConstant(bar.widthMm(), bar.thicknessMm(), transfer)
                + Warming.behindFaces(Math.min(bar.widthMm(), bar.thicknessMm()));
    }

    /** Returns the lag (K) long after heating began. */
    double settled() {
        return ramp * seconds * factor + offset;
    }

    /** Returns the lag (K) at a temperature of the air, in a ramp that began at another one. */
    double at(double airC, double startC) {
        if (!(ramp > 0) || !(seconds > 0)) {
            return offset;
        }
        double elapsed = Math.max(0, airC - startC) / ramp;
        return settled() * -StrictMath.expm1(-elapsed / seconds);
    }

    /**
     * Returns a temperature of the bar (°C) that is at least this, from one of the air: the lag and
     * twice its doubt are taken off; where it is not known, the largest that is likely.
     */
    double lowest(double airC) {
        return airC - ramp * seconds * (1 + WIDEN * share) - reckoned;
    }

    /** Returns a temperature of the bar (°C) that is at most this, from one of the air. */
    double highest(double airC) {
        return airC - ramp * seconds * Math.max(0, 1 - WIDEN * share);
    }
}
