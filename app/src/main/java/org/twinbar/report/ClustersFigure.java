package org.twinbar.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;

/**
 * Draws specimens as points: a row for each group, the mean a short bar, its interval a thin line.
 */
final class ClustersFigure {

    private static final int ROW = 94;
    private static final int MIDDLE = 52;
    private static final int HALF = 20;
    private static final int AXIS = 46;

    private final Clusters clusters;

    private ClustersFigure(Clusters clusters) {
        this.clusters = clusters;
    }

    static String of(Clusters clusters) {
        return new ClustersFigure(clusters).draw();
    }

    private String draw() {
        int inside = clusters.groups().size() * ROW;
        String unit = clusters.unit().isEmpty() ? "" : " in " + clusters.unit();
        NumberAxis axis = Axes.over(clusters.label() + unit, everyValue());
        return Chart.rows(axis, inside).paint(this::rows).svg(inside + AXIS, description());
    }

    private DoubleStream everyValue() {
        return clusters.groups().stream()
                .flatMapToDouble(group -> DoubleStream.concat(
                        group.points().stream().mapToDouble(Clusters.Point::value),
                        group.mean().stream()
                                .flatMapToDouble(m -> DoubleStream.of(m.low(), m.high()))));
    }

    private void rows(Chart.Brush brush) {
        double top = brush.top();
        for (Clusters.Cluster group : clusters.groups()) {
            row(brush, group, top);
            top += ROW;
        }
    }

    private static void row(Chart.Brush brush, Clusters.Cluster group, double top) {
        brush.sign(group.sign(), brush.left() + 7, top + 12, 5);
        brush.text(group.name(), brush.left() + 20, top + 17, Theme.INK, Fonts.Weight.BOLD);
        double named = Chart.widthOf(group.name(), Fonts.Weight.BOLD);
        String words =
                count(group) + group.mean().map(m -> ", mean " + m.written()).orElse("");
        brush.text(words, brush.left() + 28 + named, top + 17, Theme.SOFT, Fonts.Weight.REGULAR);
        double y = top + MIDDLE;
        group.mean().ifPresent(mean -> mean(brush, group.sign(), mean, y));
        points(brush, group, y);
    }

    private static void mean(Chart.Brush brush, Sign sign, Clusters.Mean mean, double y) {
        double foot = y + HALF + 9;
        double x = brush.x(mean.value());
        double from = brush.x(mean.low());
        double to = brush.x(mean.high());
        brush.line(from, foot, to, foot, sign.colour(), 2);
        brush.openEnd(mean.low(), from, foot, -1, sign.colour());
        brush.openEnd(mean.high(), to, foot, 1, sign.colour());
        brush.line(x, y - HALF - 2, x, foot + 5, sign.colour(), 4);
    }

    private static void points(Chart.Brush brush, Clusters.Cluster group, double middle) {
        double radius = group.points().size() <= 14 ? 6 : group.points().size() <= 40 ? 4.5 : 3;
        List<Clusters.Point> sorted = group.points().stream()
                .sorted(Comparator.comparingDouble(Clusters.Point::value))
                .toList();
        double[] x = sorted.stream().mapToDouble(p -> brush.x(p.value())).toArray();
        double[] off = apart(x, radius);
        for (int i = 0; i < x.length; i++) {
            Clusters.Point point = sorted.get(i);
            double y = middle + off[i];
            boolean out = point.standing() == Clusters.Standing.LEFT_OUT;
            String name = point.specimen() + ": " + point.written() + (out ? ", left out" : "");
            double at = x[i];
            brush.named(name, at, y, radius, () -> {
                if (out) {
                    brush.cross(at, y, radius, Theme.SOFT);
                } else {
                    brush.sign(group.sign(), at, y, radius);
                }
            });
        }
    }

    /**
     * Returns how far each point of a row is moved aside so that none hides another, as long as the
     * row has room; x must rise.
     */
    static double[] apart(double[] x, double radius) {
        double[] off = new double[x.length];
        double gap = 2 * radius + 2;
        double step = gap / 2;
        for (int i = 0; i < x.length; i++) {
            for (double candidate : offsets(step)) {
                boolean free = true;
                for (int j = i - 1; j >= 0 && x[i] - x[j] < gap; j--) {
                    free &= Math.hypot(x[i] - x[j], candidate - off[j]) >= gap;
                }
                off[i] = candidate;
                if (free) {
                    break;
                }
            }
        }
        return off;
    }

    private static List<Double> offsets(double step) {
        List<Double> offsets = new ArrayList<>(List.of(0.0));
        for (double off = step; off <= HALF; off += step) {
            offsets.add(off);
            offsets.add(-off);
        }
        return offsets;
    }

    private static String count(Clusters.Cluster group) {
        Map<Clusters.Standing, Integer> counts = new LinkedHashMap<>();
        group.points().forEach(point -> counts.merge(point.standing(), 1, Integer::sum));
        int counted = counts.getOrDefault(Clusters.Standing.COUNTED, 0);
        int out = counts.getOrDefault(Clusters.Standing.LEFT_OUT, 0);
        return "n" + Written.THIN + "=" + Written.THIN + counted
                + (out == 0 ? "" : " and " + out + " left out");
    }

    private String description() {
        StringBuilder words = new StringBuilder(clusters.label()).append(" of each specimen. ");
        for (Clusters.Cluster group : clusters.groups()) {
            words.append(group.name()).append(": ").append(count(group));
            group.mean().ifPresent(mean -> words.append(", mean ").append(mean.written()));
            words.append(". ");
        }
        return words.toString().strip();
    }
}
