package org.twinbar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import org.twinbar.exchange.MeshFile;
import org.twinbar.finding.Finding;
import org.twinbar.report.Written;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;
import org.twinbar.specimen.Soundness;
import org.twinbar.specimen.StandardShapes;

/** What {@code twinbar shape} prints, for people or as JSON. */
record ShapeOutput(PrintWriter out, boolean isJson) {

    private static final String OPEN = "the mesh does not enclose a volume";
    private static final String[] AXES = {"x", "y", "z"};

    void list() {
        Aligned rows = new Aligned();
        for (Shape shape : StandardShapes.all()) {
            rows.row(shape.name(), shape.title(), shape.source(), sizes(shape));
        }
        out.print(rows);
    }

    void shape(Maker.Made made, Optional<Path> written) {
        Soundness soundness = Soundness.of(made.mesh());
        if (isJson) {
            Json.write(out, it -> {
                shapeInto(it, made);
                it.put("triangles", made.mesh().count())
                        .put("watertight", soundness.isWatertight())
                        .put("orientation", made.orientation().word())
                        .put("axes", PrintOrientation.name(made.mesh()))
                        .object(
                                "mesh",
                                one -> one.put("area_mm2", made.mesh().area())
                                        .put("volume_mm3", made.mesh().volume()))
                        .findings(soundness.findings(made.mesh()));
            });
            return;
        }
        Aligned rows = rows(made);
        rows.row(
                "orientation",
                made.orientation().word() + ", " + PrintOrientation.name(made.mesh()));
        rows.row(
                "triangles",
                made.mesh().count() + (soundness.isWatertight() ? ", closed" : ", open"));
        print(made.shape(), rows, written);
    }

    void plate(Plate plate, Optional<Path> written) {
        Maker.Made plain = plate.maker().make(Optional.empty());
        if (isJson) {
            Json.write(out, it -> {
                shapeInto(it, plain);
                it.put("orientation", plain.orientation().word())
                        .object(
                                "bed",
                                bed -> bed.put("length_mm", plate.bed().length())
                                        .put("width_mm", plate.bed().width())
                                        .put("gap_mm", plate.bed().gap()))
                        .list("specimens", list -> {
                            for (Plate.Lying one : plate.specimens()) {
                                list.object(spot -> spot.put("specimen", one.name())
                                        .put("position", one.spot().position())
                                        .put("x_mm", one.x())
                                        .put("y_mm", one.y())
                                        .put("turned", one.spot().isTurned()));
                            }
                        });
            });
            return;
        }
        Aligned rows = rows(plain);
        rows.row("orientation", plain.orientation().word());
        rows.row(
                "bed",
                "%s × %s mm, %s mm between specimens"
                        .formatted(
                                Written.number(plate.bed().length(), 5),
                                Written.number(plate.bed().width(), 5),
                                Written.number(plate.bed().gap(), 5)));
        print(plate.maker().shape(), rows, Optional.empty());
        Aligned places = new Aligned();
        places.row("place", "code", "middle from the left", "from the front");
        for (Plate.Lying one : plate.specimens()) {
            places.row(
                    Integer.toString(one.spot().position()),
                    one.name(),
                    millimetres(one.x()),
                    millimetres(one.y()));
        }
        out.print(places);
        written.ifPresent(it -> out.println("written to %s, in mm".formatted(it)));
    }

    void mesh(String file, MeshFile.Read read) {
        Mesh mesh = read.mesh();
        boolean closed = read.soundness().isWatertight();
        if (isJson) {
            Json.write(out, it -> {
                it.put("file", file).put("area_mm2", mesh.area());
                if (closed) {
                    it.put("volume_mm3", Math.abs(mesh.volume()));
                } else {
                    it.reason("volume_mm3", OPEN);
                }
                it.object("box_mm", box -> {
                            for (int axis = 0; axis < 3; axis++) {
                                box.put(AXES[axis], mesh.box().size(axis));
                            }
                        })
                        .put("triangles", mesh.count())
                        .put("watertight", closed)
                        .findings(read.findings());
            });
            return;
        }
        Aligned rows = new Aligned();
        rows.row("area", Written.number(mesh.area(), 5) + " mm²");
        rows.row("volume", closed ? Written.number(Math.abs(mesh.volume()), 5) + " mm³" : OPEN);
        rows.row(
                "box",
                "%s × %s × %s mm"
                        .formatted(
                                Written.number(mesh.box().size(0), 5),
                                Written.number(mesh.box().size(1), 5),
                                Written.number(mesh.box().size(2), 5)));
        rows.row("triangles", mesh.count() + (closed ? ", closed" : ", open"));
        out.print(rows);
        for (Finding finding : read.findings()) {
            out.print(ComparisonsText.wrapped(finding.level().word() + ": " + finding.text(), ""));
        }
    }

    private static void shapeInto(Json json, Maker.Made made) throws IOException {
        Shape shape = made.shape();
        json.put("name", shape.name())
                .put("title", shape.title())
                .put("source", shape.source())
                .object("dimensions_mm", sizes -> {
                    for (Shape.Measure measure : shape.measures()) {
                        sizes.put(measure.name().replace(' ', '_'), measure.millimetres());
                    }
                })
                .put("area_mm2", made.solid().area())
                .put("volume_mm3", made.solid().volume());
        if (shape.section().isPresent()) {
            Shape.Section section = shape.section().get();
            json.object(
                    "section",
                    one -> one.put("width_mm", section.width())
                            .put("thickness_mm", section.thickness())
                            .put("area_mm2", section.area()));
        } else {
            json.reason("section", "it is not tested across a section");
        }
        if (made.lettered().isPresent()) {
            Solid.Lettered lettered = made.lettered().get();
            json.object(
                    "code",
                    one -> one.put("text", lettered.lettering().code())
                            .put("where", shape.panel().where())
                            .put("relief", lettered.relief().word())
                            .put("depth_mm", lettered.depth())
                            .put("stroke_mm", lettered.lettering().stroke()));
        }
    }

    private static Aligned rows(Maker.Made made) {
        Aligned rows = new Aligned();
        Shape shape = made.shape();
        shape.measures().forEach(it -> rows.row(it.name(), millimetres(it.millimetres())));
        shape.section().ifPresent(it -> rows.row("section", Written.number(it.area(), 4) + " mm²"));
        rows.row("area", Written.number(made.solid().area(), 5) + " mm²");
        rows.row("volume", Written.number(made.solid().volume(), 5) + " mm³");
        made.lettered()
                .ifPresent(it -> rows.row(
                        "code",
                        "%s, %s %s by %s mm, strokes of %s mm"
                                .formatted(
                                        it.lettering().code(),
                                        it.relief().word(),
                                        shape.panel().where(),
                                        Written.number(it.depth(), 2),
                                        Written.number(it.lettering().stroke(), 2))));
        return rows;
    }

    private void print(Shape shape, Aligned rows, Optional<Path> written) {
        out.print(shape.title() + " (" + shape.source() + ")\n" + rows);
        written.ifPresent(it -> out.println("written to %s, in mm".formatted(it)));
    }

    private static String sizes(Shape shape) {
        return shape.measures().stream()
                .map(it -> it.name() + " " + millimetres(it.millimetres()))
                .collect(Collectors.joining(", "));
    }

    private static String millimetres(double value) {
        return Written.number(value, 5) + " mm";
    }
}
