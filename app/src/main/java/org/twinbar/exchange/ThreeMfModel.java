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

    /** The extension by which an object may lie in another file of the package. */
    private static final String PRODUCTION =
            "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";

    private static final int MOST_COMPONENTS = 10_000;

    private final String file;
    private final XMLStreamReader xml;
    private final MeshBuilder builder = new MeshBuilder();
    private final Map<String, Body> bodies = new HashMap<>();
    private Body body = new Body();
    private double unit = 1;
    private int bodiesPlaced;

    /** Objects made of objects are made of meshes after a few steps; more is a trap. */
    private static final int DEEPEST = 16;

    /** The corners and triangles of one object, in the model's unit, and the objects in it. */
    private static final class Body {
        final List<double[]> corners = new ArrayList<>();
        final List<int[]> triangles = new ArrayList<>();
        final List<Component> components = new ArrayList<>();
    }

    /** An object within another, which must stand before it. */
    private record Component(Body body, Transform transform) {}

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
            case "item" -> place(named("is built but is no object before it"), transform(), 0);
            case "component" -> component();
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

    private void component() {
        if (xml.getAttributeValue(PRODUCTION, "path") != null) {
            throw at().refuse("a part of it lies in another file, which is not read: save the part"
                    + " as one mesh");
        }
        if (body.components.size() == MOST_COMPONENTS) {
            throw at().refuse(
                            "an object is made of more than %s others".formatted(MOST_COMPONENTS));
        }
        body.components.add(
                new Component(named("is put into an object but is none before it"), transform()));
    }

    private Body named(String refusal) {
        String object = attribute("objectid");
        Body named = bodies.get(object);
        if (named == null || named == body && xml.getLocalName().equals("component")) {
            throw at().value(object).refuseValue(refusal);
        }
        return named;
    }

    private Transform transform() {
        String text = xml.getAttributeValue(null, "transform");
        return text == null
                ? Transform.NONE
                : Transform.parse(text)
                        .orElseThrow(() ->
                                at().value(text).refuseValue("is not a transform of 12 numbers"));
    }

    private void place(Body placed, Transform transform, int depth) {
        if (depth > DEEPEST || ++bodiesPlaced > MOST_COMPONENTS) {
            throw Place.of(file)
                    .refuse(
                            "builds more than %s objects, or objects within objects more than %s deep"
                                    .formatted(MOST_COMPONENTS, DEEPEST));
        }
        if (builder.count() + (long) placed.triangles.size() > MeshFile.MOST_TRIANGLES) {
            throw MeshFile.tooMany(file, Long.MAX_VALUE);
        }
        List<Mesh.Place> places = new ArrayList<>();
        for (double[] corner : placed.corners) {
            places.add(transform.moved(corner, unit));
        }
        for (int[] triangle : placed.triangles) {
            builder.add(places.get(triangle[0]), places.get(triangle[1]), places.get(triangle[2]));
        }
        for (Component component : placed.components) {
            place(component.body(), component.transform().then(transform), depth + 1);
        }
    }

    private double number(String attribute) {
        String text = attribute(attribute);
        return Transform.finite(text)
                .orElseThrow(() -> at().value(text).refuseValue("is not a coordinate"));
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
