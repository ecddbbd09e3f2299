package org.twinbar.report;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.planning.Design;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.planning.Series;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.report.Sheet.Item;
import org.twinbar.report.Sheet.Section;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Moment;

/** What was planned, what departed from it, and how the specimens were made. */
final class HowMade {

    private static final String NOTHING = "–";

    private final Making making;

    private HowMade(Making making) {
        this.making = making;
    }

    static List<Section> of(JudgedStudy study) {
        HowMade made = new HowMade(study.making());
        return List.of(
                new Section("plan", "What was planned", made.plan()),
                new Section("departures", "What departed from the plan", made.departures()),
                new Section("making", "How specimens were made", made.specimens()),
                new Section("treatment", "How they were treated", HowTreated.of(study.making())));
    }

    /** The plan as it was sealed, where it was: what it became since stands under departures. */
    private List<Block> plan() {
        Optional<Plan> shown = making.seal().map(Making.Seal::plan).or(making::plan);
        if (shown.isEmpty()) {
            return List.of();
        }
        Plan plan = shown.get();
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Paragraph(
                        making.seal()
                                .map(seal ->
                                        "The plan was sealed on %s by %s, before the data. Who has its text can"
                                                        .formatted(
                                                                Cells.time(seal.when()), seal.who())
                                                + " compare the SHA-256 with this one: %s."
                                                        .formatted(seal.sha256()))
                                .orElse(
                                        "The plan was never sealed, so nothing shows that it came before the data.")));
        blocks.add(new Block.Items(items(plan)));
        blocks.add(groups(plan.allocation().design()));
        blocks.add(series(plan));
        List<String> limits = plan.allocation().design().limits().stream()
                .map(finding -> finding.text())
                .toList();
        if (!limits.isEmpty()) {
            blocks.add(new Block.Sentences(limits, Sheet.Weight.PLAIN));
        }
        return blocks;
    }

    private List<Item> items(Plan plan) {
        Design design = plan.allocation().design();
        List<String> batches =
                new ArrayList<>(List.of(Cells.count(design.batches().runs(), "print run")));
        if (takes(design, Together.MIX)) {
            int mixes = design.batches().mixes();
            batches.add(mixes == 1 ? "1 mix" : mixes + " mixes");
        }
        if (takes(design, Together.OVEN_LOAD)) {
            batches.add(Cells.count(design.batches().loads(), "oven load"));
        }
        return List.of(
                Item.of("Made in", String.join(", ", batches)),
                Item.of(
                        "Dealt",
                        (design.changes() == Design.Changes.WITHIN_RUNS
                                        ? "at random within print runs, each with part of every group"
                                        : "in whole print runs, alternating at random between groups")
                                + "; seed " + plan.allocation().seed()),
                Item.of("Groups", blinding(plan)),
                Item.of(
                        "Waiting",
                        "cured for %s, then conditioned for %s before the test"
                                .formatted(
                                        hours(making.waiting().cure()),
                                        hours(making.waiting().condition()))),
                Item.of("Leaving out", plan.leavingOut().sentence()));
    }

    private static String hours(Duration duration) {
        return Written.number(duration.toMinutes() / 60.0, 4) + Written.behind("h");
    }

    private String blinding(Plan plan) {
        if (!plan.blind()) {
            return "known to whoever read the instruments";
        }
        return making.keyOpened()
                .map(opened -> "kept from whoever read the instruments until %s"
                        .formatted(Cells.time(opened.when())))
                .orElse("kept from whoever reads the instruments; the key is closed");
    }

    private static boolean takes(Design design, Together kind) {
        return design.groups().stream().anyMatch(group -> group.together().contains(kind));
    }

    private static Block groups(Design design) {
        List<List<String>> rows = design.groups().stream()
                .map(group -> List.of(
                        group.name(),
                        group.role().word(),
                        group.treatment().isBlank() ? "nothing" : group.treatment()))
                .toList();
        return new Block.Table(
                "Groups",
                List.of(
                        Column.name("Group"),
                        Column.text("Compared as"),
                        Column.text("What is done to it")),
                rows);
    }

    private static Block series(Plan plan) {
        List<List<String>> rows = new ArrayList<>();
        for (Series each : plan.series()) {
            rows.add(List.of(
                    each.name(),
                    each.method(),
                    each.shape(),
                    each.orientation().word(),
                    Integer.toString(each.perGroup()),
                    why(plan, each)));
        }
        return new Block.Table(
                "Specimens",
                List.of(
                        Column.name("Specimens"),
                        Column.text("Test"),
                        Column.text("Shape"),
                        Column.text("Printed"),
                        Column.number("Per group"),
                        Column.text("Why so many")),
                rows);
    }

    private static String why(Plan plan, Series series) {
        return plan.reasons().stream()
                .filter(reason -> reason.series().equals(series.name()))
                .findFirst()
                .map(reason -> "%s; chance of finding it %s"
                        .formatted(reason.words(), Written.percent(reason.power())))
                .orElse("not said");
    }

    private List<Block> departures() {
        if (making.seal().isEmpty()) {
            return List.of();
        }
        if (making.departures().isEmpty()) {
            return List.of(new Block.Paragraph("Nothing departed from the plan as it was sealed."));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Change change : making.departures()) {
            rows.add(List.of(change.what(), change.why(), change.who(), Cells.time(change.when())));
        }
        return List.of(new Block.Table(
                "Each departure, the oldest first",
                List.of(
                        Column.text("What"),
                        Column.text("Why"),
                        Column.text("Who"),
                        Column.text("When")),
                rows));
    }

    private List<Block> specimens() {
        if (making.specimens().isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (Registered each : making.made()) {
            rows.add(List.of(
                    each.code(),
                    each.placed().isPilot()
                            ? "pilot, never compared"
                            : each.group().map(PlannedGroup::name).orElse("key closed"),
                    each.series().name(),
                    place(each),
                    each.done().stream()
                            .map(done -> "%s %s%s"
                                    .formatted(
                                            done.step().word(),
                                            done.when().toLocalDate(),
                                            done.what().isBlank() ? "" : " (" + done.what() + ")"))
                            .reduce((a, b) -> a + "; " + b)
                            .orElse(NOTHING),
                    each.fate().kind().word()
                            + (each.fate().why().isBlank()
                                    ? ""
                                    : ": " + each.fate().why())));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Table(
                "The register, in the order of testing",
                List.of(
                        Column.name("Specimen"),
                        Column.text("Group"),
                        Column.text("Kind"),
                        Column.text("Made in"),
                        Column.text("What was done"),
                        Column.text("Fate")),
                rows));
        measured().ifPresent(blocks::add);
        photos().ifPresent(blocks::add);
        return blocks;
    }

    private static String place(Registered each) {
        if (each.placed().isPilot()) {
            return "before all runs, place %s".formatted(each.placed().position());
        }
        StringBuilder place = new StringBuilder(
                "run %s, place %s".formatted(each.placed().run(), each.placed().position()));
        if (each.group().isPresent()) {
            each.placed().mix().ifPresent(mix -> place.append(", mix ").append(mix));
            each.placed().load().ifPresent(load -> place.append(", oven load ").append(load));
        }
        return place.toString();
    }

    private Optional<Block> measured() {
        List<List<String>> rows = new ArrayList<>();
        for (Registered each : making.made()) {
            for (Measured one : each.measured()) {
                boolean single = one.values().size() == 1;
                rows.add(List.of(
                        each.code(),
                        one.quantity() + Written.behind("in " + one.unit()),
                        one.moment().word(),
                        Written.number(one.mean(), 5),
                        single ? NOTHING : Written.number(one.least(), 5),
                        single ? NOTHING : Written.number(one.spread(), 2),
                        changed(each, one)));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Table(
                        "What was measured before and after treatment",
                        List.of(
                                Column.name("Specimen"),
                                Column.text("What"),
                                Column.text("When"),
                                Column.number("Mean"),
                                Column.number("Least"),
                                Column.number("Spread"),
                                Column.number("Change")),
                        rows));
    }

    private static String changed(Registered specimen, Measured one) {
        Optional<Measured> before = specimen.measured(one.quantity(), Moment.BEFORE);
        if (one.moment() == Moment.BEFORE || before.isEmpty()) {
            return NOTHING;
        }
        double percent = 100 * (one.mean() / before.get().mean() - 1);
        return Written.withSign(percent, Written.fixed(percent, 2)) + Written.behind("%");
    }

    private Optional<Block> photos() {
        List<List<String>> rows = new ArrayList<>();
        for (Registered each : making.made()) {
            each.photos()
                    .forEach(photo -> rows.add(List.of(
                            each.code(),
                            photo.words(),
                            Cells.time(photo.when()),
                            photo.file().name(),
                            photo.file().sha256())));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Table(
                        "Photos of specimens, kept as they came",
                        List.of(
                                Column.name("Specimen"),
                                Column.text("What it shows"),
                                Column.text("Taken"),
                                Column.text("File"),
                                Column.code("SHA-256")),
                        rows));
    }
}
