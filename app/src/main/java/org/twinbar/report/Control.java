package org.twinbar.report;

import java.util.List;

/**
 * A control chart, ready to be drawn.
 *
 * @param label what was read, with its unit
 * @param values in the order in which they were read
 * @param baseline how many of the first set the limits
 * @param flagged places, counted from 0, at which something changed
 */
public record Control(
        String label,
        List<Double> values,
        List<Double> weighted,
        int baseline,
        double centre,
        double low,
        double high,
        List<Integer> flagged) {

    public Control {
        values = List.copyOf(values);
        weighted = List.copyOf(weighted);
        flagged = List.copyOf(flagged);
    }
}
