package org.twinbar.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Calibration;
import org.twinbar.quantity.Unit;
import org.twinbar.study.Act;
import org.twinbar.study.Instruments;
import org.twinbar.study.Workspace;
import org.twinbar.study.bench.CalibrationTable;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptCalibration;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.table.Upload;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar instrument}: what readings are read on, and how well it is known. */
@Command(
        name = "instrument",
        description = "Keeps instruments of a workspace, and calibrates them.",
        mixinStandardHelpOptions = true,
        subcommands = {
            InstrumentCommand.Add.class,
            InstrumentCommand.Calibrate.class,
            InstrumentCommand.Withdraw.class,
            InstrumentCommand.Zero.class,
            InstrumentCommand.ListAll.class,
            InstrumentCommand.Show.class,
        })
final class InstrumentCommand extends HoldsCommands {

    /** Describes an instrument. */
    @Command(
            name = "add",
            description = "Adds an instrument to the workspace.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Add implements Callable<Integer> {
        private final Context context;

        @Parameters(
                paramLabel = "NAME",
                description = "What it is called, such as \"Load cell A\".")
        String name = "";

        @Option(
                names = "--kind",
                required = true,
                paramLabel = "KIND",
                description = "load cell, caliper, scale, thermometer, timer, angle scale, gloss"
                        + " meter, …; or a word of your own.")
        String kind = "";

        @Option(
                names = "--unit",
                paramLabel = "UNIT",
                description = "Unit of its readings; the usual one of its kind unless said.")
        String unit = "";

        @Option(
                names = "--resolution",
                paramLabel = "Q",
                description =
                        "Smallest step of its display; the usual one of its kind unless said.")
        String resolution = "";

        @Option(
                names = "--valid",
                paramLabel = "DAYS",
                description = "How long a calibration of it holds.")
        String valid = "";

        @Option(
                names = "--limit",
                paramLabel = "Q|SHARE",
                description = "How far a reading may lie from the line: 0.5%% of the range, or an"
                        + " amount.")
        String limit = "";

        @Option(names = "--note", paramLabel = "TEXT", description = "What else is to be known.")
        String note = "";

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        Add(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.open(workspace.folder)) {
                KeptInstrument added = open.instruments()
                        .add(
                                Act.by(StudyCommand.WHO),
                                new InstrumentSheet(
                                        name, kind, unit, resolution, valid, limit, note));
                context.terminal().out().println(added.name());
            }
            return Cli.DONE;
        }
    }

    /** Fits a line to a table of references and readings. */
    @Command(
            name = "calibrate",
            description = {
                "Fits a straight line to a table of 'reference' and 'reading', in the order in which",
                "they were read. With the name of an instrument it is kept; without, only shown.",
            },
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Calibrate implements Callable<Integer> {
        private final Context context;

        @Parameters(
                arity = "0..1",
                paramLabel = "NAME",
                description = "An instrument of the workspace.")
        @Nullable
        String name;

        @Option(
                names = "--file",
                required = true,
                paramLabel = "FILE",
                description = "Table with columns 'reference' and 'reading'; - for standard input.")
        String file = "";

        @Option(
                names = "--against",
                paramLabel = "TEXT",
                description = "What it was held against, such as \"weights of class M1\".")
        String against = "";

        @Option(
                names = "--reference-u",
                paramLabel = "Q|SHARE",
                description = "Standard uncertainty of the reference: 0.1%%, or an amount.")
        String referenceUncertainty = "";

        @Option(
                names = "--date",
                paramLabel = "DAY",
                description = "When it was done; today unless said.")
        @Nullable
        String date;

        @Option(
                names = "--resolution",
                paramLabel = "Q",
                description = "Without a NAME: smallest step of the display.")
        @Nullable
        String resolution;

        @Option(
                names = "--limit",
                paramLabel = "Q|SHARE",
                description = "Without a NAME: how far a reading may lie from the line.")
        @Nullable
        String limit;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--json", description = "Writes JSON.")
        boolean json;

        Calibrate(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            if (name == null) {
                show(withoutInstrument());
            } else {
                keep(name);
            }
            return Cli.DONE;
        }

        private void keep(String instrument) {
            if (resolution != null || limit != null) {
                throw new UsageException(
                        "--resolution and --limit of '%s' are said where it is added"
                                .formatted(instrument));
            }
            Source source = context.source(file);
            try (Workspace open = context.openThere(workspace.folder)) {
                Instruments instruments = open.instruments();
                KeptInstrument kept = instruments.get(instrument);
                LocalDate day = date == null ? instruments.today() : CalibrationSheet.date(date);
                Act act = Act.by(StudyCommand.WHO);
                KeptInstrument now = instruments.calibrate(
                        act,
                        kept,
                        new CalibrationSheet(day, against, referenceUncertainty),
                        Upload.of(source.name(), source.bytes()));
                KeptCalibration fresh = now.calibrations().stream()
                        .filter(it -> act.wrote(it.id()))
                        .findFirst()
                        .orElseThrow();
                show(CalibrationView.of(now, fresh));
            }
        }

        private CalibrationView withoutInstrument() {
            Source source = context.source(file);
            Upload upload = Upload.of(source.name(), source.bytes());
            Table table = Table.read(source, org.twinbar.exchange.ReadAs.found());
            Unit unit = CalibrationTable.of(table).unit();
            InstrumentSheet sheet = new InstrumentSheet(
                    source.name(),
                    "instrument",
                    unit.equals(Unit.ONE) ? "1" : unit.symbol(),
                    resolution == null ? "" : resolution,
                    "",
                    limit == null ? "" : limit,
                    "");
            LocalDate day =
                    date == null ? LocalDate.now(context.clock()) : CalibrationSheet.date(date);
            CalibrationSheet said = new CalibrationSheet(day, against, referenceUncertainty);
            Calibration calibration = Instruments.line(sheet, said, upload);
            List<Finding> findings = sheet.findings(calibration);
            return new CalibrationView(
                    source.name(), unit, calibration, Optional.empty(), findings);
        }

        private void show(CalibrationView view) {
            if (json) {
                Json.write(context.terminal().out(), view::into);
            } else {
                context.terminal().out().print(view.text());
            }
        }
    }

    /** Lets a calibration count no longer. */
    @Command(
            name = "withdraw",
            description = "Lets a calibration count no longer; it stays readable, with the reason.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Withdraw implements Callable<Integer> {
        private final Context context;

        @Parameters(paramLabel = "NAME", description = "An instrument of the workspace.")
        String name = "";

        @Option(
                names = "--date",
                required = true,
                paramLabel = "DAY",
                description = "When that calibration was done.")
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
                Instruments instruments = open.instruments();
                KeptInstrument kept = instruments.get(name);
                List<KeptCalibration> done = kept.calibrations().stream()
                        .filter(it -> it.sheet().date().equals(day))
                        .toList();
                if (done.isEmpty()) {
                    throw new UsageException(
                            "'%s' was not calibrated on %s".formatted(kept.name(), day));
                }
                KeptCalibration last = done.get(done.size() - 1);
                KeptInstrument now =
                        instruments.withdraw(Act.by(StudyCommand.WHO), kept, last.id(), why);
                context.terminal().out().print(InstrumentText.of(now));
            }
            return Cli.DONE;
        }
    }

    /** Notes what an instrument shows where it should show nothing. */
    @Command(
            name = "zero",
            description = "Notes what an instrument shows where it should show nothing.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Zero implements Callable<Integer> {
        private final Context context;

        @Parameters(paramLabel = "NAME", description = "An instrument of the workspace.")
        String name = "";

        @Option(
                names = "--reading",
                required = true,
                paramLabel = "Q",
                description = "What it showed.")
        String reading = "";

        @Option(
                names = "--date",
                paramLabel = "DAY",
                description = "When it was seen; today unless said.")
        @Nullable
        String date;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        Zero(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(workspace.folder)) {
                Instruments instruments = open.instruments();
                LocalDate day = date == null ? instruments.today() : CalibrationSheet.date(date);
                KeptInstrument kept = instruments.checkZero(
                        Act.by(StudyCommand.WHO), instruments.get(name), day, reading);
                context.terminal().out().print(InstrumentText.of(kept));
            }
            return Cli.DONE;
        }
    }

    /** Lists the instruments. */
    @Command(
            name = "list",
            description = "Lists the instruments.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class ListAll implements Callable<Integer> {
        private final Context context;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--json", description = "Writes JSON.")
        boolean json;

        ListAll(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(workspace.folder)) {
                List<KeptInstrument> all = open.instruments().all();
                if (json) {
                    Json.write(
                            context.terminal().out(),
                            out -> out.list("instruments", list -> {
                                for (KeptInstrument one : all) {
                                    list.object(it -> InstrumentText.into(it, one));
                                }
                            }));
                } else {
                    context.terminal().out().print(InstrumentText.listed(all));
                }
            }
            return Cli.DONE;
        }
    }

    /** Shows one instrument. */
    @Command(
            name = "show",
            description = "Shows an instrument with its calibrations.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Show implements Callable<Integer> {
        private final Context context;

        @Parameters(paramLabel = "NAME", description = "An instrument of the workspace.")
        String name = "";

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--json", description = "Writes JSON.")
        boolean json;

        Show(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(workspace.folder)) {
                KeptInstrument kept = open.instruments().get(name);
                if (json) {
                    Json.write(context.terminal().out(), it -> InstrumentText.into(it, kept));
                } else {
                    context.terminal().out().print(InstrumentText.of(kept));
                }
            }
            return Cli.DONE;
        }
    }
}
