package org.twinbar.method.creep;

import java.util.Optional;
import java.util.stream.IntStream;
import org.twinbar.method.Channel;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;

/** The strain (%) of one bar against the hours since loading, in one world. */
final class Stretch {

    private static final double PER_CENT = 100;

    private final Readings readings;
    private final Channel channel;
    private final Trace time;
    private final Trace reading;
    private final double perReading;
    private final double perReadingAtRest;
    private final int[] rows;

    private Stretch(Readings readings, Channel channel, double perReading) {
        this.readings = readings;
        this.channel = channel;
        this.time = readings.trace(CreepForm.TIME);
        this.reading = readings.trace(channel);
        this.perReading = perReading;
        this.perReadingAtRest = readings.once("strain per reading", Double.class, () -> perReading);
        this.rows = readings.once("rows", int[].class, this::usableRows);
    }

    /** Returns the record; empty where time or strain were not recorded. */
    static Optional<Stretch> of(Readings readings) {
        if (!readings.has(CreepForm.TIME)) {
            return Optional.empty();
        }
        if (readings.has(CreepForm.STRAIN)) {
            return Optional.of(new Stretch(readings, CreepForm.STRAIN, 1));
        }
        return readings.has(CreepForm.EXTENSION) && readings.has(CreepForm.GAUGE_LENGTH)
                ? Optional.of(new Stretch(
                        readings,
                        CreepForm.EXTENSION,
                        PER_CENT / readings.number(CreepForm.GAUGE_LENGTH)))
                : Optional.empty();
    }

    /** Returns the rows with both numbers whose time lies behind that of all before. */
    private int[] usableRows() {
        double[] latest = {0};
        return IntStream.range(0, time.size())
                .filter(row -> Double.isFinite(reading.get(row)) && time.get(row) > latest[0])
                .peek(row -> latest[0] = time.get(row))
                .toArray();
    }

    int rows() {
        return rows.length;
    }

    int recordedRows() {
        return time.size();
    }

    double firstHours() {
        return time.get(rows[0]);
    }

    double lastHours() {
        return time.get(rows[rows.length - 1]);
    }

    double[] hours() {
        return IntStream.of(rows).mapToDouble(time::get).toArray();
    }

    double[] strains() {
        return IntStream.of(rows)
                .mapToDouble(row -> reading.get(row) * perReading)
                .toArray();
    }

    /** Returns what a strain of the world without errors is multiplied by here. */
    double scale() {
        return reading.scale() * perReading / perReadingAtRest;
    }

    /** Returns a strain of the world without errors as it is read here. */
    double asReadHere(double restStrain) {
        return restStrain * scale() + reading.offset() * perReading;
    }

    /**
     * Returns the strain at a time within the record, straight in the logarithm of time.
     *
     * @param place what the reading is called among sources of error
     */
    double at(double hours, String place) {
        int after = 0;
        while (time.get(rows[after]) < hours) {
            after++;
        }
        double there = reading.get(rows[after]);
        if (after > 0) {
            double from = StrictMath.log(time.get(rows[after - 1]));
            double part =
                    (StrictMath.log(hours) - from) / (StrictMath.log(time.get(rows[after])) - from);
            double before = reading.get(rows[after - 1]);
            there = before + (there - before) * part;
        }
        return (there + readings.resolutionAt(channel, place.replace('_', ' '))) * perReading;
    }
}
