package org.twinbar.report;

import java.util.List;
import java.util.Optional;

/**
 * What so many specimens can tell: a point for each number of them.
 *
 * @param up what the points tell, with its unit
 * @param points the fewest specimens first
 * @param lines sizes that matter, such as the one that is claimed
 * @param chosen specimens in each group; empty where none of the points is meant
 */
public record Reach(String up, List<Point> points, List<Level> lines, Optional<Integer> chosen) {

    public Reach {
        points = List.copyOf(points);
        lines = List.copyOf(lines);
    }

    /**
     * What one number of specimens tells.
     *
     * @param perGroup specimens in each group
     * @param value on the scale of the picture
     * @param written the value as people read it
     */
    public record Point(int perGroup, double value, String written) {}

    /** A size that matters, with its words. */
    public record Level(double value, String words) {}
}
