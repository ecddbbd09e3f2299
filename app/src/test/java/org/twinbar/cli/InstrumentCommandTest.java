package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InstrumentCommandTest {

    private static final String CELL = "Cell-A";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void table() {
        desk = new Desk(folder)
                .file(
                        "cell.csv",
                        "reference_N,reading_N",
                        "0,0.31",
                        "50,50.62",
                        "100,101.17",
                        "150,151.55",
                        "200,201.68",
                        "150,151.98",
                        "100,101.52",
                        "50,50.93",
                        "0,0.42")
                .file(
                        "bars.csv",
                        "specimen,group,width_mm,thickness_mm,peak_force_N",
                        "A1,plain,10.02,4.05,150.0",
                        "A2,coated,10.11,4.20,170.0");
    }

    private Desk.Run add() {
        return desk.type("instrument add " + CELL
                + " --kind load_cell --resolution 0.01N --valid 365d --limit 0.1% --workspace @ws");
    }

    private Desk.Run calibrate(String date) {
        return desk.type("instrument calibrate " + CELL
                + " --file @cell.csv --against weights --reference-u 0.05% --date " + date
                + " --workspace @ws --json");
    }

    /** The numbers are those of R; core/src/test/R/instrument.R has the same table. */
    @Test
    void fitsATableWithoutAWorkspace() {
        JsonNode json =
                desk.type("instrument calibrate --file @cell.csv --json").json();
        assertThat(json.at("/slope/value").asDouble()).isCloseTo(1.00789714286, within(1e-10));
        assertThat(json.at("/slope/u").asDouble()).isCloseTo(0.00122182485516, within(1e-12));
        assertThat(json.at("/offset/value").asDouble()).isCloseTo(0.429142857143, within(1e-10));
        assertThat(json.at("/scatter").asDouble()).isCloseTo(0.240947110803, within(1e-10));
        assertThat(json.at("/straightness/p").asDouble()).isCloseTo(0.396391040987, within(1e-9));
        assertThat(json.at("/reversal/mean").asDouble()).isCloseTo(0.3, within(1e-9));
        assertThat(json.at("/findings/0/code").asText()).isEqualTo("calibration-reversal");
        assertThat(json.at("/date/reason").asText()).isNotEmpty();
        assertThat(json.at("/points")).hasSize(9);
        assertThat(desk.files()).doesNotContain("ws/twinbar.db");
    }

    @Test
    void saysInWordsWhatTheInstrumentDoes() {
        String text = desk.type("instrument calibrate --file @cell.csv").done();
        assertThat(text)
                .contains("1.0079 times the value", "0.43 N", "calibrated from", "0 to 200 N")
                .contains("as far as these points tell (lack of fit, p = 0.4)")
                .contains("warning: On the way down it shows 0.30 more");
    }

    @Test
    void keepsAnInstrumentAndItsCalibrations() {
        assertThat(add().done()).isEqualTo(CELL + "\n");
        assertThat(desk.type("instrument list --workspace @ws").done()).contains("never");
        JsonNode kept = calibrate("2026-02-01").json();
        assertThat(kept.at("/date").asText()).isEqualTo("2026-02-01");
        assertThat(kept.at("/findings/1/code").asText()).isEqualTo("calibration-beyond-limit");
        desk.type("instrument zero " + CELL + " --reading 2.5N --date 2026-02-20 --workspace @ws")
                .done();
        JsonNode shown =
                desk.type("instrument show " + CELL + " --workspace @ws --json").json();
        assertThat(shown.at("/validDays").asInt()).isEqualTo(365);
        assertThat(shown.at("/zeroChecks/0/reading").asDouble()).isEqualTo(2.5);
        assertThat(shown.at("/calibrations/0/against").asText()).isEqualTo("weights");
        assertThat(desk.type("instrument list --workspace @ws").done()).contains("2026-02-01");
    }

    @Test
    void aWithdrawnCalibrationCountsNoLonger() {
        add();
        calibrate("2026-02-01");
        String withdraw = "instrument withdraw " + CELL + " --workspace @ws --date ";
        desk.refuses(withdraw + "2026-02-02 --why wrong", "was not calibrated on 2026-02-02");
        assertThat(desk.type(withdraw + "2026-02-01 --why wrong-weights").done())
                .contains("withdrawn: wrong-weights", "never calibrated");
        assertThat(codes("2026-02-20")).contains("instrument-not-calibrated");
        JsonNode shown =
                desk.type("instrument show " + CELL + " --workspace @ws --json").json();
        assertThat(shown.at("/withdrawn/0/why").asText()).isEqualTo("wrong-weights");
        assertThat(shown.at("/calibrations")).isEmpty();
    }

    @Test
    void aResultSaysWhichCalibrationItStandsOn() {
        add();
        calibrate("2026-02-01");
        Desk.Run run = desk.type("calculate tensile --specimens @bars.csv --instrument peak_force="
                + CELL + " --date 2026-02-20 --workspace @ws --json");
        JsonNode json = run.json();
        JsonNode force = json.at("/results/0/values/peak_force_N");
        double corrected = (150 - 0.429142857143) / 1.00789714286;
        assertThat(force.at("/value").asDouble()).isCloseTo(corrected, within(1e-8));
        assertThat(force.at("/moves").fieldNames())
                .toIterable()
                .contains(CELL + " gain", CELL + " zero", CELL + " reference gain");
        assertThat(json.at("/instruments").toString())
                .contains("calibration of 2026-02-01 against weights (9 points, 0 to 200\u2009N)")
                .contains("it was not calibrated here");
        String text = desk.type("calculate tensile --specimens @bars.csv --instrument peak_force="
                        + CELL + " --date 2026-02-20 --workspace @ws")
                .done();
        assertThat(text)
                .contains("Readings were corrected by", CELL + ": calibration of 2026-02-01");
    }

    @Test
    void calibrationsThatDidNotHoldAtTheTestAreTold() {
        add();
        calibrate("2026-02-01");
        assertThat(codes("2027-03-01")).contains("calibration-expired");
        assertThat(codes("2026-01-01")).contains("calibration-after-test");
        assertThat(codes("2026-02-20"))
                .contains("calibration-doubtful")
                .doesNotContain("calibration-expired", "calibration-after-test");
        desk.type("instrument zero " + CELL + " --reading 2.5N --date 2026-02-20 --workspace @ws");
        calibrate("2026-01-15");
        assertThat(codes("2026-02-20")).contains("zero-wanders", "instrument-drifted");
    }

    private String codes(String date) {
        return desk.type("calculate tensile --specimens @bars.csv --instrument peak_force=" + CELL
                        + " --date " + date + " --workspace @ws --json")
                .json()
                .at("/findings")
                .findValuesAsText("code")
                .toString();
    }

    @Test
    void whatIsSaidOfAReadingThatIsNotThereIsTold() {
        JsonNode json = desk.type("calculate tensile --specimens @bars.csv --resolution mass=0.1g"
                        + " --calibration extensometer=1% --zero extensometer=2um --json")
                .json();
        assertThat(json.at("/findings").toString())
                .contains("Nothing here was read on 'mass', so that the resolution said of it")
                .contains("'extensometer', so that the calibration and zero said of it");
        assertThat(desk.type("calculate tensile --specimens @bars.csv --resolution width=0.02mm"
                                + " --json")
                        .json()
                        .at("/findings")
                        .toString())
                .doesNotContain("instrument-not-read");
    }

    @Test
    void wrongInputIsOneSentence() {
        desk.refuses("instrument calibrate --file @bars.csv", "bars.csv", "'reference'");
        desk.file("falling.csv", "reference_N,reading_N", "0,9", "5,5", "9,1");
        desk.refuses("instrument calibrate --file @falling.csv", "do not grow");
        desk.file("two.csv", "reference_N,reading_N", "0,0", "5,5");
        desk.refuses("instrument calibrate --file @two.csv", "needs 3 points, not 2");
        desk.file("half.csv", "reference_N,reading_N", "0,0", "5,", "9,9", "10,10");
        desk.refuses("instrument calibrate --file @half.csv", "half.csv, line 3", "is empty");
        desk.file("words.csv", "reference_N,reading_N", "0,0", "5,five", "9,9");
        desk.refuses("instrument calibrate --file @words.csv", "line 3", "'five' is not a number");
        desk.file("units.csv", "reference_N,reading_mm", "0,0", "5,5", "9,9");
        desk.refuses("instrument calibrate --file @units.csv", "mm is a length");
        desk.refuses("instrument calibrate X --file @cell.csv --workspace @none", "no workspace");
        add();
        desk.refuses("instrument add " + CELL + " --kind caliper --workspace @ws", "already");
        desk.refuses("instrument add scale --kind scale --workspace @ws", "is a kind");
        desk.refuses("instrument add B --kind feeler --workspace @ws", "in which unit 'B' reads");
        desk.refuses(
                "instrument add B --kind caliper --unit N --workspace @ws", "B", "N is a force");
        desk.refuses(
                "instrument calibrate Cell-B --file @cell.csv --workspace @ws",
                "no instrument 'Cell-B'",
                "did you mean 'Cell-A'");
        desk.refuses(
                "instrument calibrate " + CELL + " --file @cell.csv --date May --workspace @ws",
                "'May' is not a date");
        String calculate = "calculate tensile --specimens @bars.csv --workspace @ws --instrument ";
        desk.refuses(calculate + "width=" + CELL, "is a load cell", "read on a caliper");
        desk.refuses(calculate + "peak_force=Cell", "no instrument 'Cell'");
        calibrate("2026-02-01");
        desk.refuses(
                calculate + "peak_force=" + CELL + " --calibration peak_force=1%",
                "beside an instrument that was calibrated");
    }
}
