package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code resolve} and {@code gauge}. */
class BenchCommandsTest {

    /** AIAG's study, METHODS N.10: by operator and trial, ten parts each. */
    private static final double[][][] AIAG = {
        {
            {0.29, -0.56, 1.34, 0.47, -0.80, 0.02, 0.59, -0.31, 2.26, -1.36},
            {0.41, -0.68, 1.17, 0.50, -0.92, -0.11, 0.75, -0.20, 1.99, -1.25},
            {0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31}
        },
        {
            {0.08, -0.47, 1.19, 0.01, -0.56, -0.20, 0.47, -0.63, 1.80, -1.68},
            {0.25, -1.22, 0.94, 1.03, -1.20, 0.22, 0.55, 0.08, 2.12, -1.62},
            {0.07, -0.68, 1.34, 0.20, -1.28, 0.06, 0.83, -0.34, 2.19, -1.50}
        },
        {
            {0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49},
            {-0.11, -1.13, 1.09, 0.20, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77},
            {-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16}
        }
    };

    private static final String GAUGE = "gauge @g.csv --value size --part part --operator who";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        desk = new Desk(folder);
        List<String> rows = new ArrayList<>(List.of("who,part,size_mm"));
        for (int o = 0; o < AIAG.length; o++) {
            for (double[] trial : AIAG[o]) {
                for (int p = 0; p < trial.length; p++) {
                    rows.add("%s,%s,%s".formatted("ABC".charAt(o), p + 1, trial[p]));
                }
            }
        }
        desk.file("g.csv", rows.toArray(String[]::new));
    }

    /** METHODS M row 128. */
    @Test
    void theCrossedStudyOfTheHandbook() {
        JsonNode json = desk.type(GAUGE + " --json").json();
        assertThat(json.at("/repeatability").asDouble()).isCloseTo(0.199933, within(1e-5));
        assertThat(json.at("/reproducibility").asDouble()).isCloseTo(0.226838, within(1e-5));
        assertThat(json.at("/gauge").asDouble()).isCloseTo(0.302372, within(1e-5));
        assertThat(json.at("/betweenParts").asDouble()).isCloseTo(1.042327, within(1e-5));
        assertThat(json.at("/share").asDouble()).isCloseTo(0.27861, within(1e-5));
        assertThat(json.at("/trials").asInt()).isEqualTo(3);
        assertThat(json.at("/unit").asText()).isEqualTo("mm");
        assertThat(desk.type(GAUGE).done())
                .contains("10 parts, read by 3 operators, 3 times each")
                .contains("uncertain by 0.30 mm", "28\u2009%", "tells 4 classes");
    }

    @Test
    void aNegativeVarianceIsSaidToBeZero() {
        desk.file(
                "g.csv",
                "who,part,size_mm",
                "A,1,1.0",
                "A,1,1.4",
                "A,2,2.0",
                "A,2,2.4",
                "B,1,1.4",
                "B,1,1.0",
                "B,2,2.4",
                "B,2,2.0");
        JsonNode json = desk.type(GAUGE + " --json").json();
        assertThat(json.at("/reproducibility").asDouble()).isZero();
        assertThat(json.at("/setToZero/0").asText()).isEqualTo("operators");
        assertThat(json.at("/findings/0/text").asText())
                .contains("variance of operators came out below zero");
        assertThat(desk.type(GAUGE).done()).contains("warning: The gauge makes up");
    }

    @Test
    void aStudyThatIsNotCrossedIsRefused() {
        desk.file("g.csv", "who,part,size_mm", "A,1,1.0", "A,1,1.1", "A,2,2.0", "B,1,1", "B,2,2");
        desk.refuses(GAUGE, "'A' read '2' once", "the first part 2 times");
        desk.file("g.csv", "who,part,size_mm", "A,1,1.0", "A,1,1.1", "A,2,2.0", "A,2,2.1");
        desk.refuses(GAUGE, "has 1 operator");
        desk.file("g.csv", "who,part,size_mm", "A,1,1.0", "A,2,1.1", "B,1,2.0", "B,2,2.1");
        desk.refuses(GAUGE, "read once by each operator");
        desk.file("g.csv", "who,part,size_mm", "A,1,one", "A,2,1.1");
        desk.refuses(GAUGE, "line 2", "'one' is not a number");
        desk.refuses("gauge @g.csv --value sise --part part --operator who", "no column 'sise'");
    }

    @Test
    void resolveWritesWhatItFound() {
        JsonNode json = desk.type("resolve impact --per-group 6 --json").json();
        assertThat(json.at("/property").asText()).isEqualTo("impact_strength_kJ_per_m2");
        assertThat(json.at("/perGroup").asInt()).isEqualTo(6);
        assertThat(json.at("/limits/0/source").asText()).isEqualTo("rise angle resolution");
        assertThat(json.at("/limits/0/share").asDouble()).isBetween(0.5, 1.0);
        assertThat(json.at("/levers")).isNotEmpty();
        assertThat(json.at("/cancelling").toString()).contains("angle scale zero");
        double now = json.at("/fromInstruments/share").asDouble();
        JsonNode finer = desk.type(
                        "resolve impact --per-group 6 --json" + " --resolution angle_scale=0.1deg")
                .json();
        assertThat(finer.at("/fromInstruments/share").asDouble()).isLessThan(now / 2);
    }

    @Test
    void resolveTakesReadingsOfOnesOwn() {
        desk.file(
                "mine.csv",
                "specimen,group,width_mm,thickness_mm,peak_force_N",
                "A1,plain,10.0,4.0,1200");
        String text = desk.type("resolve tensile --specimens @mine.csv").done();
        assertThat(text)
                .contains("typically 30.000", "A1 of")
                .contains("note: Nothing tells how specimens scatter")
                .doesNotContain("worked example");
        desk.refuses("resolve tensile --per-group 2", "from 3 to 10 000");
        desk.refuses("resolve rating", "no number that could be compared");
        desk.refuses("resolve tensile --specimens @none.csv", "none.csv");
    }

    @Test
    void resolveStandsOnACalibration() {
        desk.file(
                "cell.csv",
                "reference_N,reading_N",
                "0,0.4",
                "500,501",
                "1000,1003.1",
                "1500,1504",
                "2000,2005.2");
        desk.type("instrument add Cell-A --kind load_cell --workspace @ws").done();
        desk.type("instrument calibrate Cell-A --file @cell.csv --workspace @ws")
                .done();
        String text = desk.type("resolve tensile --instrument load_cell=Cell-A --workspace @ws"
                        + " --date 2026-03-02")
                .done();
        assertThat(text).contains("Cell-A: steps of 0.1", "(calibration of 2026-03-01 against");
        assertThat(text).contains("Cell-A gain");
    }
}
