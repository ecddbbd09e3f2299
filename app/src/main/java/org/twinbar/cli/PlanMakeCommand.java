package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.planning.Allocation;
import org.twinbar.planning.Design;
import org.twinbar.planning.Design.Batches;
import org.twinbar.planning.Design.Changes;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.PlannedGroup.Role;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.planning.Series;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.study.Act;
import org.twinbar.study.NumbersAsked;
import org.twinbar.study.NumbersAsked.Wish;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.PlannedShape;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar plan make}: deals specimens to groups, runs, mixes and the order of testing. */
@Command(
        name = "make",
        description = {
            "Deals specimens to groups, print runs, places, mixes and an order of testing.",
            "Without --specimens they are those that the study's claims ask for.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class PlanMakeCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    PlanCommand.OfStudy of = new PlanCommand.OfStudy();

    @Option(
            names = "--control",
            paramLabel = "NAME",
            description = "The untreated group; plain unless said.")
    String control = "plain";

    @Option(
            names = "--treated",
            required = true,
            paramLabel = "NAME=WORDS",
            description = "A treated group and what is done to it.")
    List<String> treated = new ArrayList<>();

    @Option(
            names = "--further",
            paramLabel = "NAME=WORDS",
            description = "A further control; see 'twinbar plan controls'.")
    List<String> further = new ArrayList<>();

    @Option(
            names = "--per-group",
            paramLabel = "N",
            description = "Specimens of each kind in each group; 6 unless said.")
    int perGroup = 6;

    @Option(
            names = "--specimens",
            paramLabel = "NAME=METHOD,SHAPE,ORIENTATION[,N]",
            description = "A kind of specimens, such as 'flat bars=tensile,iso527-1ba,flat,8'.")
    List<String> specimens = new ArrayList<>();

    @Option(
            names = "--pilots",
            paramLabel = "N",
            description = "Tested before all others, never compared.")
    int pilots;

    @Option(names = "--runs", paramLabel = "N", description = "Print runs; 1 unless said.")
    int runs = 1;

    @Option(
            names = "--between-runs",
            description = "The treatment can be changed only from run to run, as a nozzle can.")
    boolean betweenRuns;

    @Option(
            names = "--coated",
            paramLabel = "NAME",
            description = "Groups that are coated from a mix; may be repeated.")
    List<String> coated = new ArrayList<>();

    @Option(names = "--mixes", paramLabel = "N", description = "Mixes; 1 unless said.")
    int mixes = 1;

    @Option(
            names = "--heated",
            paramLabel = "NAME",
            description = "Groups that go into the oven; may be repeated.")
    List<String> heated = new ArrayList<>();

    @Option(names = "--oven-loads", paramLabel = "N", description = "Loads; 1 unless said.")
    int loads = 1;

    @Option(
            names = "--open",
            description = "Whoever reads the instruments may know the groups; blind unless said.")
    boolean open;

    @Option(
            names = "--may-leave-out",
            paramLabel = "REASON",
            description =
                    "A reason that allows leaving a specimen out; the usual ones unless said.")
    List<String> reasons = new ArrayList<>();

    @Option(
            names = "--scatter",
            paramLabel = "SIZE",
            description = "Why so many, kept with the plan: standard deviation of a specimen. What"
                    + " isn't said is the claim's, this workspace's studies', or the test's.")
    @Nullable
    String scatter;

    @Option(
            names = "--scatter-from",
            paramLabel = "TEXT",
            description = "Where that scatter comes from; given unless said.")
    @Nullable
    String scatterFrom;

    @Option(
            names = "--expected",
            paramLabel = "CHANGE",
            description = "Likewise: the true change; the claimed one unless said.")
    @Nullable
    String expected;

    @Option(names = "--worth", paramLabel = "SIZE", description = "Likewise: worth having.")
    @Nullable
    String worth;

    @Option(
            names = "--control-share",
            paramLabel = "SHARE",
            description = "Likewise, for a yes or no: the share of the control that says yes.")
    @Nullable
    String controlShare;

    @Option(
            names = "--seen",
            paramLabel = "SHARE",
            description = "Likewise, for a rate: the share of the control to which it happens.")
    @Nullable
    String seen;

    @Option(
            names = "--above",
            paramLabel = "MARGIN",
            description = "Likewise, for a level: how far the mean lies past it.")
    @Nullable
    String above;

    @Option(names = "--seed", paramLabel = "N", description = "Of the dealing; 1 unless said.")
    long seed = 1;

    @Option(
            names = "--why",
            paramLabel = "TEXT",
            description = "Why a plan that is sealed is changed.")
    @Nullable
    String why;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    PlanMakeCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        try (Workspace workspace = context.openThere(of.workspace.folder)) {
            StudyName study = workspace.study(of.study);
            List<Series> series = specimens.isEmpty()
                    ? workspace.plans().seriesForClaims(study, perGroup, pilots)
                    : specimens.stream().map(this::series).toList();
            Design design = new Design(
                    groups(),
                    series,
                    betweenRuns ? Changes.BETWEEN_RUNS : Changes.WITHIN_RUNS,
                    new Batches(runs, mixes, loads));
            Plan plan = new Plan(
                    Allocation.of(design, seed),
                    open ? Plan.Blinding.OPEN : Plan.Blinding.BLIND,
                    reasons.isEmpty()
                            ? Plan.LeavingOut.USUAL
                            : new Plan.LeavingOut(reasons, Plan.LeavingOut.Sight.BEFORE),
                    numbers(workspace, study, series));
            workspace.plans().keep(Act.by(StudyCommand.WHO), study, plan, Optional.ofNullable(why));
            PlanShowCommand.show(context, workspace.plans().of(study), json);
        }
        return Cli.DONE;
    }

    /** Why so many: kept with the plan, so that the report can show it. */
    private List<Plan.NumberReason> numbers(Workspace open, StudyName study, List<Series> series) {
        NumbersAsked more = NumbersAsked.nothing()
                .with(Wish.SCATTER, said(scatter))
                .with(Wish.EXPECTED, said(expected))
                .with(Wish.WORTH, said(worth))
                .with(Wish.CONTROL_SHARE, said(controlShare))
                .with(Wish.SEEN, said(seen))
                .with(Wish.ABOVE, said(above));
        return series.stream()
                .flatMap(each -> open.plans().reason(study, each, more).stream())
                .map(each -> scatterFrom == null ? each : each.from(scatterFrom))
                .toList();
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }

    private List<PlannedGroup> groups() {
        List<PlannedGroup> groups = new ArrayList<>();
        groups.add(group(control, "", Role.CONTROL));
        named("--treated", treated)
                .forEach((name, words) -> groups.add(group(name, words, Role.TREATED)));
        named("--further", further)
                .forEach((name, words) -> groups.add(group(name, words, Role.FURTHER_CONTROL)));
        Set<String> names =
                new TreeSet<>(groups.stream().map(PlannedGroup::name).toList());
        for (String name : coated) {
            requireGroup("--coated", name, names);
        }
        for (String name : heated) {
            requireGroup("--heated", name, names);
        }
        return groups;
    }

    private static Map<String, String> named(String option, List<String> texts) {
        return Context.pairs(option, texts);
    }

    private static void requireGroup(String option, String name, Set<String> names) {
        if (!names.contains(name)) {
            throw new UsageException("%s: there is no group '%s' among %s"
                    .formatted(option, name, String.join(", ", names)));
        }
    }

    private PlannedGroup group(String name, String words, Role role) {
        Set<Together> together = new TreeSet<>();
        if (coated.contains(name)) {
            together.add(Together.MIX);
        }
        if (heated.contains(name)) {
            together.add(Together.OVEN_LOAD);
        }
        return new PlannedGroup(name, role, words, together);
    }

    private Series series(String text) {
        Map.Entry<String, String> named = Context.pairs("--specimens", List.of(text))
                .entrySet()
                .iterator()
                .next();
        String[] parts = named.getValue().split("\\s*,\\s*");
        if (parts.length < 3 || parts.length > 4) {
            throw new UsageException(
                    "--specimens '%s': write NAME=METHOD,SHAPE,ORIENTATION and perhaps ,N"
                            .formatted(text));
        }
        return new Series(
                named.getKey(),
                parts[0],
                PlannedShape.named(parts[1]),
                orientation(parts[2]),
                parts.length == 4 ? number(text, parts[3]) : perGroup,
                pilots);
    }

    private static PrintOrientation orientation(String word) {
        for (PrintOrientation each : PrintOrientation.values()) {
            if (each.word().equals(word.toLowerCase(Locale.ROOT))) {
                return each;
            }
        }
        throw new UsageException(
                "--specimens: '%s' is none of flat, edge and upright".formatted(word));
    }

    private static int number(String text, String part) {
        try {
            return Integer.parseInt(part);
        } catch (NumberFormatException e) {
            throw new UsageException(
                    "--specimens '%s': '%s' is not a whole number".formatted(text, part));
        }
    }
}
