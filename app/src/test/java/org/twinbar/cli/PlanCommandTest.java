package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sailing club's question from an empty workspace, on the command line alone. */
class PlanCommandTest {

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() {
        desk = new Desk(folder);
    }

    private Desk.Run run(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.add("--workspace");
        all.add(desk.path("work"));
        return desk.run(all.toArray(String[]::new));
    }

    private void makePlan(String... more) {
        run("study", "new", "--name", "cleats", "--question", "Does the coat help?")
                .done();
        run(
                        "study",
                        "ask",
                        "15 % stronger",
                        "--answer",
                        "how=tensile.strength",
                        "--answer",
                        "per=peak_force",
                        "--answer",
                        "orientation=flat",
                        "--answer",
                        "worth=5%",
                        "--treated",
                        "coated",
                        "--study",
                        "cleats")
                .done();
        List<String> make = new ArrayList<>(List.of(
                "plan",
                "make",
                "cleats",
                "--treated",
                "coated=one coat of clear resin",
                "--coated",
                "coated",
                "--mixes",
                "2",
                "--per-group",
                "4"));
        make.addAll(List.of(more));
        run(make.toArray(String[]::new)).done();
    }

    @Test
    void goesFromAnEmptyWorkspaceToAVerdictAndItsReport() throws Exception {
        makePlan("--runs", "2", "--scatter", "6%", "--expected", "25%", "--worth", "5%");
        run(
                        "plan",
                        "pilots",
                        "cleats",
                        "--specimens",
                        "tensile, flat",
                        "--read",
                        "force in kN",
                        "--values",
                        "1.21,1.25,1.19")
                .done();
        run("treat", "coating", "--study", "cleats", "--group", "coated").done();
        run("plan", "seal", "cleats").done();
        make();
        run("plan", "start", "cleats", "tensile", "--set", "grip_distance=65 mm")
                .done();
        JsonNode plan = run("plan", "show", "cleats", "--groups", "--json").json();
        desk.file("readings.csv", readings(plan));
        assertThat(run("plan", "fill", "cleats", "tensile", desk.path("readings.csv"))
                        .done())
                .isEqualTo("all 8 specimens have a result or a fate\n");
        assertThat(run("study", "show", "cleats").done()).contains("The key of the blind plan");
        String opened = run("plan", "open", "cleats").done();
        assertThat(opened).startsWith("the key is open\n").contains("15 % stronger", "supported");
        JsonNode shown = run("plan", "show", "cleats", "--json").json();
        assertThat(shown.path("departures")).hasSize(1);
        assertThat(shown.path("departures").get(0).path("why").asText())
                .isEqualTo("the data sheet of the new lot says so");
        assertThat(shown.path("seal").path("text").asText()).startsWith("twinbar plan 2\n");
        assertThat(shown.path("specimens").get(0).path("fate").asText()).isEqualTo("tested");
        run("report", "cleats", "--html", "--out", desk.path("out")).done();
        assertThat(Files.readString(folder.resolve("out/report.html")))
                .contains(
                        "What was planned",
                        "chance of finding it 92",
                        shown.path("seal").path("sha256").asText(),
                        "specimens now cure for 72 h and are conditioned for 4 h",
                        "the data sheet of the new lot says so",
                        "The register, in the order of testing",
                        "Mixes as they were weighed",
                        "lot 12",
                        "was coated thin",
                        "Spread coat 1 of 1");
    }

    /** Prints, mixes, coats, weighs; one specimen gets half the film of the others. */
    private void make() {
        run("register", "done", "cleats", "printed", "--all", "--when", "2026-01-10T09:00")
                .done();
        for (String mix : List.of("1", "2")) {
            run(
                            "mix",
                            "--ratio",
                            "2:1",
                            "--by",
                            "volume",
                            "--density",
                            "1.15,0.98",
                            "--scale",
                            "0.1g",
                            "--weighed",
                            "14.1g,6.0g",
                            "--study",
                            "cleats",
                            "--mix",
                            mix,
                            "--noted",
                            "lot 12")
                    .done();
        }
        run(
                        "register",
                        "done",
                        "cleats",
                        "treated",
                        "--group",
                        "coated",
                        "--when",
                        "2026-01-12T18:00")
                .done();
        double after = 4.2;
        for (JsonNode one :
                run("plan", "show", "cleats", "--groups", "--json").json().path("specimens")) {
            if (one.path("group").asText().equals("coated")) {
                String code = one.path("specimen").asText();
                run("register", "measured", "cleats", "--specimen", code, "--mass", "4.1 g")
                        .done();
                run(
                                "register",
                                "measured",
                                "cleats",
                                "--specimen",
                                code,
                                "--after",
                                "--mass",
                                after + " g")
                        .done();
                after = 4.4;
            }
        }
        assertThat(run("register", "film", "cleats", "--density", "1.1").done())
                .contains("was coated thin");
        JsonNode clock = run("register", "clock", "cleats", "--when", "2026-01-18T12:00", "--json")
                .json();
        assertThat(clock.path("specimens").findValuesAsText("waits"))
                .containsOnly("cure", "condition")
                .hasSize(8);
        assertThat(run(
                                "register",
                                "clock",
                                "cleats",
                                "--cure",
                                "3 d",
                                "--condition",
                                "4 h",
                                "--why",
                                "the data sheet of the new lot says so",
                                "--when",
                                "2026-01-16T12:00")
                        .done())
                .startsWith("may be tested  8");
    }

    @Test
    void attachesEvidenceToWhatNoBenchSettles() {
        run("study", "new", "--name", "bottles").done();
        run("study", "ask", "Food-safe", "--study", "bottles").done();
        run(
                        "study",
                        "evidence",
                        "bottles",
                        "--claim",
                        "Food-safe",
                        "--condition",
                        "2",
                        "--evidence",
                        "none: no laboratory was asked")
                .done();
        run("report", "bottles", "--html", "--out", desk.path("out")).done();
        assertThat(folder.resolve("out/report.html"))
                .content()
                .contains("none: no laboratory was asked (noted by", "accredited laboratory");
        refuses(
                "has conditions 1 to 4, not 9",
                "study",
                "evidence",
                "bottles",
                "--claim",
                "Food-safe",
                "--condition",
                "9",
                "--evidence",
                "x");
        refuses(
                "no claim with conditions 'Foodsafe'",
                "study",
                "evidence",
                "bottles",
                "--claim",
                "Foodsafe",
                "--condition",
                "1",
                "--evidence",
                "x");
    }

    @Test
    void refusesTreatmentsInOneSentence() {
        makePlan();
        refuses("annealing needs --temperature, from the data sheet", "treat", "annealing");
        refuses("There is no treatment 'magic'", "treat", "magic");
        refuses(
                "the plan has no group 'cotaed'",
                "treat",
                "sanding",
                "--grits",
                "220",
                "--study",
                "cleats",
                "--group",
                "cotaed");
        refuses("say which specimens", "register", "done", "cleats", "printed");
        refuses(
                "is not a time such as 2026-05-04T18:30",
                "register",
                "done",
                "cleats",
                "printed",
                "--all",
                "--when",
                "yesterday");
        refuses(
                "the plan has no such specimens",
                "register",
                "done",
                "cleats",
                "printed",
                "--run",
                "7");
        refuses("give the area", "register", "film", "cleats", "--density", "1.1");
        refuses(
                "the density of the film must lie from 0.1 to 23",
                "register",
                "film",
                "cleats",
                "--density",
                "1100");
        refuses(
                "--study needs --weighed",
                "mix",
                "--ratio",
                "2:1",
                "--by",
                "mass",
                "--total",
                "20g",
                "--study",
                "cleats");
        refuses(
                "mixes are counted from 1; there is no mix 0",
                "mix",
                "--ratio",
                "2:1",
                "--by",
                "mass",
                "--weighed",
                "2g,1g",
                "--study",
                "cleats",
                "--mix",
                "0");
        refuses(
                "the plan has no specimen 'Q1'",
                "register",
                "fate",
                "cleats",
                "Q1",
                "broken",
                "--why",
                "fell");
    }

    /** Treated bars carry a third more; the runs differ a little. */
    private static String[] readings(JsonNode plan) {
        List<String> lines =
                new ArrayList<>(List.of("specimen;peak_force_kN;width_mm;thickness_mm"));
        for (JsonNode one : plan.path("specimens")) {
            double force = one.path("group").asText().equals("coated") ? 1.6 : 1.2;
            force += 0.01 * one.path("test").asInt() + 0.02 * one.path("run").asInt();
            lines.add("%s;%s;10,02;4,01"
                    .formatted(
                            one.path("specimen").asText(),
                            String.format(Locale.ROOT, "%.2f", force).replace('.', ',')));
        }
        return lines.toArray(String[]::new);
    }

    @Test
    void hidesGroupsAndMixesWhileTheKeyIsClosed() {
        makePlan();
        JsonNode hidden = run("plan", "show", "cleats", "--json").json();
        assertThat(hidden.path("keyClosed").asBoolean()).isTrue();
        for (JsonNode one : hidden.path("specimens")) {
            assertThat(one.has("group") || one.has("mix")).isFalse();
        }
        assertThat(run("plan", "show", "cleats").done()).contains("hidden", "not sealed yet");
        JsonNode shown = run("plan", "show", "cleats", "--groups", "--json").json();
        assertThat(shown.path("specimens").findValuesAsText("group")).contains("plain", "coated");
        assertThat(shown.path("specimens").findValuesAsText("mix")).contains("1", "2");
    }

    @Test
    void tellsWhatEachNumberShowsAndTakes() {
        JsonNode numbers = run(
                        "plan",
                        "numbers",
                        "--method",
                        "tensile",
                        "--property",
                        "peak_force",
                        "--expected",
                        "15%",
                        "--worth",
                        "5%",
                        "--filament",
                        "4.2 g",
                        "--filament-price",
                        "25",
                        "--json")
                .json();
        assertThat(numbers.path("scatter").asDouble()).isEqualTo(0.06);
        assertThat(numbers.path("scatterFrom").asText()).contains("common practice");
        assertThat(numbers.path("perGroup").asInt()).isEqualTo(8);
        JsonNode cups = run("plan", "numbers", "--method", "leak", "--json").json();
        assertThat(cups.path("perGroup").asInt()).isEqualTo(29);
        assertThat(run(
                                "plan",
                                "numbers",
                                "--method",
                                "oven",
                                "--above",
                                "6 °C",
                                "--scatter",
                                "2 °C",
                                "--json")
                        .json()
                        .path("perGroup")
                        .asInt())
                .isBetween(5, 12);
        assertThat(run("plan", "numbers", "--method", "oven", "--expected", "5 °C")
                        .done())
                .contains("scatter 2\u2009°C, usual for the test", "per group find it");
    }

    /** A pilot is on every paper and in the register, and its plate is printed first. */
    @Test
    void givesPilotsCodesOnPaperAndInTheRegister() {
        makePlan("--pilots", "3");
        JsonNode plan = run("plan", "show", "cleats", "--json").json();
        assertThat(plan.path("pilots")).hasSize(3);
        String code = plan.path("pilots").get(0).path("specimen").asText();
        assertThat(run("plan", "show", "cleats").done()).contains("pilot, never compared");
        assertThat(run("shape", "--study", "cleats", "--run", "0", "--bed", "220x220mm")
                        .done())
                .contains(code);
        run("register", "done", "cleats", "printed", "--run", "0").done();
        assertThat(run("register", "clock", "cleats").done()).contains(code);
        run("sheets", "labels", "--study", "cleats", "--out", desk.path("labels.pdf"))
                .done();
        run(
                        "sheets",
                        "test",
                        "--study",
                        "cleats",
                        "--method",
                        "tensile",
                        "--out",
                        desk.path("test.pdf"))
                .done();
        assertThat(folder.resolve("test.pdf")).isNotEmptyFile();
    }

    /** The claim says 15 %, the test's usual scatter the rest; nothing has to be said twice. */
    @Test
    void keepsWhySoManyFromTheClaim() {
        makePlan();
        assertThat(run("plan", "show", "cleats").done())
                .containsPattern("so many find it with a chance of only \\d+")
                .contains("scatter 6% (usual for", "15% expected", "worth 5%");
    }

    @Test
    void takesEverySpellingOfAStandardShape() {
        makePlan("--specimens", "bars=tensile,ISO 527-2 1BA,flat");
        assertThat(run("plan", "show", "cleats").done()).contains("iso527-1ba");
        refuses(
                "did you mean 'd638-iv'?",
                "plan",
                "make",
                "cleats",
                "--treated",
                "coated=x",
                "--specimens",
                "bars=tensile,d638-iiv,flat");
    }

    /** The same chances stand in core against R; here they are asked for in a person's words. */
    @Test
    void tellsNumbersForSharesRatesAndRanks() {
        JsonNode shares = run(
                        "plan",
                        "numbers",
                        "--method",
                        "leak",
                        "--expected",
                        "50%",
                        "--control-share",
                        "40%",
                        "--json")
                .json();
        assertThat(shares.path("effect").asText()).isEqualTo("share");
        assertThat(shares.path("method").asText()).isEqualTo("exact, every outcome listed");
        assertThat(shares.path("perGroup").asInt()).isBetween(10, 20);
        String rates = run(
                        "plan",
                        "numbers",
                        "--method",
                        "leak",
                        "--property",
                        "time_to_leak",
                        "--expected",
                        "-80%",
                        "--seen",
                        "50%",
                        "--filament",
                        "3 g")
                .done();
        assertThat(rates)
                .contains("per group", "times", "chance: 1000 simulated studies")
                .contains("if rates stay in proportion at all times; the test goes on until it has")
                .contains("g");
        JsonNode ranks = run("plan", "numbers", "--effect", "rank", "--expected", "40%", "--json")
                .json();
        assertThat(ranks.path("numbers").get(0).path("power").asDouble())
                .as("three and three prove no ranks")
                .isZero();
        assertThat(ranks.path("perGroup").asInt()).isBetween(6, 9);
        assertThat(run("plan", "numbers", "--scatter", "6%", "--worth", "10%").done())
                .contains("shows within", "±10\u2009%");
        refuses(
                "say the share of the control that says yes",
                "plan",
                "numbers",
                "--method",
                "leak",
                "--expected",
                "50%");
    }

    @Test
    void takesTheScatterOfEarlierStudies() {
        desk.file(
                "bars.csv",
                "specimen,group,area_mm2,peak_force_N",
                "P1,plain,40,2000",
                "P2,plain,40,2100",
                "P3,plain,40,1900",
                "C1,coated,40,2400",
                "C2,coated,40,2500",
                "C3,coated,40,2300");
        run(
                        "study",
                        "import",
                        "--name",
                        "older",
                        "--method",
                        "tensile",
                        "--specimens",
                        desk.path("bars.csv"))
                .done();
        JsonNode numbers = run(
                        "plan",
                        "numbers",
                        "--method",
                        "tensile",
                        "--property",
                        "peak_force",
                        "--expected",
                        "15%",
                        "--json")
                .json();
        assertThat(numbers.path("scatter").asDouble())
                .as("√((0.05² + (1/24)²)/2), s = 100 over 2000 and over 2400")
                .isCloseTo(
                        Math.sqrt((0.05 * 0.05 + 1 / 576.0) / 2),
                        org.assertj.core.api.Assertions.within(1e-12));
        assertThat(numbers.path("scatterFrom").asText())
                .isEqualTo("of older, 4 degrees of freedom");
        assertThat(numbers.path("findings").get(0).path("code").asText())
                .as("few of one's own tell a scatter badly")
                .isEqualTo("plan-scatter-from-few");
    }

    @Test
    void refusesInOneSentence() throws Exception {
        makePlan();
        refuses("there is no study 'boats'", "plan", "show", "boats");
        refuses(
                "print at least 4 runs, two for each group in turn",
                "plan",
                "make",
                "cleats",
                "--treated",
                "hot=a hotter nozzle",
                "--between-runs",
                "--runs",
                "2");
        refuses(
                "there is no group 'cotaed' among coated, plain",
                "plan",
                "make",
                "cleats",
                "--treated",
                "coated=x",
                "--coated",
                "cotaed");
        refuses(
                "write NAME=METHOD,SHAPE,ORIENTATION",
                "plan",
                "make",
                "cleats",
                "--treated",
                "coated=x",
                "--specimens",
                "bars=tensile");
        refuses(
                "'sideways' is none of flat, edge and upright",
                "plan",
                "make",
                "cleats",
                "--treated",
                "coated=x",
                "--specimens",
                "bars=tensile,iso527-1ba,sideways");
        refuses("there is no sort of treatment", "plan", "controls", "magic");
        refuses("the plan has no leak test, but tensile", "plan", "start", "cleats", "leak");
        refuses("start it from the plan", "plan", "fill", "cleats", "tensile", table("Q1,5"));
        run("plan", "start", "cleats", "tensile").done();
        refuses("has no specimen 'Q1'", "plan", "fill", "cleats", "tensile", table("Q1,5"));
        refuses("have no result yet", "plan", "open", "cleats");
        run("plan", "seal", "cleats").done();
        refuses(
                "a change of it needs its reason",
                "plan",
                "make",
                "cleats",
                "--treated",
                "coated=x");
        refuses(
                "scatter: '6N' is in N, not a share",
                "plan",
                "make",
                "cleats",
                "--treated",
                "coated=x",
                "--scatter",
                "6N",
                "--why",
                "x");
        refuses("say the change that is expected", "plan", "numbers", "--scatter", "6%");
    }

    private String table(String row) throws Exception {
        Files.writeString(folder.resolve("t.csv"), "specimen,peak_force_N\n" + row + "\n");
        return desk.path("t.csv");
    }

    private void refuses(String part, String... arguments) {
        Desk.Run refused = arguments[1].equals("controls") ? desk.run(arguments) : run(arguments);
        assertThat(refused.status()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(refused.err().strip()).containsIgnoringCase(part).doesNotContain("\n");
    }
}
