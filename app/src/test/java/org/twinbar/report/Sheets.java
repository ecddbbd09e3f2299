package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.report.Sheet.Answer;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Claim;
import org.twinbar.report.Sheet.Column;
import org.twinbar.report.Sheet.Item;
import org.twinbar.report.Sheet.Picture;
import org.twinbar.report.Sheet.Section;

/** A sheet that has everything a report may have; its study is invented. */
final class Sheets {

    private Sheets() {}

    static Sheet sample() {
        return titled("Does the clear coat do what its leaflet says?");
    }

    static Sheet titled(String title) {
        String mark = Figures.mark(
                new VerdictMark(1, List.of(1.05), OptionalDouble.of(1.13), 1.08, 1.18),
                "interval +8 to +18\u2009%, no change 0, worth +5\u2009%");
        String wide = Figures.mark(
                new VerdictMark(1, List.of(1.05), OptionalDouble.of(1.09), 1.01, 1.18),
                "interval +1 to +18\u2009%, no change 0, worth +5\u2009%");
        List<Picture> pictures = List.of(
                new Picture(
                        Pictures.all().get("clusters"),
                        "Each ring or dot is a specimen; short bar: mean; thin line: its 95\u2009% interval."),
                new Picture(
                        Pictures.all().get("effect"),
                        "Change of the load that a part carries, with its 95\u2009% interval."),
                new Picture(
                        Pictures.all().get("curves"),
                        "Force against extension as it was recorded; marks: peaks."),
                new Picture(
                        Pictures.all().get("parts"),
                        "Where the uncertainty of one coated bar's strength comes from."));
        List<Item> items = List.of(
                Item.of(
                        "Why this verdict",
                        "The whole interval lies beyond the 5\u2009% that is worth having.",
                        "The 10\u2009% that the leaflet names: open."),
                Item.of(
                        "Part or material",
                        "Per section as tested the strength changed by +1\u2009% (−4 to +5\u2009%)."),
                Item.of(
                        "Does it stand",
                        "In 8 of 8 readings: without C7, by medians, by logarithms, by print run."),
                Item.of(
                        "What limits it",
                        "One mix of resin: the verdict speaks of this mix. Section by caliper over ridges: ±1\u2009% on coated bars only, in the interval."));
        List<Claim> claims = List.of(
                new Claim(
                        "At least 10\u2009% stronger",
                        "leaflet",
                        List.of(
                                new Answer(
                                        "a1",
                                        "Stronger, pulled flat",
                                        "pulled flat",
                                        "supported",
                                        Optional.of(mark),
                                        "Coated bars carried 13\u2009% more load (95\u2009% interval 8 to 18\u2009%, 8 and 8 specimens). The claim of at least 10\u2009% is open.",
                                        "The part carries 13\u2009% more (8 to 18\u2009%). The coat adds 12\u2009% to the section: beyond it −4 to +5\u2009%, no gain shown.",
                                        pictures,
                                        items),
                                new Answer(
                                        "a2",
                                        "Stronger, pulled across the layers",
                                        "pulled across the layers",
                                        "better, size open",
                                        Optional.of(wide),
                                        "There is a gain of 9\u2009% (1 to 18\u2009%), but whether it reaches the 5\u2009% that is worth having is open.",
                                        "There is a gain of 9\u2009% (1 to 18\u2009%), but whether it reaches the 5\u2009% that is worth having is open. About 11 specimens per group would settle it.",
                                        pictures.subList(0, 2),
                                        items.subList(0, 2)))),
                new Claim(
                        "Watertight",
                        "leaflet",
                        List.of(new Answer(
                                "a3",
                                "Watertight for 24\u2009h",
                                "24\u2009h under 120\u2009mm",
                                "supported",
                                Optional.of(mark),
                                "None of 5 coated cups leaked in 24\u2009h under 120\u2009mm of water. With 5 cups, up to 52\u2009% of such cups could still leak.",
                                "None of 5 coated cups leaked, 4 of 5 plain ones did. With 5 cups, up to 52\u2009% of coated cups could still leak.",
                                List.of(
                                        new Picture(
                                                Pictures.all().get("shares"), "Each cup's answer."),
                                        new Picture(
                                                Pictures.all().get("survival"),
                                                "Share of cups still dry over time; tick: watching ended.")),
                                items.subList(0, 1)))),
                new Claim(
                        "Safe for drinking water",
                        "leaflet",
                        List.of(new Answer(
                                "a4",
                                "Safe for drinking water",
                                "",
                                "not for this bench",
                                Optional.empty(),
                                "This can't be settled by a test on this bench. Who sells parts for drinking water needs migration tests by an accredited laboratory under the local rules.",
                                "This can't be settled by a test on this bench. Who decides: local rules, an accredited laboratory.",
                                List.of(),
                                List.of()))));
        return new Sheet(
                title,
                "Two-part clear coat on printed dinghy fittings · 32 specimens in 4 print runs",
                Sheet.Origin.INVENTED,
                claims,
                sections(),
                "Made by Twinbar 0.1.0. Seed 1. Times are UTC.");
    }

    private static List<Section> sections() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 16; i++) {
            rows.add(List.of(
                    (i <= 8 ? "P" : "C") + i,
                    i <= 8 ? "plain" : "coated",
                    "1755.4 ± 9.2",
                    "30.80 ± 0.22",
                    "no displacement was recorded"));
        }
        List<Column> columns = List.of(
                Column.name("Specimen"),
                Column.text("Group"),
                Column.number("Peak force in N"),
                Column.number("Tensile strength in MPa"),
                Column.text("Modulus in MPa"));
        List<List<String>> files = List.of(
                List.of(
                        "P1.csv",
                        "2,082",
                        "b94d27b9934d3e08a52e52d7da7dabfac484efe37a5380ee9088f7ace2efcde9"),
                List.of(
                        "P2.csv",
                        "2,075",
                        "a591a6d40bf420404a011733cfb7b190d62c65bf0bcda32b57b277d9ad9f146e"));
        return List.of(
                new Section(
                        "method",
                        "Method",
                        List.of(
                                new Block.Heading("Pull test"),
                                new Block.Paragraph(
                                        "Follows ISO 527-1 and -2; departs from it in the speed, which was set by hand, and in the grips."),
                                new Block.Items(List.of(
                                        Item.of("Settings", "Modulus window 0.05 to 0.25\u2009%"),
                                        Item.of("Version", "1"))))),
                new Section(
                        "cautions",
                        "Cautions",
                        List.of(new Block.Sentences(
                                List.of(
                                        "Wear eye protection: printed bars break into sharp pieces.",
                                        "Uncured resin harms skin: wear nitrile gloves."),
                                Sheet.Weight.ATTENTION))),
                new Section(
                        "specimens",
                        "Every specimen",
                        List.of(new Block.Table(
                                "Values with their standard uncertainty", columns, rows))),
                new Section(
                        "readings",
                        "Readings",
                        List.of(new Block.Table(
                                "Files as they came",
                                List.of(
                                        Column.name("File"),
                                        Column.number("Rows"),
                                        Column.code("SHA-256")),
                                files))));
    }
}
