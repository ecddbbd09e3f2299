package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReferenceCommandTest {

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void begin() {
        desk = new Desk(folder)
                .file(
                        "bars.csv",
                        "date,strength_MPa",
                        "2026-01-02,50",
                        "2026-01-03,51",
                        "2026-01-04,50",
                        "2026-01-05,51.5",
                        "2026-01-06,50.5");
        desk.run(
                "instrument",
                "add",
                "Cell A",
                "--kind",
                "load cell",
                "--workspace",
                desk.path("w"));
        desk.run(
                "reference",
                "begin",
                "bars",
                "--instrument",
                "Cell A",
                "--method",
                "tensile",
                "--property",
                "strength",
                "--first",
                "5",
                "--workspace",
                desk.path("w"));
    }

    @Test
    void valuesOfATableAndTypedOnesMakeOneChart() {
        assertThat(desk.type("reference note bars --file @bars.csv --workspace @w")
                        .done())
                .contains("limits", "The bench reads as it did.");
        assertThat(desk.type("reference note bars 62MPa --date 2026-02-01 --workspace @w")
                        .done())
                .contains("2026-02-01", "beyond the limits", "Test nothing until it is found");
        JsonNode shown = desk.type("reference show --json --workspace @w").json();
        JsonNode bars = shown.path("references").get(0);
        assertThat(bars.path("inControl").asBoolean()).isFalse();
        assertThat(bars.path("values")).hasSize(6);
        desk.type("reference show bars --out @bars.svg --workspace @w").done();
        assertThat(desk.files()).contains("bars.svg");
        assertThat(desk.run(
                                "reference",
                                "withdraw",
                                "bars",
                                "--date",
                                "2026-02-01",
                                "--why",
                                "it slipped",
                                "--workspace",
                                desk.path("w"))
                        .done())
                .contains("withdrawn: it slipped", "The bench reads as it did.");
    }

    @Test
    void refusesWhatItCannotKeep() {
        desk.refuses("reference note bars --workspace @w", "say one of VALUE and --file");
        desk.refuses("reference note bards 5 --workspace @w", "did you mean 'bars'");
        desk.refuses("reference note bars 5 --date soon --workspace @w", "'soon' is not a date");
        desk.refuses(
                "reference withdraw bars --date 2026-02-02 --why x --workspace @w", "no value");
        desk.refuses("reference", "begin");
        desk.file("bad.csv", "date,strength_MPa", "2026-01-02,much");
        desk.refuses("reference note bars --file @bad.csv --workspace @w", "line 2", "much");
        desk.refuses("reference show bars --out @x.svg --workspace @w", "a chart needs 4");
    }
}
