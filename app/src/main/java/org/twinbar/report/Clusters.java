package org.twinbar.report;

import java.util.List;
import java.util.Optional;
import org.twinbar.decision.Group;
import org.twinbar.method.Property;

/**
 * Specimens as points, group by group.
 *
 * @param label what was measured
 * @param unit its unit's symbol, empty for a plain number
 * @param groups the control first
 */
public record Clusters(String label, String unit, List<Cluster> groups) {

    public Clusters {
        groups = List.copyOf(groups);
    }

    /** One group. */
    public record Cluster(String name, Sign sign, List<Point> points, Optional<Mean> mean) {
        public Cluster {
            points = List.copyOf(points);
        }
    }

    /**
     * One specimen.
     *
     * @param written its value with uncertainty and unit, as people read it
     */
    public record Point(String specimen, double value, String written, Standing standing) {

        public static Point of(String specimen, double value, String written) {
            return new Point(specimen, value, written, Standing.COUNTED);
        }
    }

    /** Whether a specimen takes part in the comparison. */
    public enum Standing {
        COUNTED,
        LEFT_OUT
    }

    /** A group's mean with its 95 % interval; an end is infinite where the data set none. */
    public record Mean(double value, double low, double high, String written) {

        static Mean of(Group group, double value, Property property) {
            double low = group.low().orElse(Double.NEGATIVE_INFINITY);
            double high = group.high().orElse(Double.POSITIVE_INFINITY);
            return new Mean(
                    value,
                    low,
                    high,
                    Written.rounded(value, (high - low) / 4)
                            + Written.behind(property.unit().symbol()));
        }
    }
}
