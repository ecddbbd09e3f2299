package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;

/**
 * Draws groups over places: each mean with its interval, and a line from place to place, dashed for
 * the control and full for what is treated.
 */
final class CrossedFigure {

    private static final int HEIGHT = 300;
    private static final double RADIUS = 6;

    /** How far groups stand beside each other at a place, so that intervals don't overlap. */
    private static final double APART = 14;

    /** What the scale leaves free above the means for the key. */
    private static final double ROOM_FOR_KEY = 1.16;

    private final Crossed crossed;

    private CrossedFigure(Crossed crossed) {
        this.crossed = crossed;
    }

    static String of(Crossed crossed) {
        return new CrossedFigure(crossed).draw();
    }

    private String draw() {
        NumberAxis up = Axes.over(
                crossed.up(),
                crossed.groups().stream()
                        .flatMap(group -> group.means().stream())
                        .flatMap(Optional::stream)
                        .flatMapToDouble(
                                mean -> DoubleStream.of(mean.value(), mean.low(), mean.high())));
        double span = up.getUpperBound() - up.getLowerBound();
        up.setUpperBound(up.getLowerBound() + span * ROOM_FOR_KEY);
        return Chart.plane(Axes.named(crossed.places()), up)
                .paint(this::groups)
                .paint(this::key)
                .svg(HEIGHT, words());
    }

    private void groups(Chart.Brush brush) {
        for (int i = 0; i < crossed.groups().size(); i++) {
            double aside = (i - (crossed.groups().size() - 1) / 2.0) * APART;
            group(brush, crossed.groups().get(i), aside);
        }
    }

    private void group(Chart.Brush brush, Crossed.Group group, double aside) {
        Optional<double[]> before = Optional.empty();
        for (int place = 0; place < crossed.places().size(); place++) {
            Optional<Clusters.Mean> mean = group.means().get(place);
            if (mean.isPresent()) {
                double[] at = {brush.x(place) + aside, brush.y(mean.get().value())};
                before.ifPresent(from -> join(brush, group.sign(), from, at));
                before = Optional.of(at);
            } else {
                before = Optional.empty();
            }
        }
        for (int place = 0; place < crossed.places().size(); place++) {
            String where = crossed.places().get(place);
            double x = brush.x(place) + aside;
            group.means().get(place).ifPresent(mean -> mean(brush, group, where, mean, x));
        }
    }

    private static void join(Chart.Brush brush, Sign sign, double[] from, double[] to) {
        if (sign.hollow()) {
            brush.dashed(from[0], from[1], to[0], to[1], sign.colour());
        } else {
            brush.line(from[0], from[1], to[0], to[1], sign.colour(), 2);
        }
    }

    private static void mean(
            Chart.Brush brush, Crossed.Group group, String where, Clusters.Mean mean, double x) {
        Theme colour = group.sign().colour();
        double y = brush.y(mean.value());
        if (Double.isFinite(mean.low()) && Double.isFinite(mean.high())) {
            brush.line(x, brush.y(mean.low()), x, brush.y(mean.high()), colour, 2);
        }
        String name = group.name() + ", " + where + ": " + mean.written();
        brush.named(name, x, y, RADIUS + 1, () -> brush.sign(group.sign(), x, y, RADIUS));
    }

    private void key(Chart.Brush brush) {
        double x = brush.left() + 8;
        double y = brush.top() + 12;
        for (Crossed.Group group : crossed.groups()) {
            double wide = Chart.widthOf(group.name(), Fonts.Weight.REGULAR);
            brush.ground(x - 7, y - 9, wide + 44, 18);
            join(brush, group.sign(), new double[] {x, y}, new double[] {x + 24, y});
            brush.sign(group.sign(), x + 12, y, 5);
            brush.text(group.name(), x + 31, y + 5, Theme.INK, Fonts.Weight.REGULAR);
            x += 31 + wide + 18;
        }
    }

    private String words() {
        StringBuilder words = new StringBuilder(crossed.up())
                .append(" at ")
                .append(String.join(" and ", crossed.places()))
                .append(", a line for each group. ");
        for (Crossed.Group group : crossed.groups()) {
            List<String> means = new ArrayList<>();
            for (int place = 0; place < crossed.places().size(); place++) {
                String where = crossed.places().get(place);
                group.means().get(place).ifPresent(mean -> means.add(where + " " + mean.written()));
            }
            words.append(group.name())
                    .append(": ")
                    .append(String.join(", ", means))
                    .append(". ");
        }
        return words.toString().strip();
    }
}
