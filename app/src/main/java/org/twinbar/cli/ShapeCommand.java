package org.twinbar.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.MeshFile;
import org.twinbar.exchange.Spelling;
import org.twinbar.specimen.Form;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.Plate;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.specimen.ToPrint;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar shape}: specimens as numbers and as files to print, and meshes looked through. */
@Command(
        name = "shape",
        description = "Specimens as numbers and as files to print; or a mesh looked through.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ShapeCommand implements Callable<Integer> {

    /** A plate holds fewer; a slip of the finger must not fill the memory. */
    private static final int MOST_SPECIMENS = 1000;

    private final Context context;

    @Parameters(
            arity = "0..1",
            paramLabel = "NAME",
            description = "One that --list names; or bar, disc, plate, cup, box with --set.")
    @Nullable
    String name;

    @Option(names = "--list", description = "Prints the standard shapes, one a line.")
    boolean list;

    @Option(
            names = "--set",
            paramLabel = "SIZE=LENGTH",
            description = "A size of one's own, such as length=100mm; in mm where no unit stands.")
    List<String> set = new ArrayList<>();

    @Option(
            names = "--code",
            paramLabel = "CODE",
            description = "Puts the specimen's code where it is held.")
    @Nullable
    String code;

    @Option(
            names = "--relief",
            paramLabel = "engraved|raised",
            description = "How the code is told from its face; engraved, in vessels raised.")
    Solid.@Nullable Relief relief;

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

    @Option(
            names = "--bed",
            paramLabel = "LENGTHxWIDTH",
            description = "Lays several out on a bed, such as 220x220mm.")
    @Nullable
    String bed;

    @Option(names = "--count", paramLabel = "N", description = "How many to lay out.")
    @Nullable
    Integer count;

    @Option(
            names = "--codes",
            paramLabel = "CODES",
            description = "A code for each: A01..A12, or A01,C07,F30.")
    @Nullable
    String codes;

    @Option(
            names = "--gap",
            paramLabel = "LENGTH",
            description = "Between specimens, and to the edge of the bed; 5 mm unless said.")
    @Nullable
    String gap;

    @Option(
            names = "--positions",
            paramLabel = "FILE.csv",
            description = "Writes which code lies where, for the plan and the register.")
    @Nullable
    Path positions;

    @Option(names = "--out", paramLabel = "FILE", description = "Writes the mesh: .stl or .3mf.")
    @Nullable
    Path out;

    @Option(
            names = "--study",
            paramLabel = "NAME",
            description = "Lays out a print run of a study's plan instead, each with its code.")
    @Nullable
    String study;

    @Option(
            names = "--run",
            paramLabel = "N",
            description = "Which print run of the plan; 0 for the pilots.")
    @Nullable
    Integer run;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--mesh",
            paramLabel = "FILE",
            description = "Looks through a mesh of one's own, .stl or .3mf; - for standard input.")
    @Nullable
    String mesh;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    ShapeCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        ShapeOutput output = new ShapeOutput(context.terminal().out(), json);
        if (list) {
            output.list();
        } else if (mesh != null) {
            if (name != null) {
                throw new UsageException("name a shape, or a mesh with --mesh, not both");
            }
            output.mesh(mesh, MeshFile.read(context.source(mesh)));
        } else if (study != null) {
            planned(output, study);
        } else if (name == null) {
            throw new UsageException("name a shape; 'shape --list' lists them");
        } else if (bed == null) {
            single(output, shape(name, sizes()));
        } else {
            Shape shape = shape(name, sizes());
            List<ToPrint> specimens =
                    codesToLay().stream().map(it -> toPrint(shape, it)).toList();
            plate(output, bed, specimens, shape.title());
        }
        return Cli.DONE;
    }

    private void single(ShapeOutput output, Shape shape) {
        if (count != null || codes != null || gap != null || positions != null) {
            throw new UsageException(
                    "--count, --codes, --gap and --positions need the size of the bed: --bed");
        }
        Optional<MeshFile.Format> format = format();
        ToPrint specimen = toPrint(shape, Optional.ofNullable(code));
        Mesh made = specimen.mesh(chordError());
        format.ifPresent(
                it -> Context.write(written(), MeshFile.bytes(made, it, specimen.title())));
        output.shape(specimen, made, Optional.ofNullable(out));
    }

    private void plate(ShapeOutput output, String size, List<ToPrint> specimens, String title) {
        if (code != null) {
            throw new UsageException("on a bed each specimen has its own code: --codes");
        }
        Optional<MeshFile.Format> format = format();
        Plate plate = Plate.of(Typed.bed(size, gap), specimens, chordError());
        List<MeshFile.Part> parts = plate.specimens().stream()
                .map(it -> new MeshFile.Part(it.name(), it.mesh()))
                .toList();
        format.ifPresent(it -> Context.write(written(), MeshFile.bytes(parts, it, title)));
        if (positions != null) {
            Context.write(positions, ShapeOutput.positions(plate));
        }
        output.plate(plate, Optional.ofNullable(out));
    }

    /** The specimens of one print run of a plan, in their places. */
    private void planned(ShapeOutput output, String named) {
        if (bed == null || run == null) {
            throw new UsageException(
                    "the specimens of a plan need --run and the size of the --bed");
        }
        if (name != null || codes != null || count != null || !set.isEmpty()) {
            throw new UsageException(
                    "the plan says which specimens there are: leave NAME, --set, --codes and --count out");
        }
        try (Workspace open = context.openThere(workspace.folder)) {
            StudyName study = open.study(named);
            List<ToPrint> specimens = open.plans().of(study).made().stream()
                    .filter(it -> it.placed().run() == run)
                    .sorted(Comparator.comparingInt(it -> it.placed().position()))
                    .map(it -> ToPrint.of(
                            shape(it.series().shape()),
                            Optional.of(it.code()),
                            it.series().orientation()))
                    .toList();
            if (specimens.isEmpty()) {
                throw new UsageException("the plan of '%s' has no specimens in print run %s"
                        .formatted(study.name(), run));
            }
            plate(output, bed, specimens, study.name() + ", run " + run);
        }
    }

    private ToPrint toPrint(Shape shape, Optional<String> itsCode) {
        return new ToPrint(
                shape,
                itsCode,
                Optional.ofNullable(relief).orElse(shape.usualRelief()),
                orientation);
    }

    private Optional<MeshFile.Format> format() {
        return Optional.ofNullable(out).map(it -> MeshFile.Format.of(it.toString()));
    }

    private double chordError() {
        return chord == null
                ? Solid.USUAL_CHORD_ERROR
                : Typed.in(Typed.MILLIMETRES, "--chord", chord);
    }

    private Path written() {
        return java.util.Objects.requireNonNull(out);
    }

    /** Returns a code for each specimen; empty ones where only their number was said. */
    private List<Optional<String>> codesToLay() {
        List<String> named = codes == null ? List.of() : CodeList.parse(codes, MOST_SPECIMENS);
        int number = count == null ? named.size() : count;
        if (number < 1 || number > MOST_SPECIMENS) {
            throw new UsageException(
                    "say how many specimens lie on the bed by --codes or --count, 1 to %s"
                            .formatted(MOST_SPECIMENS));
        }
        if (codes == null) {
            return IntStream.range(0, number)
                    .mapToObj(it -> Optional.<String>empty())
                    .toList();
        }
        if (named.size() != number) {
            throw new UsageException("--codes names %s codes, and --count says %s specimens"
                    .formatted(named.size(), number));
        }
        return named.stream().map(Optional::of).toList();
    }

    private Map<String, Double> sizes() {
        Map<String, Double> sizes = new LinkedHashMap<>();
        Context.pairs("--set", set)
                .forEach((size, text) ->
                        sizes.put(size, Typed.in(Typed.MILLIMETRES, "--set " + size, text)));
        return sizes;
    }

    /** Returns the shape of that name at its own sizes; see {@link #shape(String, Map)}. */
    static Shape shape(String name) {
        return shape(name, Map.of());
    }

    /**
     * Returns the shape of that name, or of a form at one's own sizes.
     *
     * @throws UsageException where there is none, with the nearest name, or where the sizes of a
     *     standard would be changed
     */
    static Shape shape(String name, Map<String, Double> sizes) {
        Optional<Form> form = Form.named(name);
        if (form.isPresent()) {
            return form.get().of(sizes);
        }
        Set<String> names = StandardShapes.all().stream()
                .map(Shape::name)
                .collect(Collectors.toCollection(TreeSet::new));
        Shape shape = StandardShapes.named(name)
                .orElseThrow(() -> new UsageException("there is no shape '%s' among %s%s"
                        .formatted(name, String.join(", ", names), Spelling.hint(name, names))));
        if (!sizes.isEmpty()) {
            throw new UsageException(
                    "%s has the sizes that its name stands for; --set goes with bar, disc, plate, cup and box"
                            .formatted(shape.name()));
        }
        return shape;
    }
}
