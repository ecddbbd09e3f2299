package org.twinbar.cli;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.MeshFile;
import org.twinbar.exchange.Spelling;
import org.twinbar.report.Written;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;
import org.twinbar.specimen.Soundness;
import org.twinbar.specimen.StandardShapes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar shape}: the standard specimens, as numbers and as files to print. */
@Command(
        name = "shape",
        description = "The standard specimens, as numbers and as files to print.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ShapeCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "One that --list names.")
    @Nullable
    String name;

    @Option(names = "--list", description = "Prints the standard shapes, one a line.")
    boolean list;

    @Option(
            names = "--orientation",
            paramLabel = "flat|edge|upright",
            description = "How it stands on the bed; flat unless said.")
    PrintOrientation orientation = PrintOrientation.FLAT;

    @Option(
            names = "--chord",
            paramLabel = "LENGTH",
            description = "Largest distance of a chord from its arc; 0.01 mm unless said.")
    @Nullable
    String chord;

    @Option(names = "--out", paramLabel = "FILE", description = "Writes the mesh: .stl or .3mf.")
    @Nullable
    Path out;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    ShapeCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (list) {
            context.terminal().out().print(listed());
            return Cli.DONE;
        }
        if (name == null) {
            throw new UsageException("name a shape; 'shape --list' lists them");
        }
        Shape shape = shape(name);
        double chordError = chord == null
                ? Solid.USUAL_CHORD_ERROR
                : Typed.in(Typed.MILLIMETRES, "--chord", chord);
        Mesh mesh = orientation.turn(shape.solid().mesh(chordError));
        if (out != null) {
            MeshFile.Format format = MeshFile.Format.of(out.toString());
            Context.write(out, MeshFile.bytes(mesh, format, shape.title()));
        }
        if (json) {
            json(shape, mesh);
        } else {
            context.terminal().out().print(text(shape, mesh));
        }
        return Cli.DONE;
    }

    /**
     * Returns the shape of that name.
     *
     * @throws UsageException where there is none, with the nearest name
     */
    static Shape shape(String name) {
        Set<String> names = StandardShapes.all().stream()
                .map(Shape::name)
                .collect(Collectors.toCollection(TreeSet::new));
        return StandardShapes.named(name)
                .orElseThrow(() -> new UsageException("there is no shape '%s' among %s%s"
                        .formatted(name, String.join(", ", names), Spelling.hint(name, names))));
    }

    private static String listed() {
        Aligned rows = new Aligned();
        for (Shape shape : StandardShapes.all()) {
            rows.row(
                    shape.name(),
                    shape.title(),
                    shape.source(),
                    shape.measures().stream()
                            .map(it -> it.name() + " " + millimetres(it.millimetres()))
                            .collect(Collectors.joining(", ")));
        }
        return rows.toString();
    }

    private void json(Shape shape, Mesh mesh) {
        Soundness soundness = Soundness.of(mesh);
        Json.write(context.terminal().out(), it -> {
            it.put("name", shape.name())
                    .put("title", shape.title())
                    .put("source", shape.source())
                    .object("dimensions_mm", sizes -> {
                        for (Shape.Measure measure : shape.measures()) {
                            sizes.put(measure.name().replace(' ', '_'), measure.millimetres());
                        }
                    })
                    .put("area_mm2", shape.solid().area())
                    .put("volume_mm3", shape.solid().volume());
            if (shape.section().isPresent()) {
                Shape.Section section = shape.section().get();
                it.object(
                        "section",
                        one -> one.put("width_mm", section.width())
                                .put("thickness_mm", section.thickness())
                                .put("area_mm2", section.area()));
            } else {
                it.reason("section", "it is not tested across a section");
            }
            it.put("triangles", mesh.count())
                    .put("watertight", soundness.isWatertight())
                    .put("orientation", orientation.word())
                    .put("axes", PrintOrientation.name(mesh))
                    .object(
                            "mesh",
                            one -> one.put("area_mm2", mesh.area())
                                    .put("volume_mm3", mesh.volume()))
                    .findings(soundness.findings(mesh));
        });
    }

    private String text(Shape shape, Mesh mesh) {
        Aligned rows = new Aligned();
        shape.measures().forEach(it -> rows.row(it.name(), millimetres(it.millimetres())));
        shape.section().ifPresent(it -> rows.row("section", Written.number(it.area(), 4) + " mm²"));
        rows.row("area", Written.number(shape.solid().area(), 5) + " mm²");
        rows.row("volume", Written.number(shape.solid().volume(), 5) + " mm³");
        rows.row("orientation", orientation.word() + ", " + PrintOrientation.name(mesh));
        rows.row(
                "triangles",
                mesh.count() + (Soundness.of(mesh).isWatertight() ? ", closed" : ", open"));
        return shape.title() + " (" + shape.source() + ")\n" + rows
                + (out == null ? "" : "written to %s, in mm\n".formatted(out));
    }

    private static String millimetres(double value) {
        return Written.number(value, 5) + " mm";
    }
}
