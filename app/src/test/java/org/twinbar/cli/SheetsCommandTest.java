package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {

    @TempDir
    Path folder;

    private Desk planned() {
        Desk desk = new Desk(folder)
                .file(
                        "cleats.toml",
                        "study = \"cleats\"",
                        "question = \"Does the coat make cleats stronger?\"",
                        "[plan]",
                        "seed = 7",
                        "mixes = 2",
                        "[[plan.group]]",
                        "name = \"plain\"",
                        "role = \"control\"",
                        "[[plan.group]]",
                        "name = \"coated\"",
                        "treatment = \"one coat of clear resin\"",
                        "together = [\"mix\"]",
                        "[[plan.series]]",
                        "name = \"flat bars\"",
                        "method = \"tensile\"",
                        "shape = \"iso527-1ba\"",
                        "per_group = 3",
                        "[[claim]]",
                        "words = \"15 % stronger\"",
                        "[[claim.question]]",
                        "name = \"strength\"",
                        "method = \"tensile\"",
                        "property = \"strength\"",
                        "control = \"plain\"");
        desk.type("study import @cleats.toml --workspace @w").done();
        return desk;
    }

    @Test
    void setsTheSheetsOfAPlanAndHidesItsGroupsFromWhoeverTests() throws IOException {
        Desk desk = planned();
        String of = " --study cleats --workspace @w --out ";
        desk.type("sheets test --method tensile" + of + "@t.pdf").done();
        desk.type("sheets print" + of + "@p.pdf").done();
        desk.type("sheets treat" + of + "@c.pdf").done();
        desk.type("sheets labels --grid 5x13" + of + "@l.pdf").done();
        assertThat(text("t.pdf"))
                .contains("Tensile test: run sheet", "cleats", "flat bars", "1BA")
                .doesNotContain("coated", "plain", "clear resin");
        assertThat(text("p.pdf")).contains("Print run 1").doesNotContain("coated", "plain");
        assertThat(text("c.pdf")).contains("Mix 1", "Mix 2", "No mix", "one coat of clear resin");
        assertThat(text("l.pdf")).doesNotContain("coated", "plain");
    }

    @Test
    void laysOutARunOfThePlanInItsPlaces() throws IOException {
        Desk desk = planned();
        JsonNode plate = desk.type("shape --study cleats --workspace @w --run 1 --bed 220x220"
                        + " --positions @run.csv --out @run.3mf --json")
                .json();
        assertThat(plate.get("specimens")).hasSize(6);
        String sheet =
                text(desk, "sheets print --study cleats --workspace @w --out @p.pdf", "p.pdf");
        for (JsonNode one : plate.get("specimens")) {
            assertThat(one.get("shape").asText()).isEqualTo("iso527-1ba");
            assertThat(sheet)
                    .contains("%s %s flat bars"
                            .formatted(
                                    one.get("specimen").asText(),
                                    one.get("position").asText()));
        }
        // What was laid out is a table that labels are made from.
        String labels = text(desk, "sheets labels @run.csv --out @l.pdf", "l.pdf");
        assertThat(labels).contains(plate.at("/specimens/0/specimen").asText());
        String of = "shape --study cleats --workspace @w ";
        desk.refuses(of + "--run 9 --bed 220x220", "no specimens in print run 9");
        desk.refuses(of + "--run 1", "--bed");
        desk.refuses(of + "--run 1 --bed 220x220 --count 3", "the plan says which specimens");
        desk.refuses(of + "--run 1 --bed 60x60", "A bed of 60 by 60 mm holds none of the 6");
    }

    @Test
    void setsTheSheetsOfATable() throws IOException {
        Desk desk = new Desk(folder).file("s.csv", "specimen,order", "A1,2", "B2,1");
        desk.type("sheets test @s.csv --method flexure --shape bar-80x10x4 --set span=64mm"
                        + " --paper letter --out @t.pdf")
                .done();
        assertThat(text("t.pdf"))
                .contains("Three-point flexure: run sheet", "s.csv", "64mm")
                .containsSubsequence("B2", "A1");
        desk.type("sheets labels @s.csv --strip 40x12mm --out @l.pdf").done();
        assertThat(text("l.pdf")).contains("A1", "B2");
        desk.type("sheets labels @s.csv --grid 2x7 --label 99.1x38.1 --label-gap 2.5x0 --first 14"
                        + " --out @m.pdf")
                .done();
        assertThat(text("m.pdf")).contains("A1", "B2");
    }

    @Test
    void refusesInOneSentence() {
        Desk desk = new Desk(folder).file("s.csv", "specimen,order", "A1,2", "B2,1");
        desk.refuses("sheets test --method tensile --out @t.pdf", "name a table");
        desk.refuses("sheets test @s.csv --study x --method tensile --out @t.pdf", "name a table");
        desk.refuses("sheets test @s.csv --method tensil --out @t.pdf", "no method 'tensil'");
        desk.refuses("sheets test @s.csv --method tensile --shape bra --out @t.pdf", "no shape");
        desk.refuses("sheets labels @s.csv --grid 3 --out @t.pdf", "--grid");
        desk.refuses("sheets labels @s.csv --grid 3x8 --label 90x37 --out @t.pdf", "the page has");
        desk.refuses("sheets labels @s.csv --strip 40x5mm --out @t.pdf", "can't be read");
        desk.refuses("sheets labels @s.csv --first 30 --out @t.pdf", "from 1 to 24");
        desk.refuses("sheets print @none.csv --out @t.pdf", "no such file");
        desk.refuses("sheets print --study x --workspace @none --out @t.pdf", "no workspace");
    }

    private String text(Desk desk, String command, String name) throws IOException {
        desk.type(command).done();
        return text(name);
    }

    private String text(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(name).toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
