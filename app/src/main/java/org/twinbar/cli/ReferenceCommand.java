package org.twinbar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.Table;
import org.twinbar.report.Drifting;
import org.twinbar.report.Figures;
import org.twinbar.report.Written;
import org.twinbar.report.kit.Palette;
import org.twinbar.study.Act;
import org.twinbar.study.References;
import org.twinbar.study.Workspace;
import org.twinbar.study.bench.Drift;
import org.twinbar.study.bench.KeptReference;
import org.twinbar.study.bench.ReferenceSheet;
import org.twinbar.study.file.CalibrationSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar reference}: specimens that are tested now and then to watch the bench. */
@Command(
        name = "reference",
        description = {
            "Keeps references of a workspace: specimens all alike, of which one is tested now and then",
            "on an instrument. A study that was tested while the bench was out of control says so.",
        },
        mixinStandardHelpOptions = true,
        subcommands = {
            ReferenceCommand.Begin.class,
            ReferenceCommand.Note.class,
            ReferenceCommand.Withdraw.class,
            ReferenceCommand.Show.class,
        })
final class ReferenceCommand extends HoldsCommands {

    private static String text(KeptReference reference) {
        StringBuilder text = new StringBuilder("%s: %s by %s on %s\n"
                .formatted(
                        reference.sheet().name(),
                        reference.sheet().property(),
                        reference.sheet().method(),
                        reference.instrument()));
        Optional<Drift> drift = reference.drift();
        Aligned rows = new Aligned();
        for (int place = 0; place < reference.values().size(); place++) {
            KeptReference.Value value = reference.values().get(place);
            int here = place;
            rows.row(
                    "  " + value.date(),
                    Written.number(value.value(), 4),
                    String.join(
                            "; ",
                            drift.map(it -> it.said().getOrDefault(here, List.of()))
                                    .orElse(List.of())));
        }
        text.append(rows);
        reference
                .withdrawn()
                .forEach(it -> text.append("  %s, %s, withdrawn: %s\n"
                        .formatted(
                                it.value().date(),
                                Written.number(it.value().value(), 4),
                                it.why())));
        drift.ifPresent(it -> text.append("  centre %s, limits %s to %s %s\n"
                .formatted(
                        Written.number(it.single().centre(), 4),
                        Written.number(it.single().low(), 4),
                        Written.number(it.single().high(), 4),
                        reference.sheet().unit().symbol())
                .replaceAll(" +\n", "\n")));
        return text + ComparisonsText.wrapped(Drifting.sentence(reference), "");
    }

    private static void into(Json json, KeptReference reference) throws IOException {
        Optional<Drift> drift = reference.drift();
        json.put("name", reference.sheet().name())
                .put("instrument", reference.instrument())
                .put("method", reference.sheet().method())
                .put("property", reference.sheet().property())
                .put("first", reference.sheet().first())
                .put("says", Drifting.sentence(reference));
        if (drift.isPresent()) {
            json.put("centre", drift.get().single().centre())
                    .put("low", drift.get().single().low())
                    .put("high", drift.get().single().high())
                    .put("inControl", drift.get().isInControl());
        } else {
            json.reason("inControl", Drifting.sentence(reference));
        }
        json.list("values", list -> {
            for (int place = 0; place < reference.values().size(); place++) {
                KeptReference.Value value = reference.values().get(place);
                int here = place;
                list.object(it -> it.put("date", value.date().toString())
                        .put("value", value.value())
                        .texts(
                                "rules",
                                drift.map(chart -> chart.said().getOrDefault(here, List.of()))
                                        .orElse(List.of())));
            }
        });
    }

    /** Begins a reference. */
    @Command(
            name = "begin",
            description = "Begins a reference on an instrument of the workspace.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Begin implements Callable<Integer> {
        private final Context context;

        @Parameters(
                paramLabel = "NAME",
                description = "What it is called, such as \"bars of spool 12\".")
        String name = "";

        @Option(
                names = "--instrument",
                required = true,
                paramLabel = "NAME",
                description = "On which it is read.")
        String instrument = "";

        @Option(
                names = "--method",
                required = true,
                paramLabel = "NAME",
                description = "The test that it is tested by.")
        String method = "";

        @Option(
                names = "--property",
                required = true,
                paramLabel = "NAME",
                description = "What is charted, such as strength_MPa.")
        String property = "";

        @Option(
                names = "--first",
                paramLabel = "N",
                description = "How many of the first values set the limits; 10 unless said.")
        int first = ReferenceSheet.USUAL_FIRST;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        Begin(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(workspace.folder)) {
                KeptReference begun = open.references()
                        .begin(
                                Act.by(StudyCommand.WHO),
                                instrument,
                                new ReferenceSheet(name, method, property, first));
                context.terminal().out().println(begun.sheet().name());
            }
            return Cli.DONE;
        }
    }

    /** Keeps values. */
    @Command(
            name = "note",
            description = "Keeps what a reference gave: one VALUE, or those of a table.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Note implements Callable<Integer> {
        private final Context context;

        @Parameters(index = "0", paramLabel = "NAME", description = "The reference.")
        String name = "";

        @Parameters(
                index = "1",
                arity = "0..1",
                paramLabel = "VALUE",
                description = "What it gave; a bare number is in the property's unit.")
        @Nullable
        String value;

        @Option(
                names = "--date",
                paramLabel = "DAY|COLUMN",
                description = "The day, today unless said; with --file the column of days.")
        @Nullable
        String date;

        @Option(names = "--file", paramLabel = "FILE", description = "A table with a row for each.")
        @Nullable
        String file;

        @Option(
                names = "--value",
                paramLabel = "COLUMN",
                description = "With --file: the column of values; the property unless said.")
        @Nullable
        String column;

        @Mixin
        ReadingOptions reading = new ReadingOptions();

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        Note(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            if ((value == null) == (file == null)) {
                throw new UsageException("say one of VALUE and --file");
            }
            try (Workspace open = context.openThere(workspace.folder)) {
                References references = open.references();
                KeptReference kept = references.get(name);
                Act act = Act.by(StudyCommand.WHO);
                KeptReference now;
                if (value != null) {
                    LocalDate day = date == null ? references.today() : CalibrationSheet.date(date);
                    now = references.note(act, kept, day, value);
                } else {
                    Table table = Table.read(context.source(file), reading.readAs());
                    now = references.note(
                            act,
                            kept,
                            table,
                            date == null ? "date" : date,
                            column == null ? kept.sheet().property() : column);
                }
                context.terminal().out().print(text(now));
            }
            return Cli.DONE;
        }
    }

    /** Lets a value count no longer. */
    @Command(
            name = "withdraw",
            description = "Lets a value count no longer; it stays readable, with the reason.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Withdraw implements Callable<Integer> {
        private final Context context;

        @Parameters(paramLabel = "NAME", description = "The reference.")
        String name = "";

        @Option(
                names = "--date",
                required = true,
                paramLabel = "DAY",
                description = "Of that value; the last one where a day has several.")
        String date = "";

        @Option(names = "--why", required = true, paramLabel = "TEXT", description = "The reason.")
        String why = "";

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        Withdraw(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            LocalDate day = CalibrationSheet.date(date);
            try (Workspace open = context.openThere(workspace.folder)) {
                KeptReference kept = open.references().get(name);
                KeptReference.Value last = kept.values().stream()
                        .filter(it -> it.date().equals(day))
                        .reduce((one, later) -> later)
                        .orElseThrow(() -> new UsageException(
                                "'%s' has no value of %s".formatted(kept.sheet().name(), day)));
                KeptReference now =
                        open.references().withdraw(Act.by(StudyCommand.WHO), kept, last.id(), why);
                context.terminal().out().print(text(now));
            }
            return Cli.DONE;
        }
    }

    /** Shows a reference, or all. */
    @Command(
            name = "show",
            description = "Shows a reference with what its chart says; all without a NAME.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Show implements Callable<Integer> {
        private final Context context;

        @Parameters(arity = "0..1", paramLabel = "NAME", description = "The reference.")
        @Nullable
        String name;

        @Option(
                names = "--out",
                paramLabel = "FILE",
                description = "With a NAME: writes the chart as SVG.")
        @Nullable
        Path out;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--json", description = "Writes JSON.")
        boolean json;

        Show(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            if (out != null && name == null) {
                throw new UsageException("--out needs the NAME of one reference");
            }
            try (Workspace open = context.openThere(workspace.folder)) {
                List<KeptReference> shown = name == null
                        ? open.references().all()
                        : List.of(open.references().get(name));
                if (out != null) {
                    Drift drift = shown.get(0)
                            .drift()
                            .orElseThrow(() -> new UsageException(Drifting.sentence(shown.get(0))));
                    Context.write(
                            out, Palette.LIGHT.drawn(Figures.control(Drifting.picture(drift))));
                }
                if (json) {
                    Json.write(
                            context.terminal().out(),
                            it -> it.list("references", list -> {
                                for (KeptReference one : shown) {
                                    list.object(object -> into(object, one));
                                }
                            }));
                } else if (shown.isEmpty()) {
                    context.terminal()
                            .out()
                            .println("no reference yet; 'twinbar reference begin' makes one");
                } else {
                    shown.forEach(it -> context.terminal().out().print(text(it)));
                }
            }
            return Cli.DONE;
        }
    }
}
