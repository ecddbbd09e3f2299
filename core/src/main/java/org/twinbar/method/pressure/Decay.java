package org.twinbar.method.pressure;

import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.curve.Line;

/** The record of one vessel in one world: pressure above the surroundings at one temperature. */
final class Decay {

    /** Standard atmosphere (kPa), ISO 2533; taken where nobody read a barometer. */
    static final double STANDARD_AMBIENT = 101.325;

    private static final double ZERO_CELSIUS = 273.15;

    /** Below this share of the start, the logarithm is mostly of noise; our own. */
    private static final double LEAST_SHARE = 0.10;

    private final Readings readings;
    private final Trace time;
    private final Trace pressure;
    private final double ambient;
    private final boolean absolute;

    Decay(Readings readings) {
        this.readings = readings;
        this.time = readings.trace(PressureForm.TIME);
        this.pressure = readings.trace(PressureForm.PRESSURE);
        this.ambient = readings.has(PressureForm.AMBIENT)
                ? readings.number(PressureForm.AMBIENT)
                : STANDARD_AMBIENT;
        this.absolute = readings.has(PressureForm.PRESSURE_IS)
                && readings.word(PressureForm.PRESSURE_IS).equals(PressureForm.ABSOLUTE);
    }

    int rows() {
        return pressure.size();
    }

    double ambient() {
        return ambient;
    }

    double seconds(int row) {
        return time.get(row);
    }

    /** Returns the absolute pressure as it was read (kPa). */
    double absolute(int row) {
        return absolute ? pressure.get(row) : pressure.get(row) + ambient;
    }

    /** Returns the temperature (K) at a row; one and the same where none was recorded. */
    double kelvin(int row) {
        return readings.has(PressureForm.TEMPERATURE)
                ? readings.trace(PressureForm.TEMPERATURE).get(row) + ZERO_CELSIUS
                : ZERO_CELSIUS + 20;
    }

    /**
     * Returns the pressure above the surroundings at the temperature of a first row (kPa).
     *
     * <pre>Δp = p·T₀/T − p_ambient</pre>
     */
    double above(int row, int first) {
        return absolute(row) * kelvin(first) / kelvin(row) - ambient;
    }

    /**
     * Returns the first row behind the time of settling; the number of rows where there is none.
     */
    int settled() {
        double until = time.get(0) + readings.setting(PressureForm.SETTLE);
        int row = 0;
        while (row < rows() && !(time.get(row) >= until)) {
            row++;
        }
        return row;
    }

    /** Returns the last row from a first one on that is still well above the surroundings. */
    int lastAbove(int first) {
        double least = LEAST_SHARE * above(first, first);
        int last = first;
        for (int row = first; row < rows(); row++) {
            if (above(row, first) < least) {
                return last;
            }
            last = Double.isFinite(above(row, first)) ? row : last;
        }
        return last;
    }

    /** Returns the line of ln Δp against time (s) through a run of rows, both ends included. */
    Line line(int from, int to, int first) {
        double[] seconds = new double[to - from + 1];
        double[] logarithm = new double[seconds.length];
        for (int row = from; row <= to; row++) {
            double above = above(row, first);
            seconds[row - from] = seconds(row) - seconds(first);
            logarithm[row - from] = above > 0 ? StrictMath.log(above) : Double.NaN;
        }
        return Line.through(seconds, logarithm);
    }
}
