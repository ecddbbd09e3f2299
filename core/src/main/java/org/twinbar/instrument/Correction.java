package org.twinbar.instrument;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.quantity.Unit;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * What a calibration does to readings: it corrects them, and says what stays wrong with them.
 *
 * <pre>value = (reading − offset)/slope</pre>
 *
 * @param offset what the instrument shows at zero, in its unit
 * @param slope by how much its reading grows where the value grows by one
 * @param scatter standard deviation of one corrected reading about the line
 * @param scatterDf degrees of freedom of that scatter
 * @param faults what all readings share, of the corrected value
 * @param lowest smallest value that it was calibrated at
 * @param highest largest value that it was calibrated at
 * @param standsOn which calibration this is, in the words of a report
 */
public record Correction(
        double offset,
        double slope,
        double scatter,
        double scatterDf,
        List<Fault> faults,
        double lowest,
        double highest,
        String standsOn) {

    /** What drifts between two looks is anywhere between them. */
    private static final double END_TO_STANDARD = 1 / Math.sqrt(3);

    /**
     * @throws IllegalArgumentException unless slope > 0, scatter ≥ 0 and lowest < highest: an
     *     instrument that shows less where there is more is wired the wrong way round
     */
    public Correction {
        if (!(slope > 0 && slope < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the reading grows by %s where the value grows by 1, must be above 0"
                            .formatted(slope));
        }
        if (!(scatter >= 0) || !(lowest < highest)) {
            throw new IllegalArgumentException("scatter %s from %s to %s is no calibration"
                    .formatted(scatter, lowest, highest));
        }
        faults = List.copyOf(faults);
    }

    /** Returns what stays wrong with readings that were corrected already. */
    Correction ofCorrected() {
        return new Correction(0, 1, scatter, scatterDf, faults, lowest, highest, standsOn);
    }

    /** Returns this correction with every error smaller by a factor, as a better one would have. */
    Correction withErrorsTimes(double factor) {
        List<Fault> smaller = new ArrayList<>();
        for (Fault fault : faults) {
            smaller.add(
                    new Fault(fault.source(), factor * fault.constant(), factor * fault.slope()));
        }
        return new Correction(
                offset, slope, scatter, scatterDf, smaller, lowest, highest, standsOn);
    }

    /** Returns what a reading should have been. */
    public double of(double reading) {
        return (reading - offset) / slope;
    }

    /** Returns corrected readings; those without a number stay so. */
    public double[] of(double[] readings) {
        double[] corrected = new double[readings.length];
        for (int i = 0; i < readings.length; i++) {
            corrected[i] = of(readings[i]);
        }
        return corrected;
    }

    /** Returns the standard uncertainty of a corrected value from what all readings share. */
    public double sharedUncertaintyAt(double value) {
        double sum = 0;
        for (Fault fault : faults) {
            double u = fault.standardUncertaintyAt(value);
            sum += u * u;
        }
        return Math.sqrt(sum);
    }

    /** Returns the standard uncertainty of one corrected reading, its own scatter included. */
    public double uncertaintyAt(double value) {
        double shared = sharedUncertaintyAt(value);
        return Math.sqrt(shared * shared + scatter * scatter);
    }

    /**
     * Returns this correction with what the instrument has drifted since an earlier one: a value
     * may lie anywhere between what the two make of one reading.
     *
     * <pre>change = value · (slope/slope₀ − 1) + (offset − offset₀)/slope₀,  u = |change|/√3</pre>
     *
     * @param name of the instrument
     */
    public Correction withDrift(String name, Correction earlier) {
        Source drift = Source.shared(name + " drift", Shape.RECTANGULAR, END_TO_STANDARD);
        return with(new Fault(
                drift, (offset - earlier.offset) / earlier.slope, slope / earlier.slope - 1));
    }

    /**
     * Returns this correction with what its zero was found to wander since.
     *
     * @param name of the instrument
     * @param farthest largest corrected reading at zero, whatever its sign
     */
    public Correction withWanderingZero(String name, double farthest) {
        return with(Fault.zero(Source.shared(
                name + " wandering zero",
                Shape.RECTANGULAR,
                Math.abs(farthest) * END_TO_STANDARD)));
    }

    private Correction with(Fault fault) {
        List<Fault> more = new ArrayList<>(faults);
        more.add(fault);
        return new Correction(offset, slope, scatter, scatterDf, more, lowest, highest, standsOn);
    }

    /** Returns the same calibration for readings in another unit. */
    Correction in(Unit from, Unit to) {
        Unit.Conversion values = from.to(to);
        Unit.Conversion differences = from.differenceTo(to);
        double shift = to.to(from).apply(0);
        double size = to.differenceTo(from).apply(1);
        List<Fault> moved = new ArrayList<>();
        for (Fault fault : faults) {
            moved.add(new Fault(
                    fault.source(),
                    (fault.constant() + fault.slope() * shift) / size,
                    fault.slope()));
        }
        return new Correction(
                differences.apply(offset - shift + slope * shift),
                slope,
                differences.apply(scatter),
                scatterDf,
                moved,
                values.apply(lowest),
                values.apply(highest),
                standsOn);
    }
}
