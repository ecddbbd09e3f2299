package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Caution;
import org.twinbar.method.Choice;
import org.twinbar.method.Named;
import org.twinbar.method.Setting;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.report.Sheet.Item;
import org.twinbar.report.Sheet.Section;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.MethodUsed;

/** The second half of a report: all that a stranger needs to check the first. */
final class HowFound {

    private final JudgedStudy study;

    private HowFound(JudgedStudy study) {
        this.study = study;
    }

    static List<Section> of(JudgedStudy study) {
        HowFound found = new HowFound(study);
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(
                "published", "What was published", new PublishedBefore(study).blocks()));
        sections.addAll(HowMade.of(study));
        sections.add(new Section("method", "Method", found.methods()));
        sections.add(new Section("cautions", "Cautions", found.cautions()));
        sections.add(new Section("instruments", "Instruments", found.instruments()));
        sections.add(new Section("together", "Taken together", Together.of(study)));
        sections.add(new Section("findings", "Findings", SeenFindings.of(study)));
        sections.add(new Section("groups", "Each group", GroupTables.of(study)));
        sections.add(new Section("specimens", "Every specimen", SpecimenTables.results(study)));
        sections.add(new Section("uncertainty", "Where uncertainty comes from", Budgets.of(study)));
        sections.add(new Section("left-out", "What was left out", found.leftOut()));
        sections.add(new Section("changes", "What was changed", found.changes()));
        sections.add(new Section("readings", "Readings as they came", found.readings()));
        sections.add(
                new Section("clauses", "What a test report must name", ReportClauses.of(study)));
        sections.removeIf(section -> section.blocks().isEmpty());
        return sections;
    }

    private List<Block> methods() {
        List<Block> blocks = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            blocks.add(new Block.Heading(used.description().title()));
            blocks.add(new Block.Paragraph(used.description().standard()));
            List<Item> items = new ArrayList<>();
            List<String> set = new ArrayList<>();
            List<String> preset = new ArrayList<>();
            for (Named setting : used.description().settings()) {
                String given = used.settings().get(setting.name());
                (given == null ? preset : set)
                        .add(setting.label() + ": " + (given == null ? preset(setting) : given));
            }
            Set<String> known = new LinkedHashSet<>();
            used.description().settings().forEach(setting -> known.add(setting.name()));
            used.settings().forEach((name, value) -> {
                if (!known.contains(name)) {
                    set.add(labelOf(used, name) + ": " + value);
                }
            });
            if (!set.isEmpty()) {
                items.add(new Item("Set for this study", set));
            }
            if (!preset.isEmpty()) {
                items.add(new Item("As preset", preset));
            }
            items.add(Item.of(
                    "Specimens", Cells.count(study.specimensOf(used.name()).size(), "specimen")));
            items.add(Item.of(
                    "Method", used.name() + ", version " + used.description().version()));
            blocks.add(new Block.Items(items));
        }
        return blocks;
    }

    private static String labelOf(MethodUsed used, String name) {
        return used.description().asked().stream()
                .filter(asked -> asked.name().equals(name))
                .map(Named::label)
                .findFirst()
                .orElse(name.replace('_', ' '));
    }

    private static String preset(Named setting) {
        if (setting instanceof Setting number) {
            return Written.number(number.preset(), 6)
                    + Written.behind(number.unit().symbol());
        }
        return setting instanceof Choice choice ? choice.preset().replace('_', ' ') : "as usual";
    }

    private List<Block> cautions() {
        Set<String> texts = new LinkedHashSet<>();
        for (MethodUsed used : study.methods()) {
            used.description().cautions().stream().map(Caution::text).forEach(texts::add);
        }
        study.making().recipes().values().forEach(recipe -> texts.addAll(recipe.cautions()));
        return texts.isEmpty()
                ? List.of()
                : List.of(new Block.Sentences(List.copyOf(texts), Sheet.Weight.ATTENTION));
    }

    private List<Block> instruments() {
        List<Column> columns = List.of(
                Column.name("Instrument"),
                Column.number("Smallest step"),
                Column.number("Gain, u"),
                Column.number("Zero, u"),
                Column.text("These figures are"));
        Map<List<String>, Instrument> rows = new LinkedHashMap<>();
        boolean assumed = false;
        for (MethodUsed used : study.methods()) {
            for (Instrument instrument : used.instruments()) {
                rows.putIfAbsent(row(instrument), instrument);
                assumed |= instrument.origin() == Instrument.Origin.ASSUMED;
            }
        }
        if (rows.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        if (assumed) {
            blocks.add(new Block.Sentences(
                    List.of("Nobody said what some readings were read on. For these the usual"
                            + " instrument of its kind is assumed, marked below; give"
                            + " its figures, and the intervals become those of this"
                            + " bench."),
                    Sheet.Weight.ATTENTION));
        }
        blocks.add(new Block.Table(
                "What readings were read on, with standard uncertainties (u)",
                columns,
                List.copyOf(rows.keySet())));
        return blocks;
    }

    private static List<String> row(Instrument instrument) {
        String unit = instrument.unit().symbol();
        return List.of(
                instrument.name(),
                amount(instrument.resolution(), unit),
                amount(100 * instrument.gainUncertainty(), "%"),
                amount(instrument.zeroUncertainty(), unit),
                instrument
                        .correction()
                        .map(it -> "from the " + it.standsOn())
                        .orElse(instrument.origin().word()));
    }

    private static String amount(double value, String unit) {
        return value == 0 ? "none" : Written.number(value, 3) + Written.behind(unit);
    }

    private List<Block> leftOut() {
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            specimen.leftOut()
                    .ifPresent(out -> rows.add(List.of(
                            specimen.code(),
                            out.why(),
                            out.sight().words(),
                            out.who(),
                            Cells.time(out.when()))));
        }
        if (rows.isEmpty()) {
            return List.of(new Block.Paragraph("No specimen was left out."));
        }
        List<Column> columns = List.of(
                Column.name("Specimen"),
                Column.text("Why"),
                Column.text("Left out"),
                Column.text("Who"),
                Column.text("When"));
        return List.of(
                new Block.Paragraph(
                        "A specimen that was left out stays listed with its values. Where its value"
                                + " was known by then, the weaker of the two verdicts stands, with"
                                + " and without it."),
                new Block.Table("Specimens that do not count", columns, rows));
    }

    private List<Block> changes() {
        if (study.history().isEmpty()) {
            return List.of(new Block.Paragraph("No reading was corrected."));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Change change : study.history()) {
            rows.add(List.of(change.what(), change.why(), change.who(), Cells.time(change.when())));
        }
        List<Column> columns = List.of(
                Column.text("What"), Column.text("Why"), Column.text("Who"), Column.text("When"));
        return List.of(new Block.Table("Each change, the oldest first", columns, rows));
    }

    private List<Block> readings() {
        List<Block> blocks = new ArrayList<>(SpecimenTables.readings(study));
        if (study.files().isEmpty()) {
            return blocks;
        }
        List<List<String>> rows = new ArrayList<>();
        for (KeptFile file : study.files()) {
            rows.add(List.of(file.name(), bytes(file.bytes()), file.sha256()));
        }
        blocks.add(new Block.Heading("Files"));
        blocks.add(new Block.Paragraph(
                "Every file is kept byte for byte. Who has the files can compare their"
                        + " SHA-256 with these."));
        blocks.add(new Block.Table(
                "Files that were read",
                List.of(Column.name("File"), Column.number("Size"), Column.code("SHA-256")),
                rows));
        return blocks;
    }

    private static String bytes(long bytes) {
        return bytes < 10_000
                ? bytes + Written.THIN + "B"
                : bytes < 10_000_000
                        ? Written.fixed(bytes / 1e3, 0) + Written.THIN + "kB"
                        : Written.fixed(bytes / 1e6, 0) + Written.THIN + "MB";
    }
}
