package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.twinbar.specimen.Form.Label;
import org.twinbar.specimen.Shape.Measure;
import org.twinbar.specimen.Shape.Section;

/**
 * The shapes that the test methods ask for, at their nominal sizes. Source: METHODS.md A.3; what
 * the standards leave open, or what is from memory, is said in each shape's source.
 */
public final class StandardShapes {

    /** Half of the notch's angle of 45° (rad). */
    private static final double HALF_NOTCH = Math.PI / 8;

    private static final double NOTCH_DEPTH = 2;
    private static final double NOTCH_RADIUS = 0.25;
    private static final double MARK = 0.4;

    private static final List<Shape> ALL = List.copyOf(made());

    private StandardShapes() {}

    public static List<Shape> all() {
        return ALL;
    }

    /**
     * Returns the shape of that name, whatever stands between its letters and figures: {@code ISO
     * 527-2 1BA} and {@code iso-527-1ba} are {@code iso527-1ba}, {@code ASTM D638 type IV} is
     * {@code d638-iv}. It is a standard's or one of own sizes such as {@code bar-100x12x4}; empty
     * where there is none.
     */
    public static Optional<Shape> named(String name) {
        String wanted = key(name);
        return ALL.stream()
                .filter(it -> key(it.name()).equals(wanted))
                .findFirst()
                .or(() -> Form.ownSized(name));
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replace('×', 'x')
                .replaceAll("527[ -]2\\b", "527")
                .replaceAll("\\b(astm|type)\\b", "")
                .replaceAll("[^a-z0-9]", "");
    }

    private static List<Shape> made() {
        List<Shape> shapes = new ArrayList<>();
        tensileByIso(shapes);
        tensileByAstm(shapes);
        bars(shapes);
        flats(shapes);
        vessels(shapes);
        return shapes;
    }

    private static void tensileByIso(List<Shape> shapes) {
        shapes.add(tensile(
                "iso527-1a",
                "Tensile bar 1A",
                "ISO 527-2, type 1A",
                new Dumbbell(170, 80, 20, 10, 24, 0),
                4,
                75));
        shapes.add(tensile(
                "iso527-1b",
                "Tensile bar 1B",
                "ISO 527-2, type 1B",
                new Dumbbell(150, 60, 20, 10, 60, 0),
                4,
                50));
        shapes.add(tensile(
                "iso527-1ba",
                "Half-size tensile bar 1BA",
                "ISO 527-2, type 1BA; thickness the least allowed, radius from the tab spacing",
                new Dumbbell(75, 30, 10, 5, Dumbbell.radiusFor(58, 30, 10, 5), 0),
                2,
                25));
        shapes.add(tensile(
                "iso527-5a",
                "Small tensile bar 5A",
                "ISO 527-2, type 5A; thickness the least allowed, which radius lies inside is from"
                        + " memory",
                new Dumbbell(75, 25, 12.5, 4, 12.5, 8),
                2,
                20));
    }

    private static void tensileByAstm(List<Shape> shapes) {
        shapes.add(tensile(
                "d638-i",
                "Tensile bar I",
                "ASTM D638, type I; thickness from memory",
                new Dumbbell(165, 57, 19, 13, 76, 0),
                3.2,
                50));
        shapes.add(tensile(
                "d638-iv",
                "Tensile bar IV",
                "ASTM D638, type IV; thickness from memory, the radii put the tabs 76 mm apart",
                new Dumbbell(115, 33, 19, 6, 14, 25),
                3.2,
                25));
        shapes.add(tensile(
                "d638-v",
                "Small tensile bar V",
                "ASTM D638, type V; thickness from memory",
                new Dumbbell(63.5, 9.53, 9.53, 3.18, 12.7, 0),
                3.2,
                7.62));
    }

    private static void bars(List<Shape> shapes) {
        shapes.add(Form.BAR.standard(
                new Label("bar-80x10x4", "Bar", "ISO 178, 179-1, 180 and 75-2"), 80, 10, 4));
        shapes.add(notchBar(
                new Label(
                        "bar-80x10x4-mark",
                        "Bar with a mark where the notch is to be cut",
                        "ISO 179-1 and 180; the mark is our own"),
                List.of(new Measure("depth of the mark", MARK)),
                new Section(10, 4),
                marked(80, 10)));
        shapes.add(notchBar(
                new Label(
                        "bar-80x10x4-notch",
                        "Bar with a printed notch A",
                        "ISO 179-1, notch A: 45°, 2 mm deep (from memory); a printed notch is not a"
                                + " cut one"),
                List.of(
                        new Measure("width behind the notch", 10 - NOTCH_DEPTH),
                        new Measure("radius of the notch", NOTCH_RADIUS)),
                new Section(10 - NOTCH_DEPTH, 4),
                notched(80, 10)));
        shapes.add(Form.BAR.standard(
                new Label("bar-63.5x12.7x3.2", "Bar", "ASTM D256"), 63.5, 12.7, 3.2));
    }

    private static void flats(List<Shape> shapes) {
        shapes.add(
                Form.DISC.standard(new Label("disc-50x3", "Disc", "ISO 62, from memory"), 50, 3));
        shapes.add(Form.PLATE.standard(
                new Label("plate-60x60x2", "Plate", "ISO 294-3, from memory"), 60, 60, 2));
    }

    private static void vessels(List<Shape> shapes) {
        shapes.add(Form.CUP.standard(
                new Label("cup-one-wall", "Cup with a wall of one line, for leak tests", "our own"),
                40,
                110,
                0.45,
                1.2,
                100));
        shapes.add(Form.BOX.standard(
                new Label(
                        "box-60x60x60",
                        "Box with a wall of three lines, for leak tests",
                        "our own"),
                60,
                60,
                60,
                1.2,
                1.2,
                50));
    }

    /** A bar of 80 × 10 × 4 mm that is broken where the notch is or will be. */
    private static Shape notchBar(
            Label label, List<Measure> more, Section section, Outline outline) {
        List<Measure> measures = new ArrayList<>(Form.BAR.usual());
        measures.addAll(more);
        return new Shape(
                label.name(),
                label.title(),
                label.source(),
                measures,
                Optional.of(section),
                new Solid.Prism(outline, 4),
                Form.endPanel(80, 10),
                List.of(new Point(0, 0)));
    }

    private static Shape tensile(
            String name,
            String title,
            String source,
            Dumbbell bar,
            double thickness,
            double gaugeLength) {
        List<Measure> measures = new ArrayList<>(List.of(
                new Measure("overall length", bar.overall()),
                new Measure("parallel length", bar.parallel()),
                new Measure("distance between the tabs", bar.tabSpacing()),
                new Measure("width of the ends", bar.endWidth()),
                new Measure("width of the middle", bar.narrowWidth()),
                new Measure("thickness", thickness),
                new Measure("gauge length", gaugeLength),
                new Measure("radius", bar.inner())));
        if (bar.outer() > 0) {
            measures.add(new Measure("outer radius", bar.outer()));
        }
        return new Shape(
                name,
                title,
                source,
                measures,
                Optional.of(new Section(bar.narrowWidth(), thickness)),
                new Solid.Prism(bar.outline(), thickness),
                grip(bar),
                gauge(gaugeLength));
    }

    private static Panel grip(Dumbbell bar) {
        double margin = 1;
        double length = (bar.overall() - bar.tabSpacing()) / 2;
        return new Panel(
                "in the left grip",
                new Point((length - bar.overall()) / 2, 0),
                length - 2 * margin,
                bar.endWidth() - 2 * margin);
    }

    /**
     * The middle of the gauge length and near its ends, within 5 mm of them; from memory of ISO
     * 527-1, and an eighth of the length where it is short.
     */
    private static List<Point> gauge(double length) {
        double x = length / 2 - Math.min(5, length / 8);
        return List.of(new Point(-x, 0), new Point(0, 0), new Point(x, 0));
    }

    private static Outline marked(double length, double width) {
        double end = length / 2;
        double side = width / 2;
        return Outline.from(-end, -side)
                .to(end, -side)
                .to(end, side)
                .to(MARK, side)
                .to(0, side - MARK)
                .to(-MARK, side)
                .to(-end, side)
                .close();
    }

    /** The flanks touch the root's circle: a quarter turn off their own direction. */
    private static Outline notched(double length, double width) {
        double end = length / 2;
        double side = width / 2;
        double centre = side - NOTCH_DEPTH + NOTCH_RADIUS;
        double x = NOTCH_RADIUS * StrictMath.cos(HALF_NOTCH);
        double y = centre - NOTCH_RADIUS * StrictMath.sin(HALF_NOTCH);
        double mouth = x + (side - y) * StrictMath.tan(HALF_NOTCH);
        return Outline.from(-end, -side)
                .to(end, -side)
                .to(end, side)
                .to(mouth, side)
                .to(x, y)
                .arc(-x, y, 0, centre, -(Math.PI - 2 * HALF_NOTCH))
                .to(-mouth, side)
                .to(-end, side)
                .close();
    }
}
