package org.twinbar.report;

import java.util.List;
import java.util.Optional;

/**
 * An effect against what it is measured by, on the scale that people read: per cent of change for a
 * ratio, kelvins for a difference.
 *
 * @param label what changed, and in what
 * @param unit unit of the scale
 * @param none the value of no change
 * @param worth the smallest change worth having
 * @param claimed the change that the claim names
 * @param rows what was found, the measured effect first
 */
public record Effect(
        String label,
        String unit,
        double none,
        Optional<Level> worth,
        Optional<Level> claimed,
        List<Row> rows) {

    public Effect {
        rows = List.copyOf(rows);
    }

    /** A value that a line is drawn at, with the words written on it. */
    public record Level(double value, String words) {}

    /** What a row shows. */
    public enum Kind {
        /** What was measured. */
        MEASURED,
        /** What the added section alone would give. */
        EXPECTED
    }

    /** An estimate with its interval; an end is infinite where the data set none. */
    public record Row(String words, Kind kind, double estimate, double low, double high) {}
}
