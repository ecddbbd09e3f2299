package org.twinbar.method;

import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Correction;
import org.twinbar.instrument.Instrument;

/**
 * A reading that lies where its instrument was never held against a reference.
 *
 * @param value the one that lies farthest beyond, corrected
 */
record BeyondCalibration(
        Named reading, Instrument instrument, Correction correction, double value) {

    static final Finding.Kind BEYOND = Finding.Kind.warning(
            "beyond-calibration",
            "%s goes to %s, but %s was calibrated from %s to %s: how straight it is beyond is not"
                    + " known. Calibrate it over the whole range of the test.");

    /**
     * Share of the calibrated range that a reading may lie beyond it, as a curve does that begins
     * below the smallest weight; common practice, no source.
     */
    private static final double ALLOWED = 0.1;

    /** Returns the value that lies farthest beyond the calibration, where one does. */
    static Optional<BeyondCalibration> among(
            Named reading, Instrument instrument, double[] values) {
        return instrument.correction().flatMap(correction -> {
            double far = 0;
            double farthest = Double.NaN;
            for (double value : values) {
                double over = Math.max(value - correction.highest(), correction.lowest() - value);
                if (over > far) {
                    far = over;
                    farthest = value;
                }
            }
            boolean beyond = far > ALLOWED * (correction.highest() - correction.lowest());
            return beyond
                    ? Optional.of(new BeyondCalibration(reading, instrument, correction, farthest))
                    : Optional.empty();
        });
    }

    Finding finding() {
        String unit = " " + instrument.unit().symbol();
        return BEYOND.with(
                reading.label(),
                Figures.three(value) + unit,
                instrument.name(),
                Figures.three(correction.lowest()),
                Figures.three(correction.highest()) + unit);
    }
}
