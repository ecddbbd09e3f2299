package org.twinbar.report;

import java.util.List;
import java.util.Optional;

/**
 * An effect against what it is measured by, on the scale that people read: per cent of change for a
 * ratio, kelvins for a difference.
 *
 * @param label what changed, and in what
 * @param unit unit of the scale
 * @param signs whether a value is a change, which has a sign, or stands by itself
 * @param none the value of no change
 * @param worth the smallest change worth having; two where a claim says that nothing changed
 * @param claimed the change that the claim names
 * @param rows what was found, the measured effect first
 */
public record Effect(
        String label,
        String unit,
        Signs signs,
        Level none,
        List<Level> worth,
        Optional<Level> claimed,
        List<Row> rows) {

    public Effect {
        worth = List.copyOf(worth);
        rows = List.copyOf(rows);
    }

    /** How values of a scale are written. */
    public enum Signs {
        /** With plus or minus. */
        CHANGE,
        /** A minus alone. */
        VALUE
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
