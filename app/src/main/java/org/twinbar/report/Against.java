package org.twinbar.report;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One property against another, a point for each group.
 *
 * @param across label of the one, with its unit
 * @param up label of the other
 */
public record Against(String across, String up, List<Point> points) {

    /**
     * The means of one group.
     *
     * @param name as it is read aloud
     * @param sign hollow for a control
     */
    public record Point(String name, Sign sign, Mean across, Mean up) {}

    /**
     * A mean.
     *
     * @param half of its interval; empty for a single specimen
     */
    public record Mean(double value, OptionalDouble half) {

        double low() {
            return value - half.orElse(0);
        }

        double high() {
            return value + half.orElse(0);
        }
    }

    public Against {
        points = List.copyOf(points);
    }
}
