package org.twinbar.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.twinbar.planning.Design;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.Series;
import org.twinbar.report.Written;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered;

/** A plan as a person reads it on a terminal. */
final class PlanText {

    /** Below this, "supported" is not what is likely to be found. */
    private static final double AS_LIKELY_AS_NOT = 0.5;

    private PlanText() {}

    static String of(Making making) {
        StringBuilder text = new StringBuilder();
        Plan plan = making.plan().orElseThrow();
        Design design = plan.allocation().design();
        Aligned groups = new Aligned();
        for (PlannedGroup group : design.groups()) {
            groups.row(group.role().word(), group.name(), group.treatment());
        }
        text.append(groups).append('\n');
        Aligned series = new Aligned();
        for (Series each : design.series()) {
            series.row(
                    each.name(),
                    "%s per group".formatted(each.perGroup()),
                    "%s, printed %s".formatted(each.shape(), each.orientation().word()),
                    "for the test " + each.method(),
                    each.pilots() == 0 ? "" : "%s pilots first".formatted(each.pilots()));
        }
        text.append(series);
        for (Plan.NumberReason each : plan.reasons()) {
            text.append(ComparisonsText.wrapped(
                    "%s: so many find it with a chance of %s%s, reckoned with: %s"
                            .formatted(
                                    each.series(),
                                    each.power() < AS_LIKELY_AS_NOT ? "only " : "",
                                    Written.percent(each.power()),
                                    each.words()),
                    ""));
        }
        text.append('\n');
        text.append("%s, %s%s; seed %s\n"
                .formatted(
                        count(design.batches().runs(), "print run"),
                        design.changes() == Design.Changes.WITHIN_RUNS
                                ? "each with part of every group"
                                : "each with one group",
                        batches(design),
                        plan.allocation().seed()));
        text.append(plan.blind() ? "blind: " : "open: ")
                .append(
                        plan.blind()
                                ? making.keyOpened()
                                        .map(it -> "the key was opened "
                                                + it.when().toLocalDate())
                                        .orElse("the key is closed until all results are in")
                                : "whoever reads knows the groups")
                .append('\n');
        text.append(ComparisonsText.wrapped(plan.leavingOut().sentence(), ""));
        making.seal()
                .ifPresentOrElse(
                        seal -> text.append("sealed %s, SHA-256 %s\n"
                                .formatted(seal.when().toOffsetDateTime(), seal.sha256())),
                        () -> text.append("not sealed yet\n"));
        making.findings()
                .forEach(it -> text.append(
                        ComparisonsText.wrapped(it.level().word() + ": " + it.text(), "")));
        for (Change change : making.departures()) {
            text.append(ComparisonsText.wrapped(
                    "departed: %s (%s)".formatted(change.what(), change.why()), ""));
        }
        return text.append('\n').append(specimens(making)).toString();
    }

    private static String batches(Design design) {
        String mixes = takes(design, PlannedGroup.Together.MIX)
                ? ", " + count(design.batches().mixes(), "mix")
                : "";
        String loads = takes(design, PlannedGroup.Together.OVEN_LOAD)
                ? ", " + count(design.batches().loads(), "oven load")
                : "";
        return mixes + loads;
    }

    private static boolean takes(Design design, PlannedGroup.Together kind) {
        return design.groups().stream().anyMatch(group -> group.together().contains(kind));
    }

    private static String count(int number, String thing) {
        String many = thing.endsWith("x") ? thing + "es" : thing + "s";
        return number + " " + (number == 1 ? thing : many);
    }

    private static String specimens(Making making) {
        Aligned rows = new Aligned();
        rows.row("specimen", "kind", "test", "run", "place", "group", "mix", "load", "fate");
        for (Registered each : making.made()) {
            Optional<String> group = each.group().map(PlannedGroup::name);
            boolean pilot = each.placed().isPilot();
            rows.row(
                    each.code(),
                    each.series().name(),
                    Integer.toString(each.placed().test()),
                    pilot ? "before all" : Integer.toString(each.placed().run()),
                    Integer.toString(each.placed().position()),
                    pilot ? "pilot, never compared" : group.orElse("hidden"),
                    number(group, each.placed().mix()),
                    number(group, each.placed().load()),
                    each.fate().kind().word());
        }
        return rows.toString();
    }

    /** A mix tells the group of what is coated. */
    private static String number(Optional<String> group, OptionalInt number) {
        return group.isPresent() && number.isPresent() ? Integer.toString(number.getAsInt()) : "–";
    }

    /** Returns how many specimens have no result yet. */
    static String waiting(Making making) {
        List<String> waiting = making.specimens().stream()
                .filter(each -> each.fate().kind().waits())
                .map(Registered::code)
                .toList();
        int all = making.specimens().size();
        return waiting.isEmpty()
                ? "all %s specimens have a result or a fate\n".formatted(all)
                : ComparisonsText.wrapped(
                        "%s of %s specimens wait: %s"
                                .formatted(
                                        waiting.size(),
                                        all,
                                        waiting.stream().collect(Collectors.joining(", "))),
                        "");
    }
}
