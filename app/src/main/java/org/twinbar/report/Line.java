package org.twinbar.report;

import java.util.List;

/**
 * Specimens over an amount, with the straight line through them.
 *
 * @param across the amount, with its unit
 * @param up the property, with its unit
 * @param groups points by group, the control first
 * @param band the line from the least amount to the most; empty where there is none
 */
public record Line(String across, String up, List<Group> groups, List<Place> band) {

    public Line {
        groups = List.copyOf(groups);
        band = List.copyOf(band);
    }

    /** One group's specimens. */
    public record Group(String name, Sign sign, List<Point> points) {
        public Group {
            points = List.copyOf(points);
        }
    }

    /**
     * One specimen.
     *
     * @param written amount and value as people read them
     */
    public record Point(String specimen, double amount, double value, String written) {}

    /** The line at one amount, with the interval of the mean there. */
    public record Place(double amount, double middle, double low, double high) {}
}
