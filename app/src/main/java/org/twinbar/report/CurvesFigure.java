package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;

/** Draws recorded curves over each other: the control dashed, the treated full, peaks marked. */
final class CurvesFigure {

    private static final int HEIGHT = 300;
    /** So many rows in all keep a picture of 200 curves below half a megabyte. */
    private static final int ROWS_IN_ALL = 16_000;

    private static final int MOST_ROWS_OF_ONE = 300;
    private static final int LEAST_ROWS_OF_ONE = 40;
    private static final int MANY = 24;

    private final Curves curves;
    private final int rowsOfOne;
    private final boolean many;

    private CurvesFigure(Curves curves) {
        this.curves = curves;
        int count = (int) all().count();
        rowsOfOne = Math.max(
                LEAST_ROWS_OF_ONE, Math.min(MOST_ROWS_OF_ONE, ROWS_IN_ALL / Math.max(1, count)));
        many = count > MANY;
    }

    static String of(Curves curves) {
        return new CurvesFigure(curves).draw();
    }

    private Stream<Curves.Curve> all() {
        return curves.groups().stream().flatMap(group -> group.curves().stream());
    }

    private String draw() {
        NumberAxis across = scale(curves.across(), 5, Curves.Curve::across);
        // The key stands above the curves, in room that the scale leaves free.
        NumberAxis up = scale(curves.up(), 4, Curves.Curve::up);
        up.setUpperBound(up.getLowerBound() + (up.getUpperBound() - up.getLowerBound()) * 1.12);
        return Chart.plane(across, up)
                .paint(this::key)
                .paint(this::lines)
                .paint(this::peaks)
                .svg(HEIGHT, description());
    }

    private NumberAxis scale(
            String label, int steps, java.util.function.Function<Curves.Curve, double[]> channel) {
        double[] ends = all().map(channel)
                .flatMapToDouble(values -> {
                    double low = Double.POSITIVE_INFINITY;
                    double high = Double.NEGATIVE_INFINITY;
                    for (double value : values) {
                        if (Double.isFinite(value)) {
                            low = Math.min(low, value);
                            high = Math.max(high, value);
                        }
                    }
                    return DoubleStream.of(low, high);
                })
                .filter(Double::isFinite)
                .toArray();
        double low = DoubleStream.of(ends).min().orElse(0);
        double high = DoubleStream.of(ends).max().orElse(1);
        double span = high > low ? high - low : 1;
        // A curve that begins about zero begins at the corner.
        double from = low >= -0.02 * span && low <= 0.1 * span ? Math.min(0, low) : low;
        return Axes.plain(label, from, high + 0.03 * span, steps);
    }

    private void key(Chart.Brush brush) {
        double x = brush.left() + 8;
        for (Curves.Group group : curves.groups()) {
            double y = brush.top() + 12;
            brush.canvas().setPaint(group.sign().colour().ink());
            brush.canvas().setStroke(stroke(group.sign(), 2.2f));
            Path2D sample = new Path2D.Double();
            sample.moveTo(x, y);
            sample.lineTo(x + 28, y);
            brush.canvas().draw(sample);
            brush.sign(group.sign(), x + 14, y, 4);
            brush.text(group.name(), x + 35, y + 5, Theme.INK, Fonts.Weight.REGULAR);
            x += 35 + Chart.widthOf(group.name(), Fonts.Weight.REGULAR) + 18;
        }
    }

    private void lines(Chart.Brush brush) {
        for (Curves.Group group : curves.groups()) {
            for (Curves.Curve curve : group.curves()) {
                Path2D path = new Path2D.Double();
                for (int row : Thinned.rows(curve.across(), curve.up(), rowsOfOne)) {
                    if (!isDrawn(curve, row)) {
                        break;
                    }
                    double x = brush.x(curve.across()[row]);
                    double y = brush.y(curve.up()[row]);
                    if (path.getCurrentPoint() == null) {
                        path.moveTo(x, y);
                    } else {
                        path.lineTo(x, y);
                    }
                }
                if (path.getCurrentPoint() == null) {
                    continue;
                }
                brush.canvas().group(Map.of("class", "curve", "title", curve.specimen()), () -> {
                    Theme colour = group.sign().colour();
                    brush.canvas().setPaint(many ? colour.thinInk() : colour.ink());
                    brush.canvas().setStroke(stroke(group.sign(), many ? 0.8f : 1.4f));
                    brush.canvas().draw(path);
                });
            }
        }
    }

    private void peaks(Chart.Brush brush) {
        for (Curves.Group group : curves.groups()) {
            for (Curves.Curve curve : group.curves()) {
                curve.peak()
                        .filter(row -> Double.isFinite(curve.up()[row]) && isDrawn(curve, row))
                        .ifPresent(row -> brush.sign(
                                group.sign(),
                                brush.x(curve.across()[row]),
                                brush.y(curve.up()[row]),
                                many ? 2.5 : 4));
            }
        }
    }

    private boolean isDrawn(Curves.Curve curve, int row) {
        return !(curve.across()[row] > curves.until().orElse(Double.POSITIVE_INFINITY));
    }

    private static BasicStroke stroke(Sign sign, float width) {
        float[] dashes = sign.hollow() ? new float[] {6, 4} : null;
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }

    private String description() {
        StringBuilder words =
                new StringBuilder(curves.up()).append(" against ").append(curves.across());
        words.append(", a curve for each specimen. ");
        for (Curves.Group group : curves.groups()) {
            words.append(group.name()).append(": ");
            words.append(group.curves().size()).append(" curves");
            words.append(group.sign().hollow() ? ", dashed. " : ", full lines. ");
        }
        return words.toString().strip();
    }
}
