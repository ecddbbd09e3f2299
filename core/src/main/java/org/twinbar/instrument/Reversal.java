package org.twinbar.instrument;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.instrument.Calibration.Point;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;

/**
 * What an instrument shows more on the way down than on the way up, where both were read.
 *
 * @param mean mean difference over the references that were reached both ways
 * @param largest the difference that is farthest from zero, with its sign
 * @param at the reference where it is
 * @param pairs how many references were reached both ways
 * @param p how often chance alone makes such a mean difference, by Student's paired t; 1 where a
 *     single pair can't tell
 */
public record Reversal(double mean, double largest, double at, int pairs, double p) {

    private static final double TOLD_BELOW_P = 0.05;

    /** Returns whether up and down were found to differ. */
    public boolean differs() {
        return p < TOLD_BELOW_P;
    }

    static Optional<Reversal> of(List<Point> points) {
        Map<Double, Ways> levels = new LinkedHashMap<>();
        boolean up = true;
        double before = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            if (point.reference() != before) {
                up = point.reference() > before;
            }
            before = point.reference();
            Ways ways = levels.computeIfAbsent(point.reference(), it -> new Ways());
            (up ? ways.up : ways.down).add(point.reading());
        }
        List<Double> differences = new ArrayList<>();
        double largest = 0;
        double at = 0;
        for (Map.Entry<Double, Ways> level : levels.entrySet()) {
            Ways ways = level.getValue();
            if (!ways.up.isEmpty() && !ways.down.isEmpty()) {
                double difference = mean(ways.down) - mean(ways.up);
                if (differences.isEmpty() || Math.abs(difference) > Math.abs(largest)) {
                    largest = difference;
                    at = level.getKey();
                }
                differences.add(difference);
            }
        }
        return differences.isEmpty()
                ? Optional.empty()
                : Optional.of(new Reversal(
                        mean(differences), largest, at, differences.size(), p(differences)));
    }

    private static double p(List<Double> differences) {
        int n = differences.size();
        if (n < 2) {
            return 1;
        }
        Summary summary =
                Summary.of(differences.stream().mapToDouble(Double::doubleValue).toArray());
        double error = summary.sd() / Math.sqrt(n);
        if (error == 0) {
            return summary.mean() == 0 ? 1 : 0;
        }
        return new StudentT(n - 1).twoSidedP(summary.mean() / error);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static final class Ways {
        private final List<Double> up = new ArrayList<>();
        private final List<Double> down = new ArrayList<>();
    }
}
