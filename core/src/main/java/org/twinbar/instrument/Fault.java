package org.twinbar.instrument;

import org.twinbar.uncertainty.Source;

/**
 * How one error that all readings on an instrument share moves a reading: error · (constant + slope
 * · value).
 *
 * <p>A zero has a constant of 1 and no slope, a gain a slope of 1 and no constant. The gain of a
 * fitted line turns about the middle of its points, where it is independent of the line's height:
 * so the two errors are told apart without a covariance.
 *
 * @param constant move of any reading per unit of the error, in the instrument's unit
 * @param slope further move per unit of the error and unit of the value
 */
public record Fault(Source source, double constant, double slope) {

    /** Returns the error of a zero, in the instrument's unit. */
    static Fault zero(Source source) {
        return new Fault(source, 1, 0);
    }

    /** Returns the error of a gain, a share, that leaves a reading at {@code pivot} alone. */
    static Fault gain(Source source, double pivot) {
        return new Fault(source, -pivot, 1);
    }

    /** Returns by how much an error moves a value. */
    public double of(double error, double value) {
        return error * (constant + slope * value);
    }

    /** Returns the standard uncertainty that it brings a value. */
    double standardUncertaintyAt(double value) {
        return Math.abs(of(source.standardUncertainty(), value));
    }
}
