package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DriftCommandTest {

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        // NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: flow rates of ten batches.
        desk = new Desk(folder)
                .file(
                        "flow.csv",
                        "flow",
                        "49.6",
                        "47.6",
                        "49.9",
                        "51.3",
                        "47.8",
                        "51.2",
                        "52.6",
                        "52.4",
                        "53.6",
                        "52.1");
    }

    /** The handbook gives 50.81 as the centre and 55.8041 and 45.8159 as the limits. */
    @Test
    void limitsAreThoseOfTheHandbook() {
        JsonNode chart = desk.type("drift @flow.csv --value flow --json").json();
        assertThat(chart.path("centre").asDouble()).isCloseTo(50.81, within(1e-9));
        assertThat(chart.path("high").asDouble()).isCloseTo(55.8041, within(1e-4));
        assertThat(chart.path("low").asDouble()).isCloseTo(45.8159, within(1e-4));
    }

    @Test
    void saysSinceWhenTheBenchReadsOtherwise() throws Exception {
        desk.file("load.csv", "force_N", "10", "12", "9", "11", "10", "11", "10", "9", "25", "26");
        String text = desk.type("drift @load.csv --value force_N --first 8 --out @chart.svg")
                .done();
        assertThat(text)
                .contains("limits from the first 8", "line 10, 25 N: beyond the limits")
                .contains("Test nothing until it is found")
                .contains("the last value in control (line 9)");
        String svg = Files.readString(folder.resolve("chart.svg"));
        assertThat(svg.startsWith("<svg") && !svg.contains("<text") && !svg.contains("var(--"))
                .isTrue();
    }

    @Test
    void saysThatAllIsWell() {
        desk.file("load.csv", "force_N", "10", "12", "9", "11", "10", "11", "10", "9");
        assertThat(desk.type("drift @load.csv --value force_N").done())
                .contains("The bench reads as it did.");
    }

    @Test
    void refusesTooFewEqualOrUnreadableValues() {
        desk.file("few.csv", "force_N", "10", "12", "9");
        desk.file("equal.csv", "force_N", "10", "10", "10", "10");
        desk.file("words.csv", "force_N", "10", "11", "much", "10");
        desk.refuses("drift @few.csv --value force_N", "holds 3 values");
        desk.refuses("drift @flow.csv --value flow --first 20", "20 should set the limits");
        desk.refuses("drift @equal.csv --value force_N", "holds equal values");
        desk.refuses("drift @words.csv --value force_N", "'much'", "is not a number");
        desk.refuses("drift @few.csv --value mass_g", "no column 'mass_g'");
    }
}
