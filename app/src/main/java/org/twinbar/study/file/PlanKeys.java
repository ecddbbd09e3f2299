package org.twinbar.study.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Keys;
import org.twinbar.planning.Allocation;
import org.twinbar.planning.Design;
import org.twinbar.planning.Design.Batches;
import org.twinbar.planning.Design.Changes;
import org.twinbar.planning.Placed;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.PlannedGroup.Role;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.planning.Series;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.study.judged.Plan;

/**
 * A plan as a table of keys, in a study file and in the store. A file may leave the specimens away,
 * which are dealt then; the store has each of them, so that a plan stays what it was when dealing
 * changes.
 */
public final class PlanKeys {

    private static final Set<String> KEYS = Set.of(
            "seed",
            "blinding",
            "changes",
            "runs",
            "mixes",
            "oven_loads",
            "group",
            "series",
            "leaving_out",
            "specimen",
            "pilot");
    private static final Set<String> GROUP = Set.of("name", "role", "treatment", "together");
    private static final Set<String> SERIES = Set.of(
            "name",
            "method",
            "shape",
            "orientation",
            "per_group",
            "pilots",
            "scatter",
            "scatter_from",
            "expected",
            "worth",
            "power");
    private static final Set<String> LEAVING_OUT = Set.of("reasons", "sight");
    private static final Set<String> SPECIMEN =
            Set.of("code", "group", "series", "run", "position", "mix", "oven_load", "test");

    private static final Set<String> PILOT = Set.of("code", "series", "position", "test");

    private PlanKeys() {}

    /** @throws InputException where a key is missing or unknown, or the plan proves nothing */
    public static Plan read(String where, JsonNode node) {
        Keys keys = Keys.of(where + ", plan", node, KEYS);
        try {
            Design design = design(keys);
            long seed = keys.whole("seed").orElse(1);
            List<Placed> specimens = keys.tables("specimen", SPECIMEN).stream()
                    .map(PlanKeys::placed)
                    .toList();
            List<Placed> pilots = keys.tables("pilot", PILOT).stream()
                    .map(pilot -> pilot(pilot, design))
                    .toList();
            Allocation allocation = specimens.isEmpty()
                    ? Allocation.of(design, seed)
                    : new Allocation(design, seed, specimens, pilots);
            return new Plan(
                    allocation,
                    keys.word(
                            "blinding",
                            Plan.Blinding.values(),
                            Plan.Blinding::word,
                            Plan.Blinding.BLIND),
                    keys.table("leaving_out", LEAVING_OUT)
                            .map(PlanKeys::leavingOut)
                            .orElse(Plan.LeavingOut.USUAL),
                    reasons(keys));
        } catch (PlanException e) {
            throw new InputException("%s, plan: %s".formatted(where, e.getMessage()));
        }
    }

    private static Design design(Keys keys) {
        List<PlannedGroup> groups = new ArrayList<>();
        for (Keys group : keys.tables("group", GROUP)) {
            EnumSet<Together> together = EnumSet.noneOf(Together.class);
            for (String word : group.texts("together")) {
                together.add(together(word));
            }
            groups.add(new PlannedGroup(
                    group.text("name"),
                    group.word("role", Role.values(), Role::word, Role.TREATED),
                    group.optional("treatment").orElse(""),
                    together));
        }
        List<Series> series =
                keys.tables("series", SERIES).stream().map(PlanKeys::series).toList();
        return new Design(
                groups,
                series,
                keys.word("changes", Changes.values(), Changes::word, Changes.WITHIN_RUNS),
                new Batches(
                        keys.whole("runs").orElse(1),
                        keys.whole("mixes").orElse(1),
                        keys.whole("oven_loads").orElse(1)));
    }

    private static Together together(String word) {
        for (Together kind : Together.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        throw new InputException(
                "plan, group: together '%s' is none of mix, oven load".formatted(word));
    }

    private static Series series(Keys keys) {
        return new Series(
                keys.text("name"),
                keys.text("method"),
                PlannedShape.named(keys.text("shape")),
                keys.word(
                        "orientation",
                        PrintOrientation.values(),
                        PrintOrientation::word,
                        PrintOrientation.FLAT),
                need(keys, "per_group"),
                keys.whole("pilots").orElse(0));
    }

    private static List<Plan.NumberReason> reasons(Keys keys) {
        List<Plan.NumberReason> reasons = new ArrayList<>();
        for (Keys series : keys.tables("series", SERIES)) {
            if (series.optional("scatter").isPresent()
                    || series.optional("power").isPresent()) {
                reasons.add(new Plan.NumberReason(
                        series.text("name"),
                        series.optional("scatter").orElse(""),
                        series.optional("scatter_from")
                                .orElse(series.optional("scatter").isPresent() ? "given" : ""),
                        series.optional("expected").orElse(""),
                        series.optional("worth"),
                        share(series.optional("power").orElse("0.8"))));
            }
        }
        return reasons;
    }

    private static double share(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new InputException("the power '%s' is not a number".formatted(text));
        }
    }

    private static Plan.LeavingOut leavingOut(Keys keys) {
        return new Plan.LeavingOut(
                keys.texts("reasons"),
                keys.word(
                        "sight",
                        Plan.LeavingOut.Sight.values(),
                        Plan.LeavingOut.Sight::word,
                        Plan.LeavingOut.Sight.BEFORE));
    }

    private static Placed placed(Keys keys) {
        return new Placed(
                keys.text("code"),
                keys.text("group"),
                keys.text("series"),
                need(keys, "run"),
                need(keys, "position"),
                keys.whole("mix"),
                keys.whole("oven_load"),
                need(keys, "test"));
    }

    private static Placed pilot(Keys keys, Design design) {
        return Placed.pilot(
                keys.text("code"),
                design.control().name(),
                keys.text("series"),
                need(keys, "position"),
                need(keys, "test"));
    }

    private static int need(Keys keys, String key) {
        OptionalInt number = keys.whole(key);
        return number.isPresent() ? number.getAsInt() : Integer.parseInt(keys.text(key));
    }

    public static ObjectNode json(Plan plan) {
        Design design = plan.allocation().design();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("seed", plan.allocation().seed());
        json.put("blinding", plan.blinding().word());
        json.put("changes", design.changes().word());
        json.put("runs", design.batches().runs());
        json.put("mixes", design.batches().mixes());
        json.put("oven_loads", design.batches().loads());
        for (PlannedGroup group : design.groups()) {
            ObjectNode each = json.withArray("group").addObject();
            each.put("name", group.name());
            each.put("role", group.role().word());
            each.put("treatment", group.treatment());
            group.together().forEach(it -> each.withArray("together").add(it.word()));
        }
        design.series().forEach(series -> put(json.withArray("series").addObject(), series, plan));
        ObjectNode rule = json.putObject("leaving_out");
        rule.putArray("reasons");
        plan.leavingOut().reasons().forEach(rule.withArray("reasons")::add);
        rule.put("sight", plan.leavingOut().sight().word());
        for (Placed one : plan.allocation().specimens()) {
            put(json.withArray("specimen").addObject(), one);
        }
        for (Placed one : plan.allocation().pilots()) {
            json.withArray("pilot")
                    .addObject()
                    .put("code", one.code())
                    .put("series", one.series())
                    .put("position", one.position())
                    .put("test", one.test());
        }
        return json;
    }

    private static void put(ObjectNode json, Series series, Plan plan) {
        json.put("name", series.name());
        json.put("method", series.method());
        json.put("shape", series.shape());
        json.put("orientation", series.orientation().word());
        json.put("per_group", series.perGroup());
        json.put("pilots", series.pilots());
        plan.reasons().stream()
                .filter(reason -> reason.series().equals(series.name()))
                .forEach(reason -> {
                    json.put("scatter", reason.scatter());
                    json.put("scatter_from", reason.from());
                    json.put("expected", reason.expected());
                    reason.worth().ifPresent(worth -> json.put("worth", worth));
                    json.put("power", reason.power());
                });
    }

    private static void put(ObjectNode json, Placed one) {
        json.put("code", one.code());
        json.put("group", one.group());
        json.put("series", one.series());
        json.put("run", one.run());
        json.put("position", one.position());
        one.mix().ifPresent(mix -> json.put("mix", mix));
        one.load().ifPresent(load -> json.put("oven_load", load));
        json.put("test", one.test());
    }
}
