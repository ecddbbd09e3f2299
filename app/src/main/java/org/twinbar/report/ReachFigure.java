package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;

/** Draws what specimens can tell over how many there are. */
final class ReachFigure {

    private static final int HEIGHT = 260;
    private static final double RADIUS = 5;
    private static final double OTHERWISE = 1.5;

    private final Reach reach;

    private ReachFigure(Reach reach) {
        this.reach = reach;
    }

    static String of(Reach reach) {
        return new ReachFigure(reach).draw();
    }

    private String draw() {
        NumberAxis across = Axes.fromZero(
                "specimens in each group",
                reach.points().stream().mapToInt(Reach.Point::perGroup).max().orElse(1),
                5);
        double most = DoubleStream.concat(
                        reach.points().stream().mapToDouble(Reach.Point::value),
                        reach.lines().stream().mapToDouble(Reach.Level::value))
                .max()
                .orElse(1);
        return Chart.plane(across, Axes.fromZero(reach.up(), most * 1.06, 5))
                .paint(this::lines)
                .paint(this::curve)
                .paint(this::points)
                .svg(HEIGHT, words());
    }

    private void lines(Chart.Brush brush) {
        for (Reach.Level level : reach.lines()) {
            double y = brush.y(level.value());
            brush.dotted(brush.left(), y, brush.right(), y, Theme.WARN);
            double wide = Chart.widthOf(level.words(), Fonts.Weight.REGULAR);
            brush.text(
                    level.words(),
                    brush.right() - wide - 2,
                    y - 6,
                    Theme.WARN,
                    Fonts.Weight.REGULAR);
        }
    }

    private void curve(Chart.Brush brush) {
        Path2D path = new Path2D.Double();
        for (Reach.Point point : reach.points()) {
            double x = brush.x(point.perGroup());
            double y = brush.y(point.value());
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        brush.canvas().setPaint(Theme.TREATED.ink());
        brush.canvas().setStroke(new BasicStroke(1.6f));
        if (path.getCurrentPoint() != null) {
            brush.canvas().draw(path);
        }
    }

    /** The number that is chosen is larger, and stands on the axis. */
    private void points(Chart.Brush brush) {
        for (Reach.Point point : reach.points()) {
            double x = brush.x(point.perGroup());
            double y = brush.y(point.value());
            boolean isChosen =
                    reach.chosen().filter(it -> it == point.perGroup()).isPresent();
            String name = "%s: %s".formatted(point.perGroup(), point.written());
            brush.named(name, x, y, RADIUS + 1, () -> {
                if (isChosen) {
                    brush.line(x, y, x, brush.bottom(), Theme.TREATED, 1);
                }
                brush.sign(Sign.FIRST, x, y, isChosen ? RADIUS : OTHERWISE);
            });
        }
    }

    private String words() {
        StringBuilder words =
                new StringBuilder(reach.up()).append(", over specimens in each group: ");
        reach.points()
                .forEach(point -> words.append(point.perGroup())
                        .append(": ")
                        .append(point.written())
                        .append(
                                reach.chosen()
                                                .filter(it -> it == point.perGroup())
                                                .isPresent()
                                        ? " (chosen); "
                                        : "; "));
        reach.lines().forEach(level -> words.append(level.words()).append("; "));
        return words.toString().replaceAll("; $", ".");
    }
}
