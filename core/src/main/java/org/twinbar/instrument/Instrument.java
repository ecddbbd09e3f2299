package org.twinbar.instrument;

import org.twinbar.quantity.Unit;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * What a reading is read on.
 *
 * @param name what its errors are named by, such as {@code load cell}
 * @param unit unit of its readings
 * @param resolution smallest step of its display, zero or more
 * @param gainUncertainty standard uncertainty of its gain, as a share of the reading
 * @param zeroUncertainty standard uncertainty of its zero, in its unit
 * @param degreesOfFreedom of gain and zero
 * @param origin whether somebody gave these figures
 */
public record Instrument(
        String name,
        Unit unit,
        double resolution,
        double gainUncertainty,
        double zeroUncertainty,
        double degreesOfFreedom,
        Origin origin) {

    /** Where the figures of an instrument come from. */
    public enum Origin {
        /** The usual instrument of its kind. */
        ASSUMED,
        /** Given by the person. */
        GIVEN,
        /** Found by a calibration against a reference. */
        CALIBRATED
    }

    /** Share of a display's step that is its standard uncertainty: a rectangle of ±½ step. */
    private static final double STEP_TO_STANDARD = 1 / Math.sqrt(12);

    public Instrument {
        if (!(resolution >= 0) || !(gainUncertainty >= 0) || !(zeroUncertainty >= 0)) {
            throw new IllegalArgumentException(
                    "%s: resolution %s, gain %s and zero %s must be zero or more"
                            .formatted(name, resolution, gainUncertainty, zeroUncertainty));
        }
    }

    /** Returns what stands for a value that no instrument read: nothing is known of its errors. */
    public static Instrument none(Unit unit) {
        return new Instrument(
                "no instrument", unit, 0, 0, 0, Double.POSITIVE_INFINITY, Origin.ASSUMED);
    }

    /**
     * Returns the standard uncertainty of one reading from the display's step alone.
     *
     * <pre>u = d / √12</pre>
     *
     * <p>Source: JCGM 100:2008, F.2.2.1.
     */
    public double resolutionUncertainty() {
        return resolution * STEP_TO_STANDARD;
    }

    /** Returns the error that one reading has afresh from the display's step. */
    public Source resolutionOf(String reading) {
        return Source.own(reading + " resolution", Shape.RECTANGULAR, resolutionUncertainty());
    }

    /** Returns the error of the gain, a share, that all readings on this instrument have. */
    public Source gain() {
        return new Source(
                name + " gain",
                Source.Reach.SHARED,
                Shape.NORMAL,
                gainUncertainty,
                degreesOfFreedom);
    }

    /** Returns the error of the zero, in its unit, that all readings on this instrument have. */
    public Source zero() {
        return new Source(
                name + " zero",
                Source.Reach.SHARED,
                Shape.NORMAL,
                zeroUncertainty,
                degreesOfFreedom);
    }

    public Instrument withName(String newName) {
        return new Instrument(
                newName,
                unit,
                resolution,
                gainUncertainty,
                zeroUncertainty,
                degreesOfFreedom,
                origin);
    }

    public Instrument withResolution(double step) {
        return new Instrument(
                name, unit, step, gainUncertainty, zeroUncertainty, degreesOfFreedom, Origin.GIVEN);
    }

    public Instrument withGain(double standardUncertainty) {
        return new Instrument(
                name,
                unit,
                resolution,
                standardUncertainty,
                zeroUncertainty,
                degreesOfFreedom,
                Origin.GIVEN);
    }

    public Instrument withZero(double standardUncertainty) {
        return new Instrument(
                name,
                unit,
                resolution,
                gainUncertainty,
                standardUncertainty,
                degreesOfFreedom,
                Origin.GIVEN);
    }
}
