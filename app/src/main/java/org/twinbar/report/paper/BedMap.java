package org.twinbar.report.paper;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.twinbar.report.Theme;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.Plate;
import org.twinbar.specimen.Point;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;

/**
 * The part of a bed that is taken, seen from above, its front edge below: which specimen lies
 * where.
 */
final class BedMap {

    private static final double MOST_WIDTH = 170;
    private static final double MOST_HEIGHT = 95;
    private static final double EDGE = 1;
    private static final double FRONT = 5;
    private static final double LEAST_TEXT = 1.6;
    private static final double MOST_TEXT = 4;
    private static final double CHORD = 0.2;

    private final Plate plate;
    private final double taken;
    private final double scale;
    private final StringBuilder svg = new StringBuilder();

    private BedMap(Plate plate) {
        this.plate = plate;
        this.taken = Math.min(
                plate.bed().width(),
                plate.bed().gap()
                        + plate.specimens().stream()
                                .mapToDouble(it -> it.mesh().box().most(1))
                                .max()
                                .orElse(0));
        this.scale = Math.min(MOST_WIDTH / plate.bed().length(), MOST_HEIGHT / taken);
    }

    static String svg(Plate plate) {
        return new BedMap(plate).drawn(Size.OF_PAPER);
    }

    /** Returns the picture as SVG that is as wide as a page lets it be. */
    static String forPage(Plate plate) {
        return new BedMap(plate).drawn(Size.OF_PAGE);
    }

    private String drawn(Size size) {
        double wide = scale * plate.bed().length();
        double tall = scale * taken;
        svg.append(
                "<path d=\"M%1$s %1$sv%3$sh%2$sv-%3$s\" fill=\"none\" stroke=\"%4$s\" stroke-width=\"0.25\"/>"
                        .formatted(text(EDGE), text(wide), text(tall), colour(Theme.SOFT)));
        svg.append(
                "<text x=\"%s\" y=\"%s\" font-size=\"3\" text-anchor=\"middle\" fill=\"%s\">front edge of the bed</text>"
                        .formatted(
                                text(EDGE + wide / 2),
                                text(EDGE + tall + FRONT - 1),
                                colour(Theme.SOFT)));
        plate.specimens().forEach(this::draw);
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %1$s %2$s"%3$s><title>Bed from above</title>%4$s</svg>""".formatted(
                        text(wide + 2 * EDGE),
                        text(tall + EDGE + FRONT),
                        size.attributes(wide + 2 * EDGE, tall + EDGE + FRONT),
                        svg);
    }

    private void draw(Plate.Lying one) {
        Mesh.Box box = one.mesh().box();
        svg.append("<path d=\"")
                .append(isLying(one) ? outline(one) : rectangle(box))
                .append("\" fill=\"")
                .append(colour(Theme.SHEET))
                .append("\" stroke=\"")
                .append(colour(Theme.INK))
                .append("\" stroke-width=\"0.25\"/>");
        boolean isUpright = box.size(1) > 1.5 * box.size(0);
        double along = scale * Math.max(box.size(0), box.size(1));
        double across = scale * Math.min(narrowest(one), Math.min(box.size(0), box.size(1)));
        double size = Math.min(
                MOST_TEXT, Math.min(across * 0.8, along / (0.65 * one.name().length())));
        double x = x(one.x());
        double y = y(one.y());
        svg.append(
                "<text x=\"%1$s\" y=\"%2$s\" font-size=\"%3$s\" text-anchor=\"middle\" fill=\"%4$s\"%5$s>%6$s</text>"
                        .formatted(
                                text(x),
                                text(y + 0.36 * Math.max(LEAST_TEXT, size)),
                                text(Math.max(LEAST_TEXT, size)),
                                colour(Theme.TREATED),
                                isUpright
                                        ? " transform=\"rotate(-90 %s %s)\""
                                                .formatted(text(x), text(y))
                                        : "",
                                Setting.escaped(one.name())));
    }

    /** The code stands in the middle of the picture, where a lying bar may be narrow (mm). */
    private static double narrowest(Plate.Lying one) {
        return isLying(one)
                ? one.specimen()
                        .shape()
                        .section()
                        .map(Shape.Section::width)
                        .orElse(Double.POSITIVE_INFINITY)
                : Double.POSITIVE_INFINITY;
    }

    /** A lying prism shows its outline; what stands on edge or end shows a rectangle. */
    private static boolean isLying(Plate.Lying one) {
        return one.specimen().orientation() == PrintOrientation.FLAT;
    }

    private String outline(Plate.Lying one) {
        Solid.Plain solid = one.specimen().shape().solid();
        List<Point> corners = (solid instanceof Solid.Vessel vessel
                        ? vessel.outer()
                        : ((Solid.Prism) solid).outline())
                .polygon(CHORD);
        boolean turned = one.spot().isTurned();
        return corners.stream()
                .map(it -> turned ? new Point(-it.y(), it.x()) : it)
                .map(it -> text(x(one.x() + it.x())) + " " + text(y(one.y() + it.y())))
                .collect(Collectors.joining("L", "M", "z"));
    }

    private String rectangle(Mesh.Box box) {
        return "M%s %sh%sv%sh%sz"
                .formatted(
                        text(x(box.least(0))),
                        text(y(box.most(1))),
                        text(scale * box.size(0)),
                        text(scale * box.size(1)),
                        text(-scale * box.size(0)));
    }

    private double x(double x) {
        return EDGE + scale * x;
    }

    private double y(double y) {
        return EDGE + scale * (taken - y);
    }

    private static String colour(Theme token) {
        return "var(" + token.variable() + ")";
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
