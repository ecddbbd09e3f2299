package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;

/** Draws specimens over an amount: the line in its band, each specimen a point. */
final class LineFigure {

    private static final int HEIGHT = 300;
    private static final double RADIUS = 5;

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

    /** Specimens at one amount stand beside each other, so that none hides another. */
    private void points(Chart.Brush brush) {
        Map<Double, List<Map.Entry<Line.Group, Line.Point>>> columns = new TreeMap<>();
        for (Line.Group group : line.groups()) {
            for (Line.Point point : group.points()) {
                columns.computeIfAbsent(point.amount(), unused -> new ArrayList<>())
                        .add(Map.entry(group, point));
            }
        }
        columns.values().forEach(column -> column(brush, column));
    }

    private static void column(Chart.Brush brush, List<Map.Entry<Line.Group, Line.Point>> column) {
        List<Map.Entry<Line.Group, Line.Point>> rising = column.stream()
                .sorted(Comparator.comparingDouble((Map.Entry<Line.Group, Line.Point> one) ->
                        -one.getValue().value()))
                .toList();
        double[] heights = rising.stream()
                .mapToDouble(one -> brush.y(one.getValue().value()))
                .toArray();
        double[] aside = ClustersFigure.apart(heights, RADIUS);
        for (int i = 0; i < heights.length; i++) {
            Line.Point point = rising.get(i).getValue();
            Sign sign = rising.get(i).getKey().sign();
            double x = brush.x(point.amount()) + aside[i];
            double y = heights[i];
            String name = point.specimen() + ": " + point.written();
            brush.named(name, x, y, RADIUS + 1, () -> brush.sign(sign, x, y, RADIUS));
        }
    }

    private void key(Chart.Brush brush) {
        double x = brush.left() + 8;
        double y = brush.top() + 12;
        for (Line.Group group : line.groups()) {
            double wide = Chart.widthOf(group.name(), Fonts.Weight.REGULAR);
            brush.ground(x - 7, y - 9, wide + 20, 18);
            brush.sign(group.sign(), x, y, 5);
            brush.text(group.name(), x + 11, y + 5, Theme.INK, Fonts.Weight.REGULAR);
            x += 11 + wide + 18;
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
