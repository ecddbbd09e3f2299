package org.twinbar.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.planning.Controls;
import org.twinbar.planning.Pilot;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar plan}: settles how specimens are made before anything breaks. */
@Command(
        name = "plan",
        description = "Settles how the specimens of a study are made before anything breaks.",
        mixinStandardHelpOptions = true,
        subcommands = {
            PlanCommand.OfferControls.class,
            PlanNumbersCommand.class,
            PlanMakeCommand.class,
            PlanShowCommand.class,
            PlanCommand.Pilots.class,
            PlanCommand.Seal.class,
            PlanCommand.Start.class,
            PlanCommand.Fill.class,
            PlanCommand.OpenKey.class,
        })
final class PlanCommand extends HoldsCommands {

    /** A study of a workspace, as most of these commands name it. */
    static final class OfStudy {
        @Parameters(paramLabel = "STUDY", description = "Name of the study.")
        String study = "";

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();
    }

    /** Offers the controls that people forget. */
    @Command(
            name = "controls",
            description = "Offers the controls that people forget, and why they matter.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class OfferControls implements Callable<Integer> {
        private final Context context;

        @Parameters(
                paramLabel = "TREATMENT",
                description =
                        "coating, annealing, vapour, sanding, dyeing, print setting or material.")
        String treatment = "";

        @Option(names = "--json", description = "Writes JSON.")
        boolean json;

        OfferControls(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            Controls.Treatment sort = Controls.Treatment.parse(treatment);
            List<Controls.Offered> offered = Controls.offeredFor(sort);
            if (json) {
                Json.write(
                        context.terminal().out(),
                        out -> out.put("treatment", sort.word())
                                .put("changes", sort.changes().word())
                                .list("controls", list -> {
                                    for (Controls.Offered each : offered) {
                                        list.object(one -> one.put(
                                                        "group", each.group().name())
                                                .put("treatment", each.group().treatment())
                                                .put("when", each.when())
                                                .put("why", each.why()));
                                    }
                                }));
                return Cli.DONE;
            }
            for (Controls.Offered each : offered) {
                context.terminal()
                        .out()
                        .println(each.group().name() + ": " + each.group().treatment());
                context.terminal()
                        .out()
                        .print(ComparisonsText.wrapped(each.when() + ". " + each.why(), "  "));
            }
            if (offered.isEmpty()) {
                context.terminal()
                        .out()
                        .print(ComparisonsText.wrapped(
                                "A %s is changed between print runs: print two or more runs of each group in turn."
                                        .formatted(sort.word()),
                                ""));
            }
            return Cli.DONE;
        }
    }

    /** Notes pilots. */
    @Command(
            name = "pilots",
            description = "Notes what pilot specimens gave; they tell the scatter, and are never"
                    + " compared.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Pilots implements Callable<Integer> {
        private final Context context;

        @Mixin
        OfStudy of = new OfStudy();

        @Option(
                names = "--specimens",
                required = true,
                paramLabel = "NAME",
                description = "Which kind of specimens of the plan.")
        String series = "";

        @Option(
                names = "--read",
                required = true,
                paramLabel = "WHAT",
                description = "What was read, such as 'strength in MPa'.")
        String what = "";

        @Option(
                names = "--values",
                required = true,
                paramLabel = "V,V…",
                description = "What each gave, all in one unit.")
        String values = "";

        Pilots(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            List<Double> read = Typed.list(Unit.ONE, "--values", values);
            try (Workspace open = context.openThere(of.workspace.folder)) {
                StudyName study = open.study(of.study);
                open.plans().pilots(Act.by(StudyCommand.WHO), study, series, what, read);
            }
            Pilot told = Pilot.of(read.stream().mapToDouble(Double::doubleValue).toArray());
            context.terminal()
                    .out()
                    .println("mean %s, standard deviation %s (%s of the mean)"
                            .formatted(
                                    Written.number(told.mean(), 4),
                                    Written.number(told.scatter(), 3),
                                    Written.percent(told.scatter() / Math.abs(told.mean()))));
            context.terminal()
                    .out()
                    .print(ComparisonsText.wrapped(
                            "plan with %s (%s of the mean): %s pilots tell a scatter badly, and in four of five such sets it is no larger than that"
                                    .formatted(
                                            Written.number(told.cautious(), 3),
                                            Written.percent(told.relative()),
                                            told.number()),
                            ""));
            return Cli.DONE;
        }
    }

    /** Seals a plan. */
    @Command(
            name = "seal",
            description = "Seals the plan with the claims as they are; what changes it later is"
                    + " shown in the report.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Seal implements Callable<Integer> {
        private final Context context;

        @Mixin
        OfStudy of = new OfStudy();

        Seal(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(of.workspace.folder)) {
                StudyName study = open.study(of.study);
                open.plans().seal(Act.by(StudyCommand.WHO), study);
                Making.Seal seal = open.plans().of(study).seal().orElseThrow();
                context.terminal().out().println("sealed " + seal.when().toOffsetDateTime());
                context.terminal().out().println("SHA-256 " + seal.sha256());
            }
            return Cli.DONE;
        }
    }

    /** Starts a test of the plan. */
    @Command(
            name = "start",
            description = {
                "Starts a test of the plan: its table has the codes in their order, and blank cells.",
                "Readings are typed there, or filled in from a file with 'twinbar plan fill'.",
            },
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Start implements Callable<Integer> {
        private final Context context;

        @Mixin
        OfStudy of = new OfStudy();

        @Parameters(index = "1", paramLabel = "METHOD", description = "The test method.")
        String method = "";

        @Mixin
        TestOptions test = new TestOptions();

        @Option(
                names = "--out",
                paramLabel = "FILE",
                description = "Writes the table to be filled in by hand.")
        @Nullable
        Path out;

        Start(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(of.workspace.folder)) {
                StudyName study = open.study(of.study);
                String table = open.plans().table(study, test.sheet(method));
                open.plans().startTest(Act.by(StudyCommand.WHO), study, test.sheet(method));
                if (out != null) {
                    Context.write(out, table);
                }
                context.terminal()
                        .out()
                        .println("%s specimens wait for the %s test"
                                .formatted(table.lines().count() - 1, method));
            }
            return Cli.DONE;
        }
    }

    /** Fills a test in. */
    @Command(
            name = "fill",
            description = "Fills blank cells of a planned test from a table, matched by specimen.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Fill implements Callable<Integer> {
        private final Context context;

        @Mixin
        OfStudy of = new OfStudy();

        @Parameters(index = "1", paramLabel = "METHOD", description = "The test method.")
        String method = "";

        @Parameters(index = "2", paramLabel = "FILE", description = "Table with the readings.")
        Path file = Path.of("");

        @Option(
                names = "--curves",
                paramLabel = "DIR",
                description = "Folder of the curves; the table's own unless said.")
        @Nullable
        Path curves;

        Fill(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            Path folder = curves == null ? Context.folderOf(file.toString()) : curves;
            try (Workspace open = context.openThere(of.workspace.folder)) {
                StudyName study = open.study(of.study);
                Upload readings = Handed.in(Context.folderOf(file.toString()))
                        .find(
                                file.getFileName().toString(),
                                org.twinbar.exchange.Place.of(file.toString()));
                open.plans()
                        .fill(Act.by(StudyCommand.WHO), study, method, readings, Handed.in(folder));
                context.terminal().out().print(PlanText.waiting(open.plans().of(study)));
            }
            return Cli.DONE;
        }
    }

    /** Opens the key. */
    @Command(
            name = "open",
            description = "Opens the key of a blind plan, when all results are in.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class OpenKey implements Callable<Integer> {
        private final Context context;

        @Mixin
        OfStudy of = new OfStudy();

        @Option(
                names = "--why",
                paramLabel = "TEXT",
                description = "Why it is opened before all results are in.")
        @Nullable
        String why;

        OpenKey(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(of.workspace.folder)) {
                StudyName study = open.study(of.study);
                open.plans().openKey(Act.by(StudyCommand.WHO), study, Optional.ofNullable(why));
                context.terminal().out().println("the key is open");
                context.terminal().out().print(ClaimsText.of(open.judge(study, (done, all) -> {})));
            }
            return Cli.DONE;
        }
    }
}
