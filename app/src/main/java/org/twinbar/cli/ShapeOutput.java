package org.twinbar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import org.twinbar.exchange.MeshFile;
import org.twinbar.finding.Finding;
import org.twinbar.report.Written;
import org.twinbar.specimen.Bed;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.Plate;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;
import org.twinbar.specimen.Soundness;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.specimen.ToPrint;

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

    void shape(ToPrint made, Mesh mesh, Optional<Path> written) {
        Soundness soundness = Soundness.of(mesh);
        if (isJson) {
            Json.write(out, it -> {
                shapeInto(it, made);
                it.put("triangles", mesh.count())
                        .put("watertight", soundness.isWatertight())
                        .put("orientation", made.orientation().word())
                        .put("axes", PrintOrientation.name(mesh))
                        .object(
                                "mesh",
                                one -> one.put("area_mm2", mesh.area())
                                        .put("volume_mm3", mesh.volume()))
                        .findings(soundness.findings(mesh));
            });
            return;
        }
        Aligned rows = rows(made);
        rows.row("orientation", made.orientation().word() + ", " + PrintOrientation.name(mesh));
        rows.row("triangles", mesh.count() + (soundness.isWatertight() ? ", closed" : ", open"));
        print(made.shape(), rows, written);
    }

    void plate(Plate plate, Optional<Path> written) {
        if (isJson) {
            Json.write(out, it -> plateInto(it, plate));
            return;
        }
        Bed bed = plate.bed();
        out.println("Bed of %s × %s mm, %s mm between specimens"
                .formatted(
                        Written.number(bed.length(), 5),
                        Written.number(bed.width(), 5),
                        Written.number(bed.gap(), 5)));
        Aligned places = new Aligned();
        places.row("place", "code", "shape", "middle from the left", "from the front");
        for (Plate.Lying one : plate.specimens()) {
            places.row(
                    Integer.toString(one.spot().position()),
                    one.name(),
                    one.specimen().shape().name() + ", "
                            + one.specimen().orientation().word(),
                    millimetres(one.x()),
                    millimetres(one.y()));
        }
        out.print(places);
        written.ifPresent(it -> out.println("written to %s, in mm".formatted(it)));
    }

    private static void plateInto(Json json, Plate plate) throws IOException {
        json.object(
                        "bed",
                        bed -> bed.put("length_mm", plate.bed().length())
                                .put("width_mm", plate.bed().width())
                                .put("gap_mm", plate.bed().gap()))
                .list("specimens", list -> {
                    for (Plate.Lying one : plate.specimens()) {
                        list.object(spot -> spot.put("specimen", one.name())
                                .put("position", one.spot().position())
                                .put("shape", one.specimen().shape().name())
                                .put("orientation", one.specimen().orientation().word())
                                .put("x_mm", one.x())
                                .put("y_mm", one.y())
                                .put("turned", one.spot().isTurned()));
                    }
                });
    }

    /** Returns where the middle of each lies, from the front left corner of the bed. */
    static String positions(Plate plate) {
        StringBuilder csv = new StringBuilder("specimen,position,shape,orientation,x_mm,y_mm\n");
        for (Plate.Lying one : plate.specimens()) {
            csv.append(String.join(
                    ",",
                    one.name(),
                    Integer.toString(one.spot().position()),
                    one.specimen().shape().name(),
                    one.specimen().orientation().word(),
                    Written.fixed(one.x(), 2),
                    Written.fixed(one.y(), 2)));
            csv.append('\n');
        }
        return csv.toString();
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

    private static void shapeInto(Json json, ToPrint made) throws IOException {
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

    private static Aligned rows(ToPrint made) {
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
