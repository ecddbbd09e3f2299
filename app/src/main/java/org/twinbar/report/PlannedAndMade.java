package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.report.Sheet.Item;
import org.twinbar.study.Change;
import org.twinbar.study.Making;
import org.twinbar.study.Plan;
import org.twinbar.study.Registered;

/** What was settled before anything broke, what departed from it, and what became of specimens. */
final class PlannedAndMade {

    private final Making making;

    private PlannedAndMade(Making making) {
        this.making = making;
    }

    /** Returns nothing of a study that was not planned here. */
    static List<Block> of(Making making) {
        return making.plan().map(plan -> new PlannedAndMade(making).blocks(plan)).orElse(List.of());
    }

    private List<Block> blocks(Plan plan) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(making.seal()
                .map(seal -> "The plan was sealed on %s by %s, before the data. SHA-256 of its text: %s."
                        .formatted(Cells.time(seal.when()), seal.who(), seal.sha256()))
                .orElse("The plan was not sealed, so nothing shows that it came before the data.")));
        blocks.add(new Block.Items(items(plan)));
        blocks.add(departures());
        blocks.add(fates());
        return blocks;
    }

    private List<Item> items(Plan plan) {
        List<Item> items = new ArrayList<>();
        items.add(new Item(
                "Groups",
                plan.allocation().design().groups().stream()
                        .map(PlannedAndMade::group)
                        .toList()));
        items.add(new Item(
                "Specimens",
                plan.series().stream()
                        .map(it -> "%s: %s per group, %s, %s, for the %s test"
                                .formatted(
                                        it.name(),
                                        it.perGroup(),
                                        it.shape(),
                                        it.orientation().word(),
                                        it.method()))
                        .toList()));
        if (!plan.reasons().isEmpty()) {
            items.add(new Item(
                    "Why so many",
                    plan.reasons().stream()
                            .map(it -> "%s: scatter %s (%s), expected %s%s: power %s %%"
                                    .formatted(
                                            it.series(),
                                            it.scatter(),
                                            it.from(),
                                            it.expected(),
                                            it.worth()
                                                    .map(worth -> ", worth having " + worth)
                                                    .orElse(""),
                                            Written.fixed(100 * it.power(), 0)))
                            .toList()));
        }
        items.add(Item.of("Leaving out", plan.leavingOut().sentence()));
        items.add(Item.of(
                "Blind",
                plan.blind()
                        ? making.keyOpened()
                                .map(it -> "Groups were kept from whoever read the instruments until"
                                        + " the key was opened on %s by %s."
                                                .formatted(Cells.time(it.when()), it.who()))
                                .orElse("The key is closed: nobody who reads knows the groups yet.")
                        : "No: whoever read the instruments could know the groups."));
        return items;
    }

    private static String group(PlannedGroup group) {
        return "%s, %s%s"
                .formatted(
                        group.name(),
                        group.role().word(),
                        group.treatment().isBlank() ? "" : ": " + group.treatment());
    }

    private Block departures() {
        if (making.departures().isEmpty()) {
            return new Block.Paragraph(
                    making.seal().isPresent()
                            ? "Nothing departed from the sealed plan."
                            : "What departs from a plan is shown once it is sealed.");
        }
        List<List<String>> rows = new ArrayList<>();
        for (Change change : making.departures()) {
            rows.add(List.of(change.what(), change.why(), change.who(), Cells.time(change.when())));
        }
        return new Block.Table(
                "What departed from the sealed plan, the oldest first",
                List.of(
                        Column.text("What"),
                        Column.text("Why"),
                        Column.text("Who"),
                        Column.text("When")),
                rows);
    }

    private Block fates() {
        Map<String, List<Registered>> byFate = making.specimens().stream()
                .collect(Collectors.groupingBy(
                        it -> it.fate().kind().word(), LinkedHashMap::new, Collectors.toList()));
        List<String> sentences = new ArrayList<>();
        byFate.forEach((fate, some) -> sentences.add("%s: %s (%s)."
                .formatted(
                        Answers.capital(fate),
                        Cells.count(some.size(), "specimen"),
                        some.stream()
                                .map(it -> it.code()
                                        + (it.fate().why().isBlank()
                                                ? ""
                                                : ", " + it.fate().why()))
                                .collect(Collectors.joining("; ")))));
        return new Block.Sentences(sentences, Sheet.Weight.PLAIN);
    }
}
