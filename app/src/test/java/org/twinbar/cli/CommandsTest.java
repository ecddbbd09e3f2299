package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.method.Methods;
import org.twinbar.method.TestMethod;

/** The options of {@code calculate} and {@code compare}, and the keys of what they write. */
class CommandsTest {

    private static final String COMPARE =
            "compare @v.csv --group group --control plain --value strength_MPa ";
    private static final String PULL = "calculate tensile --specimens @t.csv ";

    /** Numbers whose forms below must all mean the same: 1200 N over 10 mm by 4 mm. */
    private static final double STRENGTH = 30;

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        desk = new Desk(folder);
        desk.file(
                "v.csv",
                "specimen,group,orientation,strength_MPa,soft_C,leak_free,hours_h,leaked,run",
                "A1,plain,xy,30.1,60,yes,3,1,r1",
                "A2,plain,xy,30.9,61,no,4,1,r1",
                "A3,plain,z,29.5,62,no,5,0,r2",
                "A4,plain,z,31.1,60.5,no,6,1,r2",
                "A5,plain,z,30.4,61.5,no,6.5,1,r3",
                "A6,plain,xy,30.6,60.8,no,7,1,r3",
                "B1,coated,xy,34.1,66,yes,30,0,r1",
                "B2,coated,xy,34.9,64,yes,40,0,r1",
                "B3,coated,z,33.5,65,yes,9,1,r2",
                "B4,coated,z,35.1,65.5,yes,60,0,r2",
                "B5,coated,z,34.4,64.8,yes,20,1,r3",
                "B6,coated,xy,34.7,65.2,no,50,0,r3");
    }

    @Test
    void compareWritesTheKeysOfTheManual() {
        JsonNode all = desk.type(
                        COMPARE + "--expect higher --worth 5% --claimed 10% --by orientation"
                                + " --interval log --json")
                .json();
        assertThat(keys(all)).containsExactlyInAnyOrder("comparisons", "seed");
        assertThat(all.get("comparisons")).hasSize(2);
        JsonNode one = all.at("/comparisons/0");
        assertThat(keys(one))
                .contains(
                        "value",
                        "by",
                        "control",
                        "treated",
                        "effect",
                        "beside",
                        "expect",
                        "worth",
                        "claimed",
                        "verdict",
                        "reasons",
                        "findings",
                        "needed");
        assertThat(one.at("/by/orientation").asText()).isEqualTo("xy");
        for (String side : List.of("control", "treated")) {
            assertThat(keys(one.get(side))).contains("name", "n", "mean", "sd", "median");
        }
        assertThat(keys(one.get("effect")))
                .containsExactlyInAnyOrder(
                        "kind", "estimate", "low", "high", "level", "df", "method", "p");
        assertThat(keys(one.at("/beside/0"))).contains("interval", "low", "high", "method");
        assertThat(keys(one.get("claimed"))).containsExactlyInAnyOrder("size", "reached");
        assertThat(one.get("worth").asDouble()).isEqualTo(1.05);
        assertThat(one.at("/claimed/size").asDouble()).isEqualTo(1.1);
        assertHoldsNoGap(all);
    }

    @Test
    void calculateWritesTheKeysOfTheManual() {
        desk.file(
                "t.csv",
                "specimen,group,orientation,width_mm,thickness_mm,peak_force_N",
                "A1,plain,xy,10,4,1200");
        JsonNode all = desk.type(PULL + "--json").json();
        assertThat(keys(all))
                .containsExactlyInAnyOrder(
                        "method", "standard", "results", "instruments", "findings");
        JsonNode one = all.at("/results/0");
        assertThat(keys(one))
                .containsExactlyInAnyOrder(
                        "specimen", "group", "orientation", "values", "findings");
        assertThat(keys(one.at("/values/strength_MPa")))
                .containsExactlyInAnyOrder("value", "u", "df", "own", "moves");
        assertThat(keys(one.at("/values/modulus_MPa"))).containsExactly("reason");
        assertHoldsNoGap(all);
    }

    @ParameterizedTest
    @CsvSource({
        "strength_MPa,--effect ratio,ratio",
        "strength_MPa,--effect difference,difference",
        "soft_C,,difference",
        "leak_free,,share",
        "hours_h,--effect rate --event leaked --expect lower,rate",
        "strength_MPa,--effect rank,rank",
        "strength_MPa,--effect level --at 20MPa --of 90%,level",
        "strength_MPa,--block run,ratio",
        "strength_MPa,--unit run,ratio",
        "strength_MPa,--interval fieller --interval welch --interval log --interval bca,ratio",
        "strength_MPa,--interval permutation,ratio",
        "strength_MPa,--resolution 0.1MPa --seed 7,ratio",
        "strength_MPa,--expect same --worth 20%,ratio",
        "strength_MPa,--expect lower --worth 5%,ratio",
        "strength_MPa,--treated coated,ratio",
    })
    void everyEffectAndOptionIsAnswered(String column, String options, String kind) {
        String line = "compare @v.csv --group group --control plain --value " + column
                + (options == null ? "" : " " + options);
        JsonNode all = desk.type(line + " --json").json();
        for (JsonNode one : all.get("comparisons")) {
            assertThat(one.at("/effect/kind").asText()).isEqualTo(kind);
            assertThat(one.get("verdict").asText())
                    .isIn("supported", "better, size open", "open", "too small", "contradicted");
            assertThat(one.get("reasons")).isNotEmpty();
        }
        assertHoldsNoGap(all);
        assertThat(desk.type(line).done())
                .contains(all.at("/comparisons/0/verdict").asText());
    }

    @Test
    void worthIsASizeToEitherSide() {
        assertThat(desk.type(COMPARE + "--expect lower --worth 5% --json")
                        .json()
                        .at("/comparisons/0/worth")
                        .asDouble())
                .isEqualTo(0.95);
        JsonNode hotter = desk.type("compare @v.csv --group group --control plain --value soft_C"
                        + " --worth 3°C --expect higher --json")
                .json();
        assertThat(hotter.at("/comparisons/0/worth").asDouble()).isEqualTo(3);
    }

    @Test
    void sameSeedGivesTheSameAnswerAndIsPrinted() {
        String line = COMPARE + "--interval bca --seed 11 --json";
        String first = desk.type(line).done();
        assertThat(desk.type(line).done()).isEqualTo(first);
        assertThat(first).contains("\"seed\" : 11");
        assertThat(desk.type(COMPARE + "--json").json().get("seed").asInt()).isEqualTo(1);
    }

    @Test
    void readsStandardInput() {
        desk.file(
                "t.csv", "specimen,group,width_mm,thickness_mm,peak_force_N", "A1,plain,10,4,1200");
        String fromFile = desk.type(PULL + "--csv").done();
        desk.pipe("specimen,group,width_mm,thickness_mm,peak_force_N", "A1,plain,10,4,1200");
        assertThat(desk.type("calculate tensile --specimens - --csv").done()).isEqualTo(fromFile);
    }

    @Test
    void compareReadsWhatCalculateWroteToTwelveDigits() {
        desk.file(
                "t.csv",
                "specimen,group,width_mm,thickness_mm,peak_force_N",
                "A1,plain,10.02,4.01,1203.7",
                "A2,plain,9.98,3.97,1191.4",
                "A3,plain,10.01,4.03,1215.2",
                "B1,coated,10.31,4.28,1391.8",
                "B2,coated,10.29,4.33,1402.5",
                "B3,coated,10.35,4.30,1379.1");
        desk.file("r.csv", desk.type(PULL + "--csv").done().getBytes(StandardCharsets.UTF_8));
        desk.file("r.json", desk.type(PULL + "--json").done().getBytes(StandardCharsets.UTF_8));
        String tail = " --value strength_MPa --group group --control plain --worth 3% --json";
        JsonNode table = desk.type("compare @r.csv" + tail).json().at("/comparisons/0");
        JsonNode json = desk.type("compare @r.json" + tail).json().at("/comparisons/0");
        assertThat(json.get("verdict")).isEqualTo(table.get("verdict"));
        for (String number : List.of("estimate", "low", "high", "df", "p")) {
            double expected = table.at("/effect/" + number).asDouble();
            assertThat(json.at("/effect/" + number).asDouble())
                    .as(number)
                    .isCloseTo(expected, within(1e-12 * Math.abs(expected)));
        }
        desk.pipe(desk.type(PULL + "--json").done());
        assertThat(desk.type("compare -" + tail).json().at("/comparisons/0/effect"))
                .isEqualTo(json.get("effect"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "specimen,group,width_mm,thickness_mm,peak_force_N\nA1,plain,10,4,1200\n",
                "specimen,group,width (mm),thickness (cm),peak_force (kN)\nA1,plain,10,0.4,1.2\n",
                "specimen,group,width [mm],thickness [mm],peak force [N]\nA1,plain,10,4,1200\n",
                "specimen;group;width, mm;thickness, mm;peak_force, N\nA1;plain;10;4;1200\n",
                "specimen,group,width,thickness,peak_force\n,,mm,mm,N\nA1,plain,10,4,1200\n",
                "specimen;group;width_mm;thickness_mm;peak_force_kN\nA1;plain;10,0;4,0;1,2\n",
                "specimen\tgroup\twidth_mm\tthickness_mm\tpeak_force_N\nA1\tplain\t10\t4\t1200\n",
                "A club's bench\nMarch\n\nspecimen,group,width_mm,thickness_mm,peak_force_N\n"
                        + "A1,plain,10,4,1200\n",
                "specimen,group,width_1_mm,width_2_mm,thickness_mm,peak_force_N\n"
                        + "A1,plain,9.9,10.1,4,1200\n",
                "specimen,group,width_mm,thickness_mm,peak_force_N\r\nA1,plain,10,4,1200,\r\n\r\n",
                "\"specimen\",\"group\",\"width_mm\",\"thickness_mm\",\"peak_force_N\"\n"
                        + "\"A1\",\"plain\",\"10\",\"4\",\"1200\"\n",
            })
    void readsTablesAsPeopleWriteThem(String table) {
        for (Charset charset : List.of(
                StandardCharsets.UTF_8, StandardCharsets.UTF_16, Charset.forName("windows-1252"))) {
            desk.file("t.csv", table.getBytes(charset));
            assertThat(desk.type(PULL + "--json")
                            .json()
                            .at("/results/0/values/strength_MPa/value")
                            .asDouble())
                    .as("in %s: %s", charset, table)
                    .isCloseTo(STRENGTH, within(1e-12));
        }
    }

    @Test
    void namesAColumnAndItsUnit() {
        desk.file(
                "t.csv", "specimen,group,width_mm,thickness_mm,curve_file", "A1,plain,10,4,c.csv");
        desk.file("c.csv", "time_s,Load cell 1", "0,0", "1,60", "2,122.36", "3,5");
        JsonNode result = desk.run(
                        "calculate",
                        "tensile",
                        "--specimens",
                        desk.path("t.csv"),
                        "--column",
                        "force=Load cell 1:kgf",
                        "--json")
                .json();
        assertThat(result.at("/results/0/values/peak_force_N/value").asDouble())
                .isCloseTo(122.36 * 9.80665, within(1e-9));
    }

    @Test
    void ownUncertaintyOfOneReadingCounts() {
        desk.file(
                "t.csv",
                "specimen,group,width_mm,width_u,thickness_mm,peak_force_N",
                "A1,plain,10,0.5,4,1200",
                "A2,plain,10,,4,1200");
        JsonNode results = desk.type(PULL + "--json").json().get("results");
        double given = results.at("/0/values/strength_MPa/own").asDouble();
        assertThat(given).isCloseTo(STRENGTH * 0.05, within(0.01));
        assertThat(results.at("/1/values/strength_MPa/own").asDouble()).isLessThan(given / 10);
    }

    @Test
    void sourcesOfErrorAreTakenFromOptions() {
        desk.file(
                "t.csv", "specimen,group,width_mm,thickness_mm,peak_force_N", "A1,plain,10,4,1200");
        JsonNode moves = desk.type(PULL + "--calibration peak_force=2% --json")
                .json()
                .at("/results/0/values/strength_MPa/moves");
        assertThat(moves.properties())
                .extracting(field -> field.getValue().asDouble())
                .anySatisfy(shift -> assertThat(shift).isCloseTo(0.02 * STRENGTH, within(1e-9)));
    }

    @Test
    void setGivesWhatIsTheSameForAll() {
        desk.file("t.csv", "specimen,group,width_mm,peak_force_N", "A1,plain,10,1200");
        JsonNode result = desk.type(PULL + "--set thickness=0.4cm --json").json();
        assertThat(result.at("/results/0/values/strength_MPa/value").asDouble())
                .isCloseTo(STRENGTH, within(1e-12));
    }

    @Test
    void explainSaysHowTheTableWasRead() {
        desk.file(
                "t.csv", "specimen;group;width_mm;thickness_mm;peak_force_N", "A1;plain;10;4,5;9");
        Desk.Run run = desk.type(PULL + "--explain --csv");
        assertThat(run.status()).isZero();
        assertThat(run.err()).contains("semicolon", "comma", "UTF-8");
        assertThat(run.out()).startsWith("specimen,group,");
    }

    @Test
    void everyMethodHasHelpFromItsDescription() {
        for (TestMethod method : Methods.builtIn().all()) {
            String name = method.description().name();
            String help = desk.type("calculate " + name + " --help").done();
            assertThat(help).contains(method.description().title(), "--specimens");
            method.description()
                    .properties()
                    .forEach(property -> assertThat(help).as(name).contains(property.column()));
            assertThat(desk.type("calculate --methods").done()).contains(name);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "calculate ",
                "compare ",
                "size ",
                "mix ",
                "study ",
                "report ",
                "serve ",
                "demo ",
                "study new ",
                "study list ",
                "study import ",
                "study show "
            })
    void everyCommandHasHelp(String command) {
        assertThat(desk.type(command + "--help").done()).contains("Usage: twinbar");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "study|do: new, list, import, show, ask, evidence, export, check, publish or correct",
                "plan|do: controls, numbers, make, show, pilots, seal, start, fill or open",
                "register|do: done, measured, fate, photo, clock or film",
                "instrument|do: add, calibrate, withdraw, zero, list or show",
                "sheets|set: test, print, treat or labels",
            })
    void commandThatHoldsOthersAsksForOneOfThem(String command, String says) {
        desk.refuses(command, "say what to " + says);
    }

    @Test
    void completionNamesEveryCommand() {
        assertThat(desk.type("completion").done())
                .contains("calculate", "compare", "study", "report", "demo", "--specimens");
    }

    private static Set<String> keys(JsonNode node) {
        Set<String> keys = new TreeSet<>();
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            keys.add(field.getKey());
        }
        return keys;
    }

    /** Asserts that nothing in it is null or a word for what is no number. */
    private static void assertHoldsNoGap(JsonNode node) {
        assertThat(node.isNull()).isFalse();
        if (node.isValueNode()) {
            assertThat(node.asText()).isNotIn("NaN", "Infinity", "-Infinity", "null");
        }
        node.forEach(CommandsTest::assertHoldsNoGap);
    }
}
