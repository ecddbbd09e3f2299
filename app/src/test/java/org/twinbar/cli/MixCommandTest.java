package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class MixCommandTest {

    @Test
    void writesTheExampleOfTheManual() {
        JsonNode json = MakeRun.json(
                "mix",
                "--ratio",
                "2:1",
                "--by",
                "volume",
                "--density",
                "1.15,0.98",
                "--total",
                "20g",
                "--scale",
                "0.1g");
        assertThat(json.get("massRatio").asDouble()).isCloseTo(2.3469, within(5e-5));
        assertThat(json.get("partsBPer100A").asDouble()).isCloseTo(42.61, within(5e-3));
        assertThat(json.get("partA_g").asDouble()).isCloseTo(14.024, within(5e-4));
        assertThat(json.get("partB_g").asDouble()).isCloseTo(5.976, within(5e-4));
        assertThat(json.at("/onScale/partA_g").asDouble()).isEqualTo(14.0);
        assertThat(json.at("/onScale/partB_g").asDouble()).isEqualTo(6.0);
        assertThat(json.get("worstRatioError_percent").asDouble()).isCloseTo(1.75, within(5e-3));
        assertThat(json.get("findings")).isEmpty();
    }

    @Test
    void readsDecimalCommasBetweenSemicolons() {
        JsonNode json = MakeRun.json(
                "mix",
                "--ratio",
                "2:1",
                "--by",
                "volume",
                "--density",
                "1,15;0,98",
                "--part-a",
                "14,0 g");
        assertThat(json.get("total_g").asDouble()).isCloseTo(14 * 20 / 14.02439, within(1e-5));
        assertThat(json.at("/onScale/reason").asText()).contains("--scale");
    }

    @Test
    void answersWhatElseIsAsked() {
        JsonNode json = MakeRun.json(
                "mix",
                "--ratio",
                "2:1",
                "--by",
                "volume",
                "--density",
                "1.15,0.98",
                "--total",
                "20g",
                "--scale",
                "0.1g",
                "--limit",
                "2%",
                "--thinner",
                "10%",
                "--thinner-density",
                "0.87",
                "--weighed",
                "14.6g,6.0g",
                "--working-life",
                "30min",
                "--temperature",
                "33°C",
                "--spreading",
                "1g/min");
        assertThat(json.get("smallestBatch_g").asDouble()).isCloseTo(22.6, within(0.1));
        assertThat(json.get("thinner_g").asDouble()).isCloseTo(1.591, within(5e-4));
        assertThat(json.at("/weighed/stillToPour/partA_g").asDouble()).isZero();
        assertThat(json.at("/weighed/stillToPour/partB_g").asDouble())
                .isCloseTo(14.6 / 2.346939 - 6, within(1e-5));
        assertThat(json.get("workingLife_min").asDouble()).isEqualTo(15);
        assertThat(json.get("batches").asInt()).isEqualTo(2);
        assertThat(json.get("findings").findValuesAsText("code"))
                .containsExactly("ratio-off", "thinner-control");
    }

    @Test
    void printsMassesFirstAndCautionsLast() {
        MakeRun run = MakeRun.of(
                "mix", "--ratio", "100:43", "--by", "mass", "--total", "20g", "--scale", "0.1g");
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .startsWith("A  14.0 g  100 parts by mass\nB   6.0 g  43 parts by mass\n")
                .contains("worst ratio error")
                .contains("caution: Uncured resin");
    }

    @Test
    void refusesInOneSentence() {
        MakeRun.refuses("needs the density of A", mix("2:1", "volume", "--total", "20g"));
        MakeRun.refuses(
                "The part of B must be above zero, not -1", mix("2:-1", "mass", "--total", "20g"));
        MakeRun.refuses(
                "The density of B must be above zero",
                mix("2:1", "volume", "--density", "1.15,0", "--total", "20g"));
        MakeRun.refuses(
                "less than the scale's step of 0.1 g",
                mix("2:1", "mass", "--total", "0.2g", "--scale", "0.1g"));
        MakeRun.refuses("--total: s is a time, not a mass", mix("2:1", "mass", "--total", "20 s"));
        MakeRun.refuses("--total, or --part-a", mix("2:1", "mass"));
        MakeRun.refuses("give one of them", mix("2:1", "mass", "--total", "20g", "--part-a", "2g"));
        MakeRun.refuses(
                "--limit needs --scale", mix("2:1", "mass", "--total", "20g", "--limit", "2%"));
        MakeRun.refuses(
                "may be per cent or a factor",
                mix("2:1", "mass", "--total", "20g", "--scale", "0.1g", "--limit", "2"));
        MakeRun.refuses("--working-life", mix("2:1", "mass", "--total", "9g", "--spreading", "1"));
        MakeRun.refuses(
                "as many densities", mix("2:1", "volume", "--density", "1.1", "--total", "9"));
        MakeRun.refuses("--by", "mix", "--ratio", "2:1", "--total", "20g");
        MakeRun.refuses("'heavy'", mix("2:1", "heavy", "--total", "20g"));
    }

    private static String[] mix(String ratio, String by, String... more) {
        String[] first = {"mix", "--ratio", ratio, "--by", by};
        String[] all = java.util.Arrays.copyOf(first, first.length + more.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return all;
    }
}
