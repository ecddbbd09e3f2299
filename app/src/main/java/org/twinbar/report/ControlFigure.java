package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;

/** Draws a control chart: values in their order, limits dotted, what is beyond them ringed. */
final class ControlFigure {

    private static final int HEIGHT = 280;
    private static final double AIR = 0.1;

    private final Control control;

    private ControlFigure(Control control) {
        this.control = control;
    }

    static String of(Control control) {
        return new ControlFigure(control).draw();
    }

    private String draw() {
        DoubleStream all = Stream.of(
                        control.values().stream(),
                        control.weighted().stream(),
                        Stream.of(control.low(), control.high()))
                .flatMap(it -> it)
                .mapToDouble(Double::doubleValue);
        double[] sorted = all.sorted().toArray();
        double span = sorted[sorted.length - 1] - sorted[0];
        NumberAxis across = Axes.plain("Test", 0, control.values().size() + 1.0, 5);
        NumberAxis up = Axes.plain(
                control.label(), sorted[0] - AIR * span, sorted[sorted.length - 1] + AIR * span, 4);
        return Chart.plane(across, up)
                .paint(this::limits)
                .paint(this::weighted)
                .paint(this::values)
                .svg(HEIGHT, description());
    }

    private void limits(Chart.Brush brush) {
        double centre = brush.y(control.centre());
        brush.line(brush.left(), centre, brush.right(), centre, Theme.INK, 1.5f);
        for (double limit : new double[] {control.low(), control.high()}) {
            double y = brush.y(limit);
            brush.dotted(brush.left(), y, brush.right(), y, Theme.WARN);
        }
    }

    private void weighted(Chart.Brush brush) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < control.weighted().size(); i++) {
            double x = brush.x(i + 1.0);
            double y = brush.y(control.weighted().get(i));
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        brush.canvas().setPaint(Theme.SOFT.ink());
        brush.canvas().setStroke(new BasicStroke(1.6f));
        brush.canvas().draw(path);
    }

    private void values(Chart.Brush brush) {
        for (int i = 0; i < control.values().size(); i++) {
            double x = brush.x(i + 1.0);
            double y = brush.y(control.values().get(i));
            if (control.flagged().contains(i)) {
                brush.cross(x, y, 9, Theme.WARN);
            }
            brush.sign(i < control.baseline() ? Sign.CONTROL : Sign.FIRST, x, y, 5);
        }
    }

    private String description() {
        return "%s of a reference in the order of %s tests: centre %s, limits %s and %s; %s of them"
                        .formatted(
                                control.label(),
                                control.values().size(),
                                Written.number(control.centre(), 4),
                                Written.number(control.low(), 4),
                                Written.number(control.high(), 4),
                                control.flagged().size())
                + " say that something changed.";
    }
}
