package org.twinbar.exchange;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.MeshBuilder;

/** The model of a 3MF file: meshes, and where each is placed in the build. */
final class ThreeMfModel {

    private static final Map<String, Double> MILLIMETRES = Map.of(
            "micron", 0.001,
            "millimeter", 1.0,
            "centimeter", 10.0,
            "inch", 25.4,
            "foot", 304.8,
            "meter", 1000.0);

    private static final double[] UNMOVED = {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0};

    private final String file;
    private final XMLStreamReader xml;
    private final MeshBuilder builder = new MeshBuilder();
    private final Map<String, Body> bodies = new HashMap<>();
    private Body body = new Body();
    private double unit = 1;

    /** The corners and triangles of one object, in the model's unit. */
    private static final class Body {
        final List<double[]> corners = new ArrayList<>();
        final List<int[]> triangles = new ArrayList<>();
    }

    private ThreeMfModel(String file, XMLStreamReader xml) {
        this.file = file;
        this.xml = xml;
    }

    static Mesh read(String file, InputStream in) {
        XMLInputFactory factory = XMLInputFactory.newInstance();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            return new ThreeMfModel(file, factory.createXMLStreamReader(in)).mesh();
        } catch (XMLStreamException e) {
            if (e.getNestedException() instanceof java.io.IOException) {
                throw Place.of(file).refuse("is a damaged zip file, so no 3MF can be read from it");
            }
            throw Place.of(file)
                    .refuse("its model is broken XML at line %s"
                            .formatted(
                                    e.getLocation() == null
                                            ? 1
                                            : e.getLocation().getLineNumber()));
        }
    }

    private Mesh mesh() throws XMLStreamException {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                element();
            }
        }
        if (builder.count() == 0) {
            throw Place.of(file).refuse("builds no triangles");
        }
        return builder.build();
    }

    private void element() {
        switch (xml.getLocalName()) {
            case "model" -> unit = unit(xml.getAttributeValue(null, "unit"));
            case "object" -> {
                body = new Body();
                bodies.put(attribute("id"), body);
            }
            case "vertex" -> vertex();
            case "triangle" -> triangle();
            case "item" -> place(attribute("objectid"), xml.getAttributeValue(null, "transform"));
            case "component" ->
                throw Place.of(file)
                        .refuse(
                                "is put together from components, which are not read: save the part as one mesh");
            default -> {}
        }
    }

    private double unit(@org.jspecify.annotations.Nullable String name) {
        Double millimetres = MILLIMETRES.get(name == null ? "millimeter" : name);
        if (millimetres == null) {
            throw Place.of(file).value(String.valueOf(name)).refuseValue("is no unit of 3MF");
        }
        return millimetres;
    }

    /** A closed mesh has half as many corners as triangles; one with more is none. */
    private void vertex() {
        if (body.corners.size() == MeshFile.MOST_TRIANGLES) {
            throw Place.of(file)
                    .refuse("has more than %s corners, the limit for a mesh"
                            .formatted(MeshFile.MOST_TRIANGLES));
        }
        body.corners.add(new double[] {number("x"), number("y"), number("z")});
    }

    private void triangle() {
        if (body.triangles.size() == MeshFile.MOST_TRIANGLES) {
            throw MeshFile.tooMany(file, Long.MAX_VALUE);
        }
        body.triangles.add(new int[] {corner("v1"), corner("v2"), corner("v3")});
    }

    private int corner(String name) {
        String text = attribute(name);
        try {
            int corner = Integer.parseInt(text);
            if (corner >= 0 && corner < body.corners.size()) {
                return corner;
            }
        } catch (NumberFormatException e) {
            // Refused below, as a number out of range is.
        }
        throw at().value(text)
                .refuseValue("is not a corner from 0 to %s".formatted(body.corners.size() - 1));
    }

    private void place(String object, @org.jspecify.annotations.Nullable String transform) {
        Body placed = bodies.get(object);
        if (placed == null) {
            throw at().value(object).refuseValue("is built but is no object before it");
        }
        if (builder.count() + (long) placed.triangles.size() > MeshFile.MOST_TRIANGLES) {
            throw MeshFile.tooMany(file, Long.MAX_VALUE);
        }
        double[] matrix = transform == null ? UNMOVED : matrix(transform);
        List<Mesh.Place> places = new ArrayList<>();
        for (double[] corner : placed.corners) {
            places.add(moved(corner, matrix));
        }
        for (int[] triangle : placed.triangles) {
            builder.add(places.get(triangle[0]), places.get(triangle[1]), places.get(triangle[2]));
        }
    }

    /** A row of three numbers for each of x, y, z, then the shift. */
    private double[] matrix(String transform) {
        String[] words = transform.strip().split("\\s+");
        double[] matrix = new double[UNMOVED.length];
        if (words.length != matrix.length) {
            throw at().value(transform).refuseValue("is not a transform of 12 numbers");
        }
        for (int i = 0; i < matrix.length; i++) {
            matrix[i] = parsed(words[i])
                    .orElseThrow(() ->
                            at().value(transform).refuseValue("is not a transform of 12 numbers"));
        }
        return matrix;
    }

    private Mesh.Place moved(double[] corner, double[] matrix) {
        double[] to = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            to[axis] = unit
                    * (corner[0] * matrix[axis]
                            + corner[1] * matrix[3 + axis]
                            + corner[2] * matrix[6 + axis]
                            + matrix[9 + axis]);
        }
        return new Mesh.Place(to[0], to[1], to[2]);
    }

    private double number(String attribute) {
        String text = attribute(attribute);
        return parsed(text).orElseThrow(() -> at().value(text).refuseValue("is not a coordinate"));
    }

    private static java.util.Optional<Double> parsed(String text) {
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value)
                    ? java.util.Optional.of(value)
                    : java.util.Optional.empty();
        } catch (NumberFormatException e) {
            return java.util.Optional.empty();
        }
    }

    private String attribute(String name) {
        String text = xml.getAttributeValue(null, name);
        if (text == null) {
            throw at().refuse("a %s lacks its %s".formatted(xml.getLocalName(), name));
        }
        return text;
    }

    private Place at() {
        return Place.of(file).line(Math.max(1, xml.getLocation().getLineNumber()));
    }
}
