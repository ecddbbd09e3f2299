package org.twinbar.report;

import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Draws one property against another: means as points, their intervals as thin lines. */
final class AgainstFigure {

    private static final int HEIGHT = 320;

    private final Against against;

    private AgainstFigure(Against against) {
        this.against = against;
    }

    static String of(Against against) {
        return new AgainstFigure(against).draw();
    }

    private String draw() {
        return Chart.plane(
                        Axes.over(
                                against.across(),
                                against.points().stream()
                                        .flatMapToDouble(it -> DoubleStream.of(
                                                it.across().low(), it.across().high()))),
                        Axes.over(
                                against.up(),
                                against.points().stream()
                                        .flatMapToDouble(it -> DoubleStream.of(
                                                it.up().low(), it.up().high()))))
                .paint(this::intervals)
                .paint(this::points)
                .svg(HEIGHT, description());
    }

    private void intervals(Chart.Brush brush) {
        for (Against.Point point : against.points()) {
            double x = brush.x(point.across().value());
            double y = brush.y(point.up().value());
            Theme colour = point.sign().colour();
            brush.line(
                    brush.x(point.across().low()), y, brush.x(point.across().high()), y, colour, 1);
            brush.line(x, brush.y(point.up().low()), x, brush.y(point.up().high()), colour, 1);
        }
    }

    private void points(Chart.Brush brush) {
        for (Against.Point point : against.points()) {
            double x = brush.x(point.across().value());
            double y = brush.y(point.up().value());
            brush.named(point.name(), x, y, 6, () -> brush.sign(point.sign(), x, y, 6));
        }
    }

    private String description() {
        return "%s against %s. %s"
                .formatted(
                        against.up(),
                        against.across(),
                        against.points().stream()
                                .map(it -> "%s: %s and %s"
                                        .formatted(
                                                it.name(), written(it.up()), written(it.across())))
                                .collect(Collectors.joining("; ", "", ".")));
    }

    private static String written(Against.Mean mean) {
        return Written.value(mean.value(), mean.half().orElse(0), "");
    }
}
