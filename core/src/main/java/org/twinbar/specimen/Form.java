package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.twinbar.specimen.Shape.Measure;
import org.twinbar.specimen.Shape.Section;

/** A shape whose sizes may be one's own: those of the standards are sizes like others. */
public enum Form {
    BAR("bar", new Measure("length", 80), new Measure("width", 10), new Measure("thickness", 4)) {
        @Override
        Shape shape(Label label, Map<String, Double> size) {
            double length = sizeOf(size, "length");
            double width = sizeOf(size, "width");
            double thickness = sizeOf(size, "thickness");
            return new Shape(
                    label.name(),
                    label.title(),
                    label.source(),
                    measures(size),
                    Optional.of(new Section(width, thickness)),
                    new Solid.Prism(Outline.rectangle(length, width), thickness),
                    endPanel(length, width),
                    List.of(new Point(-length / 10, 0), MIDDLE, new Point(length / 10, 0)));
        }
    },
    DISC("disc", new Measure("diameter", 50), new Measure("thickness", 3)) {
        @Override
        Shape shape(Label label, Map<String, Double> size) {
            double radius = sizeOf(size, "diameter") / 2;
            return new Shape(
                    label.name(),
                    label.title(),
                    label.source(),
                    measures(size),
                    Optional.empty(),
                    new Solid.Prism(Outline.circle(2 * radius), sizeOf(size, "thickness")),
                    new Panel("by the rim", new Point(0, -0.7 * radius), radius, 0.24 * radius),
                    List.of(new Point(-0.6 * radius, 0), MIDDLE, new Point(0.6 * radius, 0)));
        }
    },
    PLATE(
            "plate",
            new Measure("length", 60),
            new Measure("width", 60),
            new Measure("thickness", 2)) {
        @Override
        Shape shape(Label label, Map<String, Double> size) {
            double length = sizeOf(size, "length");
            double width = sizeOf(size, "width");
            Point corner = new Point(-0.3 * length, -0.41 * width);
            return new Shape(
                    label.name(),
                    label.title(),
                    label.source(),
                    measures(size),
                    Optional.empty(),
                    new Solid.Prism(Outline.rectangle(length, width), sizeOf(size, "thickness")),
                    new Panel("in a corner", corner, length / 3, width / 8),
                    List.of(new Point(-length / 4, 0), MIDDLE, new Point(length / 4, 0)));
        }
    },
    CUP(
            "cup",
            new Measure("outer diameter", 40),
            new Measure("height", 110),
            new Measure("wall", 0.45),
            new Measure("floor", 1.2),
            new Measure(Form.HEAD, 100)) {
        @Override
        Shape shape(Label label, Map<String, Double> size) {
            double outer = sizeOf(size, "outer diameter");
            double wall = sizeOf(size, "wall");
            double inner = outer - 2 * wall;
            Sizes.requirePositive(inner, "inner diameter (mm)");
            double rim = (outer - wall) / 2;
            double aside = rim * StrictMath.sqrt(0.75);
            return vessel(
                    label,
                    size,
                    new Solid.Vessel(
                            Outline.circle(outer),
                            Outline.circle(inner),
                            sizeOf(size, "height"),
                            sizeOf(size, "floor")),
                    new Panel(FLOOR, MIDDLE, 0.7 * inner, 0.3 * inner),
                    List.of(
                            new Point(0, rim),
                            new Point(-aside, -rim / 2),
                            new Point(aside, -rim / 2)));
        }
    },
    BOX(
            "box",
            new Measure("length", 60),
            new Measure("width", 60),
            new Measure("height", 60),
            new Measure("wall", 1.2),
            new Measure("floor", 1.2),
            new Measure(Form.HEAD, 50)) {
        @Override
        Shape shape(Label label, Map<String, Double> size) {
            double length = sizeOf(size, "length");
            double width = sizeOf(size, "width");
            double wall = sizeOf(size, "wall");
            Sizes.requirePositive(
                    Math.min(length, width) - 2 * wall, "width between the walls (mm)");
            return vessel(
                    label,
                    size,
                    new Solid.Vessel(
                            Outline.rectangle(length, width),
                            Outline.rectangle(length - 2 * wall, width - 2 * wall),
                            sizeOf(size, "height"),
                            sizeOf(size, "floor")),
                    new Panel(FLOOR, MIDDLE, 0.7 * (length - 2 * wall), 0.3 * (width - 2 * wall)),
                    List.of(
                            new Point((wall - length) / 2, 0),
                            new Point(0, (width - wall) / 2),
                            new Point((length - wall) / 2, 0)));
        }
    };

    private static final Point MIDDLE = new Point(0, 0);
    private static final String HEAD = "head of water";
    private static final String FLOOR = "on the floor, inside";

    private static final Pattern OWN_NAME =
            Pattern.compile("([a-z]+)-(\\d+(?:\\.\\d+)?(?:x\\d+(?:\\.\\d+)?)*)");

    /** Largest size that a home printer makes (mm); common practice, no source. */
    private static final double MOST_SIZE = 1000;

    private final String word;
    private final List<Measure> usual;

    Form(String word, Measure... usual) {
        this.word = word;
        this.usual = List.of(usual);
    }

    /** Name, title and source of a shape. */
    record Label(String name, String title, String source) {}

    abstract Shape shape(Label label, Map<String, Double> size);

    /** Returns what it is called where its sizes are one's own. */
    public String word() {
        return word;
    }

    /** Returns the dimensions, at the sizes that it has where none is said. */
    public List<Measure> usual() {
        return usual;
    }

    /** Returns the form of that word; empty where there is none. */
    public static Optional<Form> named(String word) {
        return Arrays.stream(values())
                .filter(it -> it.word.equalsIgnoreCase(word.strip()))
                .findFirst();
    }

    /**
     * Returns the shape of one's own sizes; what is not said is as usual.
     *
     * @param sizes by name of the dimension, its words parted by blanks or underscores (mm)
     * @throws ShapeException where a dimension is unknown, or a size can't be made
     */
    public Shape of(Map<String, Double> sizes) {
        Map<String, Double> all = new LinkedHashMap<>();
        usual.forEach(it -> all.put(it.name(), it.millimetres()));
        sizes.forEach((typed, millimetres) -> {
            String name = typed.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
            if (!all.containsKey(name)) {
                throw new ShapeException("A %s has no '%s'; its sizes are %s."
                        .formatted(
                                word,
                                name,
                                all.keySet().stream()
                                        .map(it -> it.replace(' ', '_'))
                                        .collect(Collectors.joining(", "))));
            }
            if (!(millimetres > 0 && millimetres <= MOST_SIZE)) {
                throw new ShapeException("The %s must lie above 0 mm and up to %s mm, not at %s mm."
                        .formatted(name, Sizes.text(MOST_SIZE), millimetres));
            }
            all.put(name, millimetres);
        });
        String title = word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
        return shape(new Label(ownName(all), title + " of one's own sizes", "our own"), all);
    }

    /**
     * Returns the shape that {@link Shape#name} calls by a form and sizes of one's own, such as
     * {@code bar-100x12x4}; empty where it is no such name, or a size can't be made. A vessel is
     * filled to the usual head of water, or to its rim where that is lower.
     */
    static Optional<Shape> ownSized(String name) {
        Matcher parts = OWN_NAME.matcher(name.strip().toLowerCase(Locale.ROOT));
        Optional<Form> form = parts.matches() ? named(parts.group(1)) : Optional.empty();
        if (form.isEmpty()) {
            return Optional.empty();
        }
        List<String> sizes = List.of(parts.group(2).split("x"));
        List<String> names = form.get().usual.stream()
                .map(Measure::name)
                .filter(it -> !it.equals(HEAD))
                .toList();
        if (sizes.size() != names.size()) {
            return Optional.empty();
        }
        Map<String, Double> all = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            all.put(names.get(i), Double.valueOf(sizes.get(i)));
        }
        form.get().usual.stream()
                .filter(it -> it.name().equals(HEAD))
                .forEach(it -> all.put(
                        HEAD,
                        Math.min(it.millimetres(), sizeOf(all, "height") - sizeOf(all, "floor"))));
        try {
            return Optional.of(form.get().of(all));
        } catch (ShapeException e) {
            return Optional.empty();
        }
    }

    /** Returns the shape at sizes in the order of {@link #usual}. */
    Shape standard(Label label, double... sizes) {
        Map<String, Double> all = new LinkedHashMap<>();
        for (int i = 0; i < sizes.length; i++) {
            all.put(usual.get(i).name(), sizes[i]);
        }
        return shape(label, all);
    }

    private String ownName(Map<String, Double> sizes) {
        return word
                + "-"
                + sizes.entrySet().stream()
                        .filter(it -> !it.getKey().equals(HEAD))
                        .map(it -> Sizes.text(it.getValue()))
                        .collect(Collectors.joining("x"));
    }

    static double sizeOf(Map<String, Double> size, String name) {
        return Objects.requireNonNull(size.get(name), name);
    }

    static List<Measure> measures(Map<String, Double> size) {
        List<Measure> measures = new ArrayList<>();
        size.forEach((name, millimetres) -> measures.add(new Measure(name, millimetres)));
        return measures;
    }

    /** The end of a bar that hangs over the supports, whose span is four fifths of the length. */
    static Panel endPanel(double length, double width) {
        double margin = 0.06 * Math.min(width, length / 8);
        double over = length / 10;
        return new Panel(
                "at the left end, outside the supports",
                new Point((over - length) / 2, 0),
                over - 2 * margin,
                width - 2 * margin);
    }

    private static Shape vessel(
            Label label,
            Map<String, Double> size,
            Solid.Vessel vessel,
            Panel panel,
            List<Point> places) {
        double depth = vessel.height() - vessel.floor();
        double head = sizeOf(size, HEAD);
        if (head > depth) {
            throw new ShapeException("A head of water of %s mm does not fit into a depth of %s mm."
                    .formatted(Sizes.text(head), Sizes.text(depth)));
        }
        return new Shape(
                label.name(),
                label.title(),
                label.source(),
                measures(size),
                Optional.empty(),
                vessel,
                panel,
                places);
    }
}
