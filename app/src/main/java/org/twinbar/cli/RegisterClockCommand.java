package org.twinbar.cli;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.quantity.Unit;
import org.twinbar.study.Act;
import org.twinbar.study.Treating;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.Waiting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar register clock}: what is still curing, and what may be tested. */
@Command(
        name = "clock",
        description = "Tells what is still curing or conditioning, and what may be tested.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class RegisterClockCommand implements Callable<Integer> {
    private static final Unit SECONDS = Unit.of("s");

    private final Context context;

    @Mixin
    PlanCommand.OfStudy of = new PlanCommand.OfStudy();

    @Option(
            names = "--cure",
            paramLabel = "TIME",
            description = "From treatment until cured, kept with the study; 7 d unless said.")
    @Nullable
    String cure;

    @Option(
            names = "--condition",
            paramLabel = "TIME",
            description = "In the test's air after that, kept likewise; 88 h unless said.")
    @Nullable
    String condition;

    @Option(
            names = "--why",
            paramLabel = "TEXT",
            description = "Why times are others than the plan was sealed with.")
    @Nullable
    String why;

    @Mixin
    RegisterCommand.When when = new RegisterCommand.When();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    RegisterClockCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        try (Workspace open = context.openThere(of.workspace.folder)) {
            StudyName study = open.study(of.study);
            Waiting kept = open.treating().waiting(study);
            if (cure != null || condition != null) {
                open.treating()
                        .waiting(
                                Act.by(StudyCommand.WHO),
                                study,
                                new Waiting(
                                        time("--cure", cure, kept.cure()),
                                        time("--condition", condition, kept.condition())),
                                Optional.ofNullable(why));
            }
            ZonedDateTime now = when.at(open).orElseGet(open.treating()::now);
            List<Treating.Standing> all = open.treating().clock(study, now.toInstant());
            if (json) {
                json(all);
            } else {
                context.terminal().out().print(text(all, now));
            }
        }
        return Cli.DONE;
    }

    private static Duration time(String option, @Nullable String text, Duration unlessSaid) {
        return text == null
                ? unlessSaid
                : Duration.ofSeconds(Math.round(Typed.in(SECONDS, option, text)));
    }

    private void json(List<Treating.Standing> all) {
        Json.write(
                context.terminal().out(),
                out -> out.list("specimens", list -> {
                    for (Treating.Standing each : all) {
                        list.object(one -> {
                            one.put("specimen", each.specimen().code())
                                    .put(
                                            "waits",
                                            each.stand().waits().name().toLowerCase(Locale.ROOT));
                            if (each.stand().until().isPresent()) {
                                one.put("until", each.stand().until().get().toString());
                            }
                        });
                    }
                }));
    }

    private static String text(List<Treating.Standing> all, ZonedDateTime now) {
        Aligned rows = new Aligned();
        for (Waiting.For waits : Waiting.For.values()) {
            List<Treating.Standing> some =
                    all.stream().filter(each -> each.stand().waits() == waits).toList();
            if (!some.isEmpty()) {
                String until = some.stream()
                        .flatMap(each -> each.stand().until().stream())
                        .max(java.util.Comparator.naturalOrder())
                        .map(it -> "until " + it.atZone(now.getZone()).toLocalDateTime())
                        .orElse("");
                rows.row(
                        waits.words(),
                        Integer.toString(some.size()),
                        until,
                        String.join(
                                ", ",
                                some.stream()
                                        .map(each -> each.specimen().code())
                                        .toList()));
            }
        }
        return rows.toString();
    }
}
