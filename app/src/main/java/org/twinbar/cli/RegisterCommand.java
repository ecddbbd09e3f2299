package org.twinbar.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.report.Written;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Fate;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Moment;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar register}: what was done to specimens of a plan, and what they measure. */
@Command(
        name = "register",
        description = "Notes what was done to specimens of a plan, and what they measure.",
        mixinStandardHelpOptions = true,
        subcommands = {
            RegisterCommand.NoteDone.class,
            RegisterCommand.Measure.class,
            RegisterCommand.NoteFate.class,
            RegisterCommand.KeepPhoto.class,
            RegisterClockCommand.class,
            RegisterFilmCommand.class,
        })
final class RegisterCommand extends HoldsCommands {

    /** Which specimens. */
    static final class Which {
        @Option(
                names = "--specimen",
                paramLabel = "CODE",
                split = ",",
                description = "Codes, in the order in which it was done.")
        List<String> codes = new ArrayList<>();

        @Option(names = "--group", paramLabel = "NAME", description = "All of a group.")
        @Nullable
        String group;

        @Option(
                names = "--run",
                paramLabel = "N",
                description = "All of a print run; 0 for the pilots.")
        @Nullable
        Integer run;

        @Option(names = "--mix", paramLabel = "N", description = "All that a mix coats.")
        @Nullable
        Integer mix;

        @Option(names = "--all", description = "All specimens of the plan, its pilots too.")
        boolean all;

        List<String> of(Making making) {
            if (!codes.isEmpty()) {
                return codes;
            }
            if (group == null && run == null && mix == null && !all) {
                throw new UsageException(
                        "say which specimens: --specimen, --group, --run, --mix or --all");
            }
            List<String> chosen = making.made().stream()
                    .filter(each ->
                            group == null && mix == null || !each.placed().isPilot())
                    .filter(each -> group == null
                            || each.group().map(PlannedGroup::name).equals(Optional.of(group)))
                    .filter(each -> run == null || each.placed().run() == run)
                    .filter(each -> mix == null || each.placed().mix().equals(OptionalInt.of(mix)))
                    .map(Registered::code)
                    .toList();
            if (chosen.isEmpty()) {
                throw new UsageException("the plan has no such specimens");
            }
            return chosen;
        }
    }

    /** When it was. */
    static final class When {
        @Option(
                names = "--when",
                paramLabel = "TIME",
                description = "Such as 2026-05-04T18:30; now unless said.")
        @Nullable
        String when;

        Optional<ZonedDateTime> at(Workspace open) {
            if (when == null) {
                return Optional.empty();
            }
            try {
                return Optional.of(
                        when.matches(".*([+-]\\d\\d:\\d\\d|Z)(\\[.*])?")
                                ? ZonedDateTime.parse(when)
                                : LocalDateTime.parse(when)
                                        .atZone(open.treating().now().getZone()));
            } catch (DateTimeException e) {
                throw new UsageException(
                        "--when '%s' is not a time such as 2026-05-04T18:30".formatted(when));
            }
        }
    }

    /** Notes a step. */
    @Command(
            name = "done",
            description = "Notes a step: printed, treated, cured, conditioned or tested.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class NoteDone implements Callable<Integer> {
        private final Context context;

        @Mixin
        PlanCommand.OfStudy of = new PlanCommand.OfStudy();

        @CommandLine.Parameters(index = "1", paramLabel = "STEP", description = "What was done.")
        Step step = Step.PRINTED;

        @Mixin
        Which which = new Which();

        @Mixin
        When when = new When();

        @Option(names = "--what", paramLabel = "TEXT", description = "What really happened.")
        String what = "";

        NoteDone(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(of.workspace.folder)) {
                StudyName study = open.study(of.study);
                List<String> codes = which.of(open.plans().forTreating(study));
                open.register()
                        .done(Act.by(StudyCommand.WHO), study, codes, step, when.at(open), what);
                context.terminal()
                        .out()
                        .println("%s %s"
                                .formatted(
                                        codes.size() == 1
                                                ? codes.get(0) + " was"
                                                : codes.size() + " specimens were",
                                        step.word()));
            }
            return Cli.DONE;
        }
    }

    /** Notes a dimension or a mass. */
    @Command(
            name = "measured",
            description = "Notes dimensions at several places, or the mass, before or after"
                    + " treatment.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Measure implements Callable<Integer> {
        private final Context context;

        @Mixin
        PlanCommand.OfStudy of = new PlanCommand.OfStudy();

        @Option(
                names = "--specimen",
                required = true,
                paramLabel = "CODE",
                description = "Which specimen.")
        String code = "";

        @Option(
                names = "--size",
                paramLabel = "NAME=V,V…",
                description = "A dimension at each place, such as width=10.02,9.98; mm.")
        List<String> sizes = new ArrayList<>();

        @Option(names = "--mass", paramLabel = "MASS", description = "What the scale shows.")
        @Nullable
        String mass;

        @Option(names = "--after", description = "After treatment; before unless said.")
        boolean after;

        @Option(
                names = "--why",
                paramLabel = "TEXT",
                description = "Why it takes the place of what was measured before.")
        @Nullable
        String why;

        Measure(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            Moment moment = after ? Moment.AFTER : Moment.BEFORE;
            List<Measured> all = new ArrayList<>();
            for (Map.Entry<String, String> size : Context.pairs("--size", sizes).entrySet()) {
                all.add(new Measured(
                        size.getKey(),
                        moment,
                        Typed.list(Typed.MILLIMETRES, "--size", size.getValue())));
            }
            if (mass != null) {
                all.add(new Measured(
                        Measured.MASS, moment, List.of(Typed.in(Typed.GRAMS, "--mass", mass))));
            }
            if (all.isEmpty()) {
                throw new UsageException("say what was measured: --size or --mass");
            }
            try (Workspace open = context.openThere(of.workspace.folder)) {
                StudyName study = open.study(of.study);
                for (Measured each : all) {
                    open.register()
                            .measured(
                                    Act.by(StudyCommand.WHO),
                                    study,
                                    code,
                                    each,
                                    Optional.ofNullable(why));
                    context.terminal().out().println(line(each));
                }
            }
            return Cli.DONE;
        }

        private static String line(Measured each) {
            String unit = " " + each.unit();
            return each.values().size() == 1
                    ? "%s %s%s".formatted(each.quantity(), Written.number(each.mean(), 6), unit)
                    : "%s mean %s, least %s, spread %s%s"
                            .formatted(
                                    each.quantity(),
                                    Written.number(each.mean(), 5),
                                    Written.number(each.least(), 5),
                                    Written.number(each.spread(), 3),
                                    unit);
        }
    }

    /** Notes a fate. */
    @Command(
            name = "fate",
            description = "Notes what became of a specimen: broken, misprinted, lost, left_out.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class NoteFate implements Callable<Integer> {
        private final Context context;

        @Mixin
        PlanCommand.OfStudy of = new PlanCommand.OfStudy();

        @CommandLine.Parameters(index = "1", paramLabel = "CODE", description = "The specimen.")
        String code = "";

        @CommandLine.Parameters(index = "2", paramLabel = "FATE", description = "What became.")
        Fate.Kind fate = Fate.Kind.TESTED;

        @Option(names = "--why", paramLabel = "TEXT", description = "How it came to that.")
        String why = "";

        NoteFate(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(of.workspace.folder)) {
                open.register()
                        .fate(Act.by(StudyCommand.WHO), open.study(of.study), code, fate, why);
                context.terminal().out().println("%s is %s".formatted(code, fate.word()));
            }
            return Cli.DONE;
        }
    }

    /** Keeps a photo. */
    @Command(
            name = "photo",
            description = "Keeps a photo of a specimen, byte for byte.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class KeepPhoto implements Callable<Integer> {
        private final Context context;

        @Mixin
        PlanCommand.OfStudy of = new PlanCommand.OfStudy();

        @CommandLine.Parameters(index = "1", paramLabel = "CODE", description = "The specimen.")
        String code = "";

        @CommandLine.Parameters(index = "2", paramLabel = "FILE", description = "The photo.")
        Path file = Path.of("");

        @Mixin
        When when = new When();

        @Option(names = "--what", paramLabel = "TEXT", description = "What it shows.")
        String what = "";

        KeepPhoto(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            if (!Files.isRegularFile(file)) {
                throw new InputException("%s can't be read: there is no such file".formatted(file));
            }
            try (Workspace open = context.openThere(of.workspace.folder)) {
                Upload photo = Upload.of(file.getFileName().toString(), file);
                open.register()
                        .photo(
                                Act.by(StudyCommand.WHO),
                                open.study(of.study),
                                code,
                                photo,
                                when.at(open),
                                what);
                context.terminal().out().println("kept %s of %s".formatted(photo.name(), code));
            }
            return Cli.DONE;
        }
    }
}
