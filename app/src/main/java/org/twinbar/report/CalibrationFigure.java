package org.twinbar.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.twinbar.instrument.Allowed;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Calibration.Point;

/**
 * Draws a calibration: each reading as a cross, in the order in which it was read, so that a way
 * down that differs from the way up shows as a loop.
 */
final class CalibrationFigure {

    private static final int HEIGHT = 280;
    private static final double CROSS = 4.5;

    private final Calibration calibration;
    private final String unit;

    private CalibrationFigure(Calibration calibration, String unit) {
        this.calibration = calibration;
        this.unit = unit;
    }

    static String line(Calibration calibration, String unit) {
        return new CalibrationFigure(calibration, unit).line();
    }

    static String residuals(Calibration calibration, String unit, Optional<Allowed> allowed) {
        return new CalibrationFigure(calibration, unit).residuals(allowed);
    }

    private String line() {
        List<Point> points = calibration.points();
        return Chart.plane(
                        across(),
                        Axes.over(label("Reading"), points.stream().mapToDouble(Point::reading)))
                .paint(brush -> {
                    double low = calibration.lowest();
                    double high = calibration.highest();
                    brush.line(
                            brush.x(low),
                            brush.y(calibration.line().at(low)),
                            brush.x(high),
                            brush.y(calibration.line().at(high)),
                            Theme.TREATED,
                            1.8f);
                    for (Point point : points) {
                        cross(brush, point, point.reading());
                    }
                })
                .svg(
                        HEIGHT,
                        "%s readings of an instrument over the reference, from %s to %s, with the straight line through them."
                                .formatted(
                                        points.size(),
                                        Written.number(calibration.lowest(), 4),
                                        amount(Written.number(calibration.highest(), 4))));
    }

    private String residuals(Optional<Allowed> allowed) {
        double[] residuals = calibration.residuals();
        double scatter = calibration.scatter();
        double most = Math.max(
                2.2 * scatter, DoubleStream.of(residuals).map(Math::abs).max().orElse(0));
        double shown = allowed.map(Allowed::limit).filter(it -> it < 4 * most).orElse(0.0);
        double end = 1.25 * Math.max(most, shown);
        return Chart.plane(across(), Axes.plain(label("Reading less line"), -end, end, 4))
                .paint(brush -> {
                    allowed.filter(it -> it.limit() == shown).ifPresent(it -> {
                        limit(brush, it.limit());
                        limit(brush, -it.limit());
                        brush.textBeside(
                                "allowed: " + it.words(),
                                brush.left(),
                                brush.y(it.limit()) - 6,
                                Theme.WARN);
                    });
                    brush.line(
                            brush.left(),
                            brush.y(0),
                            brush.right(),
                            brush.y(0),
                            Theme.TREATED,
                            1.8f);
                    loop(brush, residuals);
                    for (int i = 0; i < residuals.length; i++) {
                        cross(brush, calibration.points().get(i), residuals[i]);
                    }
                })
                .svg(
                        HEIGHT,
                        "What each reading lies above or below the line; the farthest is %s, at %s."
                                .formatted(
                                        amount(Written.number(residuals[calibration.worst()], 2)),
                                        amount(Written.number(
                                                calibration
                                                        .points()
                                                        .get(calibration.worst())
                                                        .reference(),
                                                4))));
    }

    private static void limit(Chart.Brush brush, double at) {
        brush.dotted(brush.left(), brush.y(at), brush.right(), brush.y(at), Theme.WARN);
    }

    /** Joins the readings in the order in which they were read. */
    private void loop(Chart.Brush brush, double[] residuals) {
        for (int i = 1; i < residuals.length; i++) {
            brush.line(
                    brush.x(calibration.points().get(i - 1).reference()),
                    brush.y(residuals[i - 1]),
                    brush.x(calibration.points().get(i).reference()),
                    brush.y(residuals[i]),
                    Theme.SOFT,
                    1);
        }
    }

    private void cross(Chart.Brush brush, Point point, double value) {
        double x = brush.x(point.reference());
        double y = brush.y(value);
        String name = "%s: %s"
                .formatted(
                        amount(Written.number(point.reference(), 6)),
                        amount(Written.number(point.reading(), 6)));
        brush.named(name, x, y, CROSS, () -> brush.cross(x, y, CROSS, Theme.INK));
    }

    private NumberAxis across() {
        return Axes.over(
                label("Reference"), DoubleStream.of(calibration.lowest(), calibration.highest()));
    }

    private String label(String what) {
        return unit.isEmpty() ? what : what + ", " + unit;
    }

    private String amount(String number) {
        return number + Written.behind(unit);
    }
}
