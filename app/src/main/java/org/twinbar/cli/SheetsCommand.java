package org.twinbar.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.method.Description;
import org.twinbar.method.TestMethod;
import org.twinbar.report.paper.BenchSheets;
import org.twinbar.report.paper.LabelSheet;
import org.twinbar.report.paper.Labels;
import org.twinbar.report.paper.Paper;
import org.twinbar.report.paper.Pieces;
import org.twinbar.specimen.Bed;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.study.ReadOn;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar sheets}: paper for the bench, of a table of specimens or of a study's plan. */
@Command(
        name = "sheets",
        description = "Run sheets, print sheets, treatment sheets and labels, as PDF.",
        mixinStandardHelpOptions = true,
        subcommands = {
            SheetsCommand.Test.class,
            SheetsCommand.Print.class,
            SheetsCommand.Treat.class,
            SheetsCommand.Label.class,
        })
final class SheetsCommand extends HoldsCommands {

    @Override
    String verb() {
        return "set";
    }

    /** Which specimens, and where the paper goes. */
    static final class Of {

        @Parameters(
                arity = "0..1",
                paramLabel = "TABLE",
                description = "Specimens, one a row; - for standard input.")
        @Nullable
        String table;

        @Option(
                names = "--study",
                paramLabel = "NAME",
                description = "Takes the specimens of a study's plan instead.")
        @Nullable
        String study;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(
                names = "--title",
                paramLabel = "TEXT",
                description =
                        "What the sheets are headed by; the table's or study's name unless said.")
        @Nullable
        String title;

        @Option(names = "--paper", paramLabel = "A4|letter", description = "A4 unless said.")
        Paper paper = Paper.A4;

        @Option(names = "--out", required = true, paramLabel = "FILE.pdf", description = "The PDF.")
        Path out = Path.of("");

        /** Whether whoever reads the sheet must know the groups. */
        private enum Reader {
            TESTS,
            TREATS
        }

        Pieces forTesting(Context context) {
            return pieces(context, Reader.TESTS);
        }

        Pieces forTreating(Context context) {
            return pieces(context, Reader.TREATS);
        }

        private Pieces pieces(Context context, Reader reader) {
            if ((table == null) == (study == null)) {
                throw new UsageException("name a table of specimens, or a study with --study");
            }
            if (table != null) {
                Table read = Table.read(context.source(table), ReadAs.found());
                return Pieces.of(read, title == null ? read.name() : title);
            }
            try (Workspace open = context.openThere(workspace.folder)) {
                StudyName named = open.study(String.valueOf(study));
                Making making = reader == Reader.TREATS
                        ? open.plans().forTreating(named)
                        : open.plans().of(named);
                if (making.plan().isEmpty()) {
                    throw new InputException(
                            "the study '%s' has no plan, so there is nothing to put on paper"
                                    .formatted(named.name()));
                }
                return Pieces.of(making, title == null ? named.name() : title);
            }
        }

        void write(Context context, byte[] pdf) {
            Context.write(out, pdf);
            context.terminal().out().println("written to " + out);
        }

        BenchSheets sheets(@Nullable String shape) {
            Optional<Shape> named = Optional.ofNullable(shape).map(ShapeCommand::shape);
            return new BenchSheets(
                    paper, name -> named.isPresent() ? named : StandardShapes.named(name));
        }
    }

    private static Description described(Context context, String method) {
        List<TestMethod> all = context.methods().get().all();
        List<String> names = all.stream().map(it -> it.description().name()).toList();
        return context.methods()
                .get()
                .named(method)
                .map(TestMethod::description)
                .orElseThrow(() -> new UsageException("there is no method '%s' among %s%s"
                        .formatted(
                                method, String.join(", ", names), Spelling.hint(method, names))));
    }

    /** The run sheet of a test. */
    @Command(
            name = "test",
            description = "The run sheet of a test: specimens in test order, fields for a pen.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Test implements Callable<Integer> {
        private final Context context;

        @Mixin
        Of of = new Of();

        @Option(
                names = "--method",
                required = true,
                paramLabel = "NAME",
                description = "The test, such as tensile.")
        String method = "";

        @Option(
                names = "--shape",
                paramLabel = "NAME",
                description = "Shape of the specimens, for the picture; the plan's unless said.")
        @Nullable
        String shape;

        @Option(
                names = "--set",
                paramLabel = "NAME=VALUE",
                description = "What is the same for all and needs no field, such as span=64mm.")
        List<String> set = new ArrayList<>();

        @Option(
                names = "--fields",
                split = ",",
                paramLabel = "NAMES",
                description = "What is read on each specimen, such as width,thickness,peak_force.")
        List<String> fields = new ArrayList<>();

        @Option(
                names = "--instrument",
                paramLabel = "NAME=INSTRUMENT",
                description = "What it is read on, by reading or kind, so that the sheet says to"
                        + " which step; what the study's test was started with unless said.")
        List<String> instrument = new ArrayList<>();

        Test(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            Description description = described(context, method);
            Map<String, String> known = new LinkedHashMap<>(Context.pairs("--set", set));
            Pieces pieces = of.forTesting(context);
            of.write(
                    context,
                    of.sheets(shape)
                            .test(pieces.testedBy(method), description, known, fields, readOn()));
            return Cli.DONE;
        }

        private ReadOn readOn() {
            Map<String, String> named = Context.pairs("--instrument", instrument);
            if (of.study == null && named.isEmpty()) {
                return ReadOn.UNKNOWN;
            }
            try (Workspace open = context.openThere(of.workspace.folder)) {
                return of.study == null
                        ? ReadOn.of(open.instruments(), named)
                        : open.plans().readOn(open.study(of.study), method, named);
            }
        }
    }

    /** A sheet for each print run. */
    @Command(
            name = "print",
            description = "A sheet for each print run: settings, places, masses.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Print implements Callable<Integer> {
        private final Context context;

        @Mixin
        Of of = new Of();

        @Option(
                names = "--bed",
                paramLabel = "LENGTHxWIDTH",
                description = "Draws the bed, laid out as 'shape' does, such as 220x220mm.")
        @Nullable
        String bed;

        @Option(
                names = "--gap",
                paramLabel = "LENGTH",
                description = "Between specimens, and to the edge of the bed; 5 mm unless said.")
        @Nullable
        String gap;

        @Option(
                names = "--shape",
                paramLabel = "NAME",
                description = "Shape of the specimens, for the bed; the table's or plan's unless"
                        + " said.")
        @Nullable
        String shape;

        Print(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            Optional<Bed> drawn = Optional.ofNullable(bed).map(it -> Typed.bed(it, gap));
            of.write(context, of.sheets(shape).print(of.forTreating(context), drawn));
            return Cli.DONE;
        }
    }

    /** A sheet for each mix. */
    @Command(
            name = "treat",
            description = "A sheet for each mix: weighed parts, masses before and after.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Treat implements Callable<Integer> {
        private final Context context;

        @Mixin
        Of of = new Of();

        Treat(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            of.write(context, of.sheets(null).treat(of.forTreating(context)));
            return Cli.DONE;
        }
    }

    /** Labels on sheets or on a strip. */
    @Command(
            name = "labels",
            description = "Labels with the code in letters and squares.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Label implements Callable<Integer> {
        private final Context context;

        @Mixin
        Of of = new Of();

        @Option(
                names = "--grid",
                paramLabel = "COLUMNSxROWS",
                description = "Labels on a page, such as 3x8; sold sizes are known, others share"
                        + " out the page.")
        String grid = "3x8";

        @Option(
                names = "--label",
                paramLabel = "WIDTHxHEIGHT",
                description = "Size of a label, such as 63.5x38.1mm.")
        @Nullable
        String label;

        @Option(
                names = "--label-gap",
                paramLabel = "ACROSSxDOWN",
                description = "Between labels, such as 2.5x0mm.")
        @Nullable
        String gap;

        @Option(
                names = "--first",
                paramLabel = "N",
                description = "Place of the first label, where some are used up; 1 unless said.")
        int first = 1;

        @Option(
                names = "--strip",
                paramLabel = "WIDTHxHEIGHT",
                description = "A strip of labels instead, each a page, such as 40x12mm.")
        @Nullable
        String strip;

        Label(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            of.write(context, Labels.pdf(of.forTesting(context), sheet(), first));
            return Cli.DONE;
        }

        private LabelSheet sheet() {
            if (strip != null) {
                Typed.Sides sides = Typed.sides("--strip", strip);
                return LabelSheet.strip(sides.first(), sides.second());
            }
            String[] numbers = grid.strip().split("[x×]", -1);
            if (numbers.length != 2
                    || !numbers[0].strip().matches("\\d{1,2}")
                    || !numbers[1].strip().matches("\\d{1,2}")) {
                throw new UsageException(
                        "--grid: '%s' is no number of columns and rows, such as 3x8"
                                .formatted(grid));
            }
            int columns = Integer.parseInt(numbers[0].strip());
            int rows = Integer.parseInt(numbers[1].strip());
            if (label == null) {
                return LabelSheet.of(of.paper, columns, rows);
            }
            Typed.Sides size = Typed.sides("--label", label);
            Typed.Sides between =
                    gap == null ? new Typed.Sides(0, 0) : Typed.sides("--label-gap", gap);
            return LabelSheet.of(
                    of.paper,
                    columns,
                    rows,
                    size.first(),
                    size.second(),
                    between.first(),
                    between.second());
        }
    }
}
