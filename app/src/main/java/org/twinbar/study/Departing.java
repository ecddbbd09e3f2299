package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.LeftOut;
import org.twinbar.planning.Placed;
import org.twinbar.planning.Series;
import org.twinbar.store.Entry;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.treatment.Waiting;

/** Looks, entry by entry, for what departs from a plan that was sealed. */
final class Departing {

    private final List<Change> departures = new ArrayList<>();
    private final Map<String, Integer> lastInOrder = new HashMap<>();

    void planned(Change change, Optional<Making.Seal> seal, Optional<Plan> before, Plan now) {
        if (seal.isPresent() && before.isPresent()) {
            differences(before.get(), now)
                    .forEach(what -> departures.add(
                            new Change(what, change.when(), change.who(), change.why())));
        }
    }

    private static List<String> differences(Plan before, Plan now) {
        List<String> differences = new ArrayList<>();
        for (Series series : now.series()) {
            Optional<Series> was = before.series().stream()
                    .filter(each -> each.name().equals(series.name()))
                    .findFirst();
            if (was.isEmpty()) {
                differences.add("%s were added to the plan".formatted(series.name()));
            } else if (was.get().perGroup() != series.perGroup()) {
                differences.add("%s: %s per group instead of %s"
                        .formatted(series.name(), series.perGroup(), was.get().perGroup()));
            }
        }
        before.series().stream()
                .filter(was -> now.series().stream().noneMatch(it -> it.name().equals(was.name())))
                .forEach(was -> differences.add("%s were dropped".formatted(was.name())));
        List<String> groupsBefore = groups(before);
        List<String> groups = groups(now);
        if (!groups.equals(groupsBefore)) {
            differences.add("groups are %s instead of %s"
                    .formatted(String.join(", ", groups), String.join(", ", groupsBefore)));
        }
        if (!now.leavingOut().equals(before.leavingOut())) {
            differences.add(
                    "the rule for leaving out is now: " + now.leavingOut().sentence());
        }
        if (now.blinding() != before.blinding()) {
            differences.add("the plan is now %s".formatted(now.blinding().word()));
        }
        if (differences.isEmpty() && !now.allocation().equals(before.allocation())) {
            differences.add("specimens were dealt anew to runs, places and the order of testing");
        }
        return differences;
    }

    private static List<String> groups(Plan plan) {
        return plan.allocation().design().groups().stream()
                .map(group -> group.name())
                .toList();
    }

    void opened(int waiting, Change change) {
        if (waiting > 0) {
            departures.add(new Change(
                    "the key was opened while %s %s not tested"
                            .formatted(waiting, waiting == 1 ? "specimen was" : "specimens were"),
                    change.when(),
                    change.who(),
                    change.why()));
        }
    }

    void claimed(Claim claim, Change change, Optional<Making.Seal> seal) {
        if (seal.isPresent()) {
            departures.add(new Change(
                    "the claim '%s' was added after the plan was sealed".formatted(claim.words()),
                    change.when(),
                    change.who(),
                    change.why()));
        }
    }

    void treated(String group, Change change, Optional<Making.Seal> seal) {
        if (seal.isPresent()) {
            boolean before = seal.get().text().contains("\ntreatment\t" + group + "\t");
            departures.add(new Change(
                    "how %s specimens are treated was %s after the plan was sealed"
                            .formatted(group, before ? "changed" : "settled"),
                    change.when(),
                    change.who(),
                    change.why()));
        }
    }

    void waits(Waiting waiting, Change change, Optional<Making.Seal> seal) {
        boolean sealed = seal.map(Making.Seal::text)
                .filter(text -> text.contains("\ncure\t%s\ncondition\t%s\n"
                        .formatted(waiting.cure(), waiting.condition())))
                .isPresent();
        if (seal.isPresent() && !sealed) {
            departures.add(new Change(
                    "specimens now cure for %s h and are conditioned for %s h, which was said after the plan was sealed"
                            .formatted(
                                    waiting.cure().toHours(),
                                    waiting.condition().toHours()),
                    change.when(),
                    change.who(),
                    change.why()));
        }
    }

    /** The order is told by the times of testing; a specimen that comes late is named once. */
    void testedInOrder(String code, ZonedDateTime when, Change change, Optional<Making.Seal> seal) {
        Optional<Placed> placed = seal.flatMap(it -> it.plan().specimen(code));
        if (placed.isPresent()) {
            int order = placed.get().test();
            int last = lastInOrder.getOrDefault(placed.get().series(), 0);
            if (order < last) {
                departures.add(new Change(
                        "%s, number %s in the order, was tested after number %s"
                                .formatted(code, order, last),
                        when,
                        change.who(),
                        change.why()));
            }
            lastInOrder.put(placed.get().series(), Math.max(order, last));
        }
    }

    void leftOut(JsonNode value, Entry entry, Optional<Making.Seal> seal) {
        if (seal.isEmpty() || value.path("counts").asBoolean()) {
            return;
        }
        Plan.LeavingOut rule = seal.get().plan().leavingOut();
        String code = value.path("specimen").asText();
        String why = entry.reason().orElse("no reason was given");
        boolean seen = LeftOut.Sight.AFTER_VALUE_WAS_SEEN
                .name()
                .equals(value.path("sight").asText());
        if (seen && rule.sight() == Plan.LeavingOut.Sight.BEFORE) {
            add(
                    "%s was left out after its value was seen, against the plan's rule"
                            .formatted(code),
                    entry,
                    why);
        } else if (!rule.allows(why)) {
            add(
                    "%s was left out for a reason that the plan's rule does not name"
                            .formatted(code),
                    entry,
                    why);
        }
    }

    private void add(String what, Entry entry, String why) {
        departures.add(new Change(what, entry.at().atZone(entry.zone()), entry.who(), why));
    }

    List<Change> found() {
        return departures.stream().sorted(Comparator.comparing(Change::when)).toList();
    }
}
