package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;

/** Draws specimens over an amount: the line in its band, each specimen a point. */
final class LineFigure {

    private static final int HEIGHT = 300;

    private final Line line;

    private LineFigure(Line line) {
        this.line = line;
    }

    static String of(Line line) {
        return new LineFigure(line).draw();
    }

    private String draw() {
        NumberAxis across = Axes.over(
                line.across(),
                line.groups().stream()
                        .flatMap(group -> group.points().stream())
                        .mapToDouble(Line.Point::amount));
        NumberAxis up = Axes.over(
                line.up(),
                DoubleStream.concat(
                        line.groups().stream()
                                .flatMap(group -> group.points().stream())
                                .mapToDouble(Line.Point::value),
                        line.band().stream()
                                .flatMapToDouble(
                                        place -> DoubleStream.of(place.low(), place.high()))));
        // The key stands above the points, in room that the scale leaves free.
        up.setUpperBound(up.getLowerBound() + (up.getUpperBound() - up.getLowerBound()) * 1.12);
        return Chart.plane(across, up)
                .paint(this::band)
                .paint(this::points)
                .paint(this::key)
                .svg(HEIGHT, words());
    }

    private void band(Chart.Brush brush) {
        if (line.band().isEmpty()) {
            return;
        }
        Path2D ground = new Path2D.Double();
        Path2D middle = new Path2D.Double();
        for (Line.Place place : line.band()) {
            double x = brush.x(place.amount());
            if (middle.getCurrentPoint() == null) {
                middle.moveTo(x, brush.y(place.middle()));
                ground.moveTo(x, brush.y(place.high()));
            } else {
                middle.lineTo(x, brush.y(place.middle()));
                ground.lineTo(x, brush.y(place.high()));
            }
        }
        List<Line.Place> back = new ArrayList<>(line.band());
        Collections.reverse(back);
        back.forEach(place -> ground.lineTo(brush.x(place.amount()), brush.y(place.low())));
        ground.closePath();
        brush.canvas().setPaint(Theme.WASH.ink());
        brush.canvas().fill(ground);
        brush.canvas().setPaint(Theme.LINE.ink());
        brush.canvas().setStroke(new BasicStroke(1));
        brush.canvas().draw(ground);
        brush.canvas().setPaint(Theme.TREATED.ink());
        brush.canvas().setStroke(new BasicStroke(2.2f));
        brush.canvas().draw(middle);
    }

    private void points(Chart.Brush brush) {
        for (Line.Group group : line.groups()) {
            for (Line.Point point : group.points()) {
                double x = brush.x(point.amount());
                double y = brush.y(point.value());
                brush.named(
                        point.specimen() + ": " + point.written(),
                        x,
                        y,
                        6,
                        () -> brush.sign(group.sign(), x, y, 5));
            }
        }
    }

    private void key(Chart.Brush brush) {
        double x = brush.left() + 8;
        double y = brush.top() + 12;
        for (Line.Group group : line.groups()) {
            brush.sign(group.sign(), x, y, 5);
            brush.text(group.name(), x + 11, y + 5, Theme.INK, Fonts.Weight.REGULAR);
            x += 11 + Chart.widthOf(group.name(), Fonts.Weight.REGULAR) + 18;
        }
    }

    private String words() {
        StringBuilder words = new StringBuilder(line.up()).append(" over ").append(line.across());
        words.append(", a point for each specimen");
        if (!line.band().isEmpty()) {
            Line.Place first = line.band().get(0);
            Line.Place last = line.band().get(line.band().size() - 1);
            words.append("; the line runs from ")
                    .append(Written.number(first.middle(), 3))
                    .append(" to ")
                    .append(Written.number(last.middle(), 3));
        }
        words.append(". ");
        for (Line.Group group : line.groups()) {
            words.append(group.name())
                    .append(": ")
                    .append(Cells.count(group.points().size(), "specimen"))
                    .append(". ");
        }
        return words.toString().strip();
    }
}
