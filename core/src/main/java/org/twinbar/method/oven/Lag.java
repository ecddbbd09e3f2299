package org.twinbar.method.oven;

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
 * @param ramp °C/s; 0 where nothing is to be taken off
 * @param seconds τ
 * @param factor what this world multiplies the lag by: 1 and the error of the group's τ
 * @param share standard uncertainty of that factor
 */
record Lag(double ramp, double seconds, double factor, double share) {

    static final Lag NONE = new Lag(0, 0, 1, 0);

    /** Twice the standard uncertainty, which widens an interval that has no budget. */
    private static final double WIDEN = 2;

    private static final double SECONDS_PER_MINUTE = 60;
    private static final double PER_CENT = 100;

    /** Returns whether the thermometer read the air and nothing is known to take off for that. */
    static boolean isUncorrected(Readings readings, OptionalDouble recordedRamp) {
        return !readInBar(readings)
                && (!readings.has(OvenForm.TIME_CONSTANT)
                        || !readings.has(OvenForm.RAMP) && recordedRamp.isEmpty());
    }

    private static boolean readInBar(Readings readings) {
        return readings.has(OvenForm.THERMOMETER_IN)
                && readings.word(OvenForm.THERMOMETER_IN).equals(OvenForm.IN_BAR);
    }

    /**
     * Returns the lag of a specimen's group.
     *
     * <p>The error of τ is one that the whole group has and no other: it neither averages out over
     * its specimens nor cancels against another group's.
     *
     * @param recordedRamp ramp (°C/min) of the record, where it has a clock
     */
    static Lag of(Readings readings, OptionalDouble recordedRamp) {
        if (readInBar(readings) || isUncorrected(readings, recordedRamp)) {
            return NONE;
        }
        double share = readings.setting(OvenForm.LAG_UNCERTAINTY) / PER_CENT;
        double ramp = readings.has(OvenForm.RAMP)
                ? readings.number(OvenForm.RAMP)
                : Math.max(0, recordedRamp.orElse(0));
        Source error = Source.shared("thermal lag of " + readings.group(), Shape.NORMAL, share);
        return new Lag(
                ramp / SECONDS_PER_MINUTE,
                readings.number(OvenForm.TIME_CONSTANT),
                1 + readings.error(error),
                share);
    }

    /** Returns the lag (K) long after heating began. */
    double settled() {
        return ramp * seconds * factor;
    }

    /** Returns the lag (K) at a temperature of the air, in a ramp that began at another one. */
    double at(double airC, double startC) {
        if (!(ramp > 0) || !(seconds > 0)) {
            return 0;
        }
        double elapsed = Math.max(0, airC - startC) / ramp;
        return settled() * -StrictMath.expm1(-elapsed / seconds);
    }

    /** Returns what an interval without a budget is widened by at either end (K). */
    double widening() {
        return WIDEN * share * ramp * seconds;
    }
}
