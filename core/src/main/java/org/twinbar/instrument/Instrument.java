package org.twinbar.instrument;

import java.util.List;
import java.util.Optional;
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
 * @param correction what its calibration does to readings, where it has one; gain and zero then are
 *     those of the fitted line, the zero that of its middle
 */
public record Instrument(
        String name,
        Unit unit,
        double resolution,
        double gainUncertainty,
        double zeroUncertainty,
        double degreesOfFreedom,
        Origin origin,
        Optional<Correction> correction) {

    /** Where the figures of an instrument come from. */
    public enum Origin {
        /** The usual instrument of its kind. */
        ASSUMED("assumed"),
        /** Given by the person. */
        GIVEN("given"),
        /** Found by a calibration against a reference. */
        CALIBRATED("calibrated");

        private final String word;

        Origin(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
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

    /** Returns an instrument that was not calibrated. */
    public static Instrument of(
            String name,
            Unit unit,
            double resolution,
            double gainUncertainty,
            double zeroUncertainty,
            Origin origin) {
        return new Instrument(
                name,
                unit,
                resolution,
                gainUncertainty,
                zeroUncertainty,
                Double.POSITIVE_INFINITY,
                origin,
                Optional.empty());
    }

    /** Returns what stands for a value that no instrument read: nothing is known of its errors. */
    public static Instrument none(Unit unit) {
        return of("no instrument", unit, 0, 0, 0, Origin.ASSUMED);
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

    /**
     * Returns the standard uncertainty that one reading has afresh: its scatter about the line of
     * the calibration, which holds rounding already, and never less than the display's step gives.
     */
    public double readingUncertainty() {
        return correction
                .map(it -> Math.max(it.scatter(), resolutionUncertainty() / it.slope()))
                .orElse(resolutionUncertainty());
    }

    /** Returns the error that one reading has afresh. */
    public Source errorOf(String reading) {
        double u = readingUncertainty();
        boolean scatters = correction.isPresent() && correction.get().scatter() == u && u > 0;
        return scatters
                ? new Source(
                        reading + " scatter",
                        Source.Reach.OWN,
                        Shape.STUDENT,
                        u,
                        correction.get().scatterDf())
                : Source.own(reading + " resolution", Shape.RECTANGULAR, u);
    }

    /** Returns the errors that all readings on this instrument share. */
    public List<Fault> faults() {
        return correction
                .map(Correction::faults)
                .orElseGet(() -> List.of(Fault.gain(gain(), 0), Fault.zero(zero())));
    }

    /** Returns the error of the gain, a share, that all readings on this instrument have. */
    Source gain() {
        return shared(" gain", gainUncertainty);
    }

    /** Returns the error of the zero, in its unit, that all readings on this instrument have. */
    Source zero() {
        return shared(" zero", zeroUncertainty);
    }

    private Source shared(String what, double u) {
        return new Source(name + what, Source.Reach.SHARED, Shape.NORMAL, u, degreesOfFreedom);
    }

    /** Returns the same instrument with its figures in another unit. */
    Instrument in(Unit other) {
        Unit.Conversion differences = unit.differenceTo(other);
        return new Instrument(
                name,
                other,
                differences.apply(resolution),
                gainUncertainty,
                differences.apply(zeroUncertainty),
                degreesOfFreedom,
                origin,
                correction.map(it -> it.in(unit, other)));
    }

    /** Returns the instrument for values that it corrected already, or that it would correct to. */
    public Instrument ofCorrected() {
        return corrected(resolution, correction.map(Correction::ofCorrected));
    }

    /** Returns the instrument with a display that is finer, or coarser, by a factor. */
    public Instrument withStepTimes(double factor) {
        return corrected(factor * resolution, correction);
    }

    /** Returns the instrument with gain and zero known better, or worse, by a factor. */
    public Instrument withCalibrationTimes(double factor) {
        return new Instrument(
                name,
                unit,
                resolution,
                factor * gainUncertainty,
                factor * zeroUncertainty,
                degreesOfFreedom,
                origin,
                correction.map(it -> it.withErrorsTimes(factor)));
    }

    private Instrument corrected(double step, Optional<Correction> by) {
        return new Instrument(
                name, unit, step, gainUncertainty, zeroUncertainty, degreesOfFreedom, origin, by);
    }

    Instrument withName(String newName) {
        return new Instrument(
                newName,
                unit,
                resolution,
                gainUncertainty,
                zeroUncertainty,
                degreesOfFreedom,
                origin,
                correction);
    }

    public Instrument withResolution(double step) {
        return given(step, gainUncertainty, zeroUncertainty);
    }

    Instrument withGain(double standardUncertainty) {
        return given(resolution, standardUncertainty, zeroUncertainty);
    }

    Instrument withZero(double standardUncertainty) {
        return given(resolution, gainUncertainty, standardUncertainty);
    }

    private Instrument given(double step, double gainU, double zeroU) {
        return new Instrument(
                name,
                unit,
                step,
                gainU,
                zeroU,
                degreesOfFreedom,
                correction.isPresent() ? origin : Origin.GIVEN,
                correction);
    }
}
