package org.twinbar.cli;

import java.io.IOException;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.Design;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.Series;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar plan show}: the plan of a study, its seal, and what departed from it. */
@Command(
        name = "show",
        description = "Shows the plan, its seal, and what departed from it.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class PlanShowCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    PlanCommand.OfStudy of = new PlanCommand.OfStudy();

    @Option(
            names = "--groups",
            description = "Shows the groups of a blind plan, for whoever treats the specimens.")
    boolean groups;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    PlanShowCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        try (Workspace open = context.openThere(of.workspace.folder)) {
            StudyName study = open.study(of.study);
            show(
                    context,
                    groups ? open.plans().forTreating(study) : open.plans().of(study),
                    json);
        }
        return Cli.DONE;
    }

    static void show(Context context, Making making, boolean json) {
        if (making.plan().isEmpty()) {
            throw new InputException(
                    "the study has no plan yet; make one with 'twinbar plan make'");
        }
        if (json) {
            Json.write(context.terminal().out(), out -> json(out, making));
        } else {
            context.terminal().out().print(PlanText.of(making));
        }
    }

    private static void json(Json out, Making making) throws IOException {
        Plan plan = making.plan().orElseThrow();
        Design design = plan.allocation().design();
        out.put("seed", plan.allocation().seed())
                .put("blinding", plan.blinding().word())
                .put("keyClosed", making.keyClosed())
                .put("changes", design.changes().word())
                .put("runs", design.batches().runs())
                .put("mixes", design.batches().mixes())
                .put("ovenLoads", design.batches().loads())
                .put("leavingOut", plan.leavingOut().sentence());
        out.list("groups", list -> {
            for (PlannedGroup each : design.groups()) {
                list.object(one -> one.put("name", each.name())
                        .put("role", each.role().word())
                        .put("treatment", each.treatment()));
            }
        });
        out.list("series", list -> {
            for (Series each : design.series()) {
                list.object(one -> one.put("name", each.name())
                        .put("method", each.method())
                        .put("shape", each.shape())
                        .put("orientation", each.orientation().word())
                        .put("perGroup", each.perGroup())
                        .put("pilots", each.pilots()));
            }
        });
        if (making.seal().isPresent()) {
            Making.Seal seal = making.seal().get();
            out.object(
                    "seal",
                    one -> one.put("sha256", seal.sha256())
                            .put("when", seal.when().toOffsetDateTime().toString())
                            .put(
                                    "text",
                                    making.keyClosed()
                                            ? "hidden: the key is closed"
                                            : seal.text()));
        }
        out.list("specimens", list -> {
            for (Registered each : making.specimens()) {
                list.object(one -> specimen(one, each));
            }
        });
        out.list("pilots", list -> {
            for (Registered each : making.pilotSpecimens()) {
                list.object(one -> one.put("specimen", each.code())
                        .put("series", each.series().name())
                        .put("test", each.placed().test())
                        .put("fate", each.fate().kind().word()));
            }
        });
        out.list("departures", list -> {
            for (Change each : making.departures()) {
                list.object(one -> one.put("what", each.what())
                        .put("why", each.why())
                        .put("who", each.who())
                        .put("when", each.when().toOffsetDateTime().toString()));
            }
        });
        out.findings(making.findings());
    }

    private static void specimen(Json one, Registered each) throws IOException {
        one.put("specimen", each.code())
                .put("series", each.series().name())
                .put("test", each.placed().test())
                .put("run", each.placed().run())
                .put("position", each.placed().position());
        if (each.group().isPresent()) {
            one.put("group", each.group().get().name());
            number(one, "mix", each.placed().mix());
            number(one, "ovenLoad", each.placed().load());
        }
        one.put("fate", each.fate().kind().word());
    }

    private static void number(Json one, String name, OptionalInt number) throws IOException {
        if (number.isPresent()) {
            one.put(name, number.getAsInt());
        }
    }
}
