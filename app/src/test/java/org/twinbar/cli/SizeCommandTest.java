package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class SizeCommandTest {

    @Test
    void writesTheChecksOfTheManual() {
        JsonNode json = MakeRun.json(
                "size",
                "--effect",
                "difference",
                "--scatter",
                "1",
                "--expected",
                "1",
                "--worth",
                "0");
        assertThat(json.get("perGroup").asInt()).isEqualTo(17);
        assertThat(json.get("power").asDouble()).isCloseTo(0.807, within(5e-4));
        assertThat(json.get("smallestEffectAt80").asDouble()).isCloseTo(0.99, within(5e-3));
        assertThat(json.get("effect").asText()).isEqualTo("difference");
        assertThat(perGroup("--scatter", "6%", "--expected", "15%")).isEqualTo(5);
        assertThat(perGroup("--scatter", "6%", "--expected", "15%", "--worth", "5%"))
                .isEqualTo(8);
    }

    @Test
    void tellsThePowerOfANumber() {
        JsonNode json = MakeRun.json(
                "size",
                "--effect",
                "difference",
                "--scatter",
                "1",
                "--expected",
                "1",
                "--per-group",
                "20");
        assertThat(json.get("perGroup").asInt()).isEqualTo(20);
        assertThat(json.get("power").asDouble()).isCloseTo(0.8689528, within(1e-6));
    }

    @Test
    void takesOneUnitForADifference() {
        assertThat(perGroup("--effect", "difference", "--scatter", "1°C", "--expected", "1.8°F"))
                .isEqualTo(17);
        assertThat(MakeRun.of(
                                "size",
                                "--effect",
                                "difference",
                                "--scatter",
                                "1°C",
                                "--expected",
                                "1°C")
                        .out())
                .startsWith("17 specimens per group find 1°C with a chance of 81")
                .contains("smallest change found with a chance of 80 %: 0.991 °C");
    }

    @Test
    void countsRunsWhereARunIsTheUnit() {
        JsonNode json = MakeRun.json(
                "size",
                "--runs",
                "--scatter",
                "6%",
                "--between",
                "4%",
                "--per-run",
                "4",
                "--expected",
                "15%");
        assertThat(json.get("counts").asText()).isEqualTo("runs");
        assertThat(json.get("perGroup").asInt())
                .isEqualTo(perGroup("--scatter", "5%", "--expected", "15%"));
    }

    @Test
    void refusesInOneSentence() {
        MakeRun.refuses("per cent or a factor", "size", "--scatter", "6", "--expected", "15%");
        MakeRun.refuses(
                "must be larger than the 20 % worth having",
                "size", "--scatter", "6%", "--expected", "15%", "--worth", "20%");
        MakeRun.refuses(
                "The scatter must lie above 0", "size", "--scatter", "-6%", "--expected", "15%");
        MakeRun.refuses("never told from none", "size", "--scatter", "6%", "--expected", "0%");
        MakeRun.refuses("above −100 %", "size", "--scatter", "6%", "--expected", "-120%");
        MakeRun.refuses(
                "A group has from 3",
                "size",
                "--scatter",
                "6%",
                "--expected",
                "15%",
                "--per-group",
                "2");
        MakeRun.refuses(
                "The power must lie",
                "size",
                "--scatter",
                "6%",
                "--expected",
                "15%",
                "--power",
                "0.01");
        MakeRun.refuses("--between", "size", "--scatter", "6%", "--expected", "15%", "--runs");
        MakeRun.refuses(
                "--expected: ",
                "size",
                "--effect",
                "difference",
                "--scatter",
                "1 mm",
                "--expected",
                "3 g");
        MakeRun.refuses("--scatter", "size", "--expected", "15%");
    }

    private static int perGroup(String... options) {
        String[] all = new String[options.length + 1];
        all[0] = "size";
        System.arraycopy(options, 0, all, 1, options.length);
        return MakeRun.json(all).get("perGroup").asInt();
    }
}
