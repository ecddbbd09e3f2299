package org.twinbar.report.paper;

import java.util.List;
import java.util.Locale;
import org.twinbar.report.Theme;
import org.twinbar.specimen.Outline;
import org.twinbar.specimen.Point;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;

/**
 * A specimen seen from above and from the side, to scale, with the numbered places where it is
 * measured and the place of its code.
 */
final class ShapePicture {

    private static final double MOST_WIDTH = 120;
    private static final double MOST_HEIGHT = 42;
    private static final double CHORD = 0.1;
    private static final double EDGE = 6;
    private static final double BETWEEN = 9;
    private static final double TEXT = 3;

    private final Shape shape;
    private final double length;
    private final double width;
    private final double height;
    private final double scale;
    private final StringBuilder svg = new StringBuilder();

    private ShapePicture(Shape shape) {
        this.shape = shape;
        this.length = 2 * most(outer(), Point::x);
        this.width = 2 * most(outer(), Point::y);
        this.height = shape.solid() instanceof Solid.Vessel it
                ? it.height()
                : ((Solid.Prism) shape.solid()).height();
        boolean isVessel = shape.solid() instanceof Solid.Vessel;
        double tall = isVessel ? Math.max(width, height) : width + height;
        double wide = isVessel ? 2 * length : length;
        this.scale = Math.min(1.2, Math.min(MOST_WIDTH / wide, MOST_HEIGHT / tall));
    }

    /** Returns the picture as SVG. */
    static String svg(Shape shape) {
        return new ShapePicture(shape).drawn(Size.OF_PAPER);
    }

    /** Returns the picture as SVG that is as wide as a page lets it be. */
    static String forPage(Shape shape) {
        return new ShapePicture(shape).drawn(Size.OF_PAGE);
    }

    /** Returns what the picture shows, in words. */
    static String legend(Shape shape) {
        String places = shape.places().size() == 1
                ? "at 1"
                : "at 1 to " + shape.places().size();
        String what = shape.solid() instanceof Solid.Vessel
                ? "the wall is measured " + places
                : shape.section().isPresent()
                        ? "width and thickness are measured " + places
                        : "the thickness is measured " + places;
        return "%s: %s; its code stands %s."
                .formatted(shape.title(), what, shape.panel().where());
    }

    private String drawn(Size size) {
        boolean isVessel = shape.solid() instanceof Solid.Vessel;
        double wide = isVessel ? 2 * scaled(length) + BETWEEN : scaled(length);
        double tall = isVessel
                ? Math.max(scaled(width), scaled(height))
                : scaled(width) + BETWEEN + Math.max(0.8, scaled(height));
        fromAbove();
        if (isVessel) {
            cut((Solid.Vessel) shape.solid(), scaled(length) + BETWEEN + EDGE);
        } else {
            fromTheSide();
        }
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %1$s %2$s"%3$s font-size="%4$s"><title>%5$s</title>%6$s</svg>""".formatted(
                        text(wide + 2 * EDGE),
                        text(tall + 2 * EDGE),
                        size.attributes(wide + 2 * EDGE, tall + 2 * EDGE),
                        text(TEXT),
                        Setting.escaped(shape.title()),
                        svg);
    }

    private void fromAbove() {
        line(outer());
        if (shape.solid() instanceof Solid.Vessel vessel) {
            line(vessel.inner());
        } else {
            double x = x(shape.panel().centre().x());
            double y = y(shape.panel().centre().y());
            label("code", x, y + TEXT / 3, Theme.SOFT);
        }
        List<Point> places = shape.places();
        for (int i = 0; i < places.size(); i++) {
            Point place = places.get(i);
            if (shape.solid() instanceof Solid.Vessel) {
                at(i + 1, x(place.x()), y(place.y()));
            } else {
                double x = x(place.x());
                double half = scaled(halfWidth(place.x()));
                double middle = y(0);
                stroke(x, middle - half - 1.5, x, middle + half + 1.5);
                label(Integer.toString(i + 1), x, middle - half - 2.6, Theme.TREATED);
            }
        }
    }

    /** Below the view from above, so that the places stand above one another. */
    private void fromTheSide() {
        double top = EDGE + scaled(width) + BETWEEN;
        double tall = Math.max(0.8, scaled(height));
        box(EDGE, top, scaled(length), tall);
        for (Point place : shape.places()) {
            stroke(x(place.x()), top - 1.5, x(place.x()), top + tall + 1.5);
        }
    }

    /** A vessel cut through its middle, with the level that it is filled to. */
    private void cut(Solid.Vessel vessel, double left) {
        double wall = scaled(length) / 2 - scaled(most(vessel.inner(), Point::x));
        double floor = scaled(vessel.floor());
        double right = left + scaled(length);
        double bottom = EDGE + scaled(height);
        svg.append("<path d=\"M%s %sV%sH%sV%sH%sV%sH%sV%sz\" fill=\"%s\"/>"
                .formatted(
                        text(left),
                        text(EDGE),
                        text(bottom),
                        text(right),
                        text(EDGE),
                        text(right - wall),
                        text(bottom - floor),
                        text(left + wall),
                        text(EDGE),
                        colour(Theme.INK)));
        double head = shape.measures().stream()
                .filter(it -> it.name().equals("head of water"))
                .mapToDouble(Shape.Measure::millimetres)
                .findFirst()
                .orElse(0);
        double level = bottom - floor - scaled(head);
        stroke(left + wall, level, right - wall, level);
        label("water", left + scaled(length) / 2, level - 1, Theme.TREATED);
        label("code", left + scaled(length) / 2, bottom - floor - 1, Theme.SOFT);
    }

    private void line(Outline outline) {
        StringBuilder path = new StringBuilder();
        for (Point corner : outline.polygon(CHORD)) {
            path.append(path.isEmpty() ? 'M' : 'L');
            path.append(text(x(corner.x()))).append(' ').append(text(y(corner.y())));
        }
        svg.append("<path d=\"%sz\" fill=\"none\" stroke=\"%s\" stroke-width=\"0.35\"/>"
                .formatted(path, colour(Theme.INK)));
    }

    private void box(double x, double y, double wide, double tall) {
        svg.append(
                "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"0.35\"/>"
                        .formatted(text(x), text(y), text(wide), text(tall), colour(Theme.INK)));
    }

    private void stroke(double fromX, double fromY, double toX, double toY) {
        svg.append("<path d=\"M%s %sL%s %s\" fill=\"none\" stroke=\"%s\" stroke-width=\"0.4\"/>"
                .formatted(text(fromX), text(fromY), text(toX), text(toY), colour(Theme.TREATED)));
    }

    private void at(int number, double x, double y) {
        svg.append("<circle cx=\"%s\" cy=\"%s\" r=\"0.9\" fill=\"%s\"/>"
                .formatted(text(x), text(y), colour(Theme.TREATED)));
        boolean isRight = x > EDGE + scaled(length) / 2 + 1;
        boolean isLeft = x < EDGE + scaled(length) / 2 - 1;
        label(
                Integer.toString(number),
                x + (isRight ? -3 : isLeft ? 3 : 0),
                y + (isRight || isLeft ? TEXT / 3 : 2 + TEXT / 2),
                Theme.TREATED);
    }

    private void label(String text, double x, double y, Theme colour) {
        svg.append("<text x=\"%s\" y=\"%s\" text-anchor=\"middle\" fill=\"%s\">%s</text>"
                .formatted(text(x), text(y), colour(colour), text));
    }

    private Outline outer() {
        return shape.solid() instanceof Solid.Vessel it
                ? it.outer()
                : ((Solid.Prism) shape.solid()).outline();
    }

    /** Returns how far the outline reaches to the side at a place along it (mm). */
    private double halfWidth(double x) {
        List<Point> corners = outer().polygon(CHORD);
        double half = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            if ((from.x() - x) * (to.x() - x) <= 0 && from.x() != to.x()) {
                double share = (x - from.x()) / (to.x() - from.x());
                half = Math.max(half, -(from.y() + share * (to.y() - from.y())));
            }
        }
        return half;
    }

    private static double most(Outline outline, java.util.function.ToDoubleFunction<Point> of) {
        return outline.polygon(CHORD).stream().mapToDouble(of).max().orElseThrow();
    }

    private double scaled(double millimetres) {
        return scale * millimetres;
    }

    private double x(double x) {
        return EDGE + scaled(x + length / 2);
    }

    private double y(double y) {
        return EDGE + scaled(width / 2 - y);
    }

    private static String colour(Theme token) {
        return "var(" + token.variable() + ")";
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
