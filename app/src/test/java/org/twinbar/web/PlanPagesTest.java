package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.report.paper.Scanned;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.StudyName;

/** From claims to a sealed plan by pages alone, as a browser without script sends them. */
class PlanPagesTest {

    @TempDir
    static Path folder;

    private static Served served;

    @BeforeAll
    static void serve() {
        // The loopback address stands for one of the local network.
        served = Served.in(folder, List.of("127.0.0.1"));
    }

    @AfterAll
    static void close() {
        served.close();
    }

    @Test
    void offersWhatTheClaimAsksAndTheControlsThatPeopleForget() {
        StudyName study = claimed("offered");
        assertThat(page(study))
                .contains(
                        "What is to be made?",
                        "Controls that people forget",
                        "<b>Warmed</b>",
                        "<b>Added wall</b>",
                        "the same grams printed as wall may do as much for less",
                        "value=\"15%\"",
                        "Specimens: tensile, flat",
                        "Half-size tensile bar 1BA")
                .contains("the likely verdict is “supported”")
                .contains("usual for the test (common practice, no source)");
        assertThat(served.get(Links.plan(study) + "/form?sort=print+setting").body())
                .contains("print two or more runs of each group")
                .doesNotContain("<b>Warmed</b>");
    }

    @Test
    void saysAtOnceWhatANumberCanTell() {
        StudyName study = claimed("numbers");
        String few = served.get(Links.plan(study) + "/numbers?kind=0&" + query(form()))
                .body();
        assertThat(few)
                .doesNotContain("<html")
                .contains("With 4 in each group", "6\u202f%, given", "svg");
        assertThat(served.get(Links.plan(study) + "/numbers?" + query(form())).body())
                .contains("12 specimens in all", "of resin");
        Map<String, String> less = form();
        less.put("s0.expected", "6 %");
        assertThat(served.get(Links.plan(study) + "/numbers?kind=0&" + query(less))
                        .body())
                .contains("the likely verdict is “open”");
        less.put("s0.n", "2");
        assertThat(served.get(Links.plan(study) + "/numbers?kind=0&" + query(less))
                        .body())
                .contains("A group has from 3 to 200 specimens here, not 2.");
        less.put("s0.n", "4");
        less.put("s0.scatter", "a lot");
        assertThat(served.get(Links.plan(study) + "/numbers?kind=0&" + query(less))
                        .body())
                .contains("a lot' is not a number");
    }

    @Test
    void dealsSealsAndHandsOutWhatThePrinterAndTheBenchNeed() {
        StudyName study = claimed("dealt");
        HttpResponse<String> kept = served.post(Links.plan(study), form());
        assertThat(kept.statusCode()).as(kept.body()).isEqualTo(303);
        Plan plan = plan(study);
        assertThat(plan.allocation().specimens()).hasSize(12);
        assertThat(plan.allocation().design().groups())
                .extracting(it -> it.name())
                .containsExactly("plain", "coated", "sanded");
        assertThat(plan.reasons()).singleElement().satisfies(it -> {
            assertThat(it.scatter()).isEqualTo("6 %");
            assertThat(it.from()).isEqualTo("given");
        });
        String page = page(study);
        assertThat(page)
                .contains(
                        "Which specimens answer it?",
                        "Not sealed yet",
                        "dealt from seed 3",
                        "Run 2")
                .contains("class=\"drawn\"")
                .doesNotContain("plate.3mf");
        assertThat(served.post(Links.plan(study) + "/seal", act()).statusCode()).isEqualTo(303);
        Making making = served.workspace().plans().of(study);
        assertThat(page(study))
                .contains("Sealed 4 May", making.seal().orElseThrow().sha256(), "plate.3mf?run=1");
        for (String file : List.of(
                "plate.3mf?run=2",
                "plate.stl?run=1&bed=180x180",
                "print-sheets.pdf?bed=220x220",
                "treatment-sheets.pdf",
                "run-sheet.pdf?test=tensile",
                "labels.pdf?columns=3&rows=8")) {
            HttpResponse<String> answer = served.get(Links.plan(study) + "/" + file);
            assertThat(answer.statusCode()).as(file).isEqualTo(200);
            assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
                    .startsWith("attachment; filename=\"dealt.");
        }
        assertThat(served.get(Links.plan(study) + "/plate.3mf?run=1&bed=30x30").body())
                .contains("A bed of 30 by 30 mm holds");
        assertThat(served.get(Links.plan(study) + "/plate.3mf?run=9").statusCode())
                .isEqualTo(404);
    }

    @Test
    void labelsHoldAddressesWhilePhonesAreLetIn() throws IOException {
        StudyName study = claimed("labelled");
        assertThat(served.post(Links.plan(study), form()).statusCode()).isEqualTo(303);
        List<String> codes = served.workspace().plans().of(study).made().stream()
                .map(it -> it.code())
                .toList();
        assertThat(labels(study)).containsExactlyInAnyOrderElementsOf(codes);
        assertThat(served.post("/phones/open", Map.of("address", "127.0.0.1")).statusCode())
                .isEqualTo(303);
        try {
            assertThat(labels(study))
                    .allMatch(it -> it.startsWith("http://127.0.0.1:"))
                    .extracting(it -> LabelAddress.read(it).orElseThrow())
                    .allMatch(it -> it.isOf(study))
                    .extracting(LabelAddress::code)
                    .containsExactlyInAnyOrderElementsOf(codes);
        } finally {
            served.post("/phones/close", Map.of());
        }
        assertThat(labels(study)).containsExactlyInAnyOrderElementsOf(codes);
    }

    private static List<String> labels(StudyName study) throws IOException {
        return Scanned.codes(
                served.bytes(Links.plan(study) + "/labels.pdf?columns=3&rows=8").body(), 220);
    }

    @Test
    void makesAPlanWhereNothingIsExpectedYet() {
        StudyName study = claimed("unexpected");
        Map<String, String> unsaid = form();
        unsaid.put("s0.expected", "");
        unsaid.put("s0.worth", "");
        assertThat(served.get(Links.plan(study) + "/numbers?kind=0&" + query(unsaid))
                        .body())
                .contains(
                        "What so many can tell is not known yet. Say the change that is expected");
        assertThat(served.post(Links.plan(study), unsaid).statusCode()).isEqualTo(303);
        assertThat(plan(study).reasons()).isEmpty();
    }

    @Test
    void changesASealedPlanOnlyWithAReason() {
        StudyName study = claimed("changed");
        served.post(Links.plan(study), form());
        served.post(Links.plan(study) + "/seal", act());
        Map<String, String> more = form();
        more.put("s0.n", "5");
        more.put("seed", "4");
        HttpResponse<String> refused = served.post(Links.plan(study), more);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains("The plan is sealed: a change of it needs its reason.")
                .contains("name=\"s0.n\" inputmode=\"numeric\" value=\"5\"");
        more.put("why", "two bars warped");
        assertThat(served.post(Links.plan(study), more).statusCode()).isEqualTo(303);
        assertThat(page(study)).contains("What departed from it", "two bars warped");
    }

    @Test
    void refusesARunForEachTreatmentAndSaysTheWayOut() {
        StudyName study = claimed("tied");
        Map<String, String> tied = form();
        tied.put("changes", "between runs");
        tied.put("runs", "1");
        HttpResponse<String> refused = served.post(Links.plan(study), tied);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains("told from the run it was printed in: print at least 6 runs")
                .contains("value=\"one coat of clear resin\"");
        assertThat(served.workspace().plans().of(study).plan()).isEmpty();
    }

    @Test
    void keepsWhatWasTypedBesideWhatIsWrong() {
        StudyName study = claimed("mistyped");
        Map<String, String> wrong = form();
        wrong.put("runs", "two");
        wrong.put("treated", "plain");
        wrong.put("s0.shape", "bar");
        wrong.put("s0.sizes", "diameter 5");
        HttpResponse<String> refused = served.post(Links.plan(study), wrong);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains(
                        "is not a whole number of 0 or more",
                        "value=\"two\"",
                        "A bar has no 'diameter'; its sizes are length, width, thickness.",
                        "value=\"diameter 5\"");
        wrong.put("runs", "1");
        wrong.put("s0.sizes", "length 100, width 12,5, thickness=4");
        assertThat(served.post(Links.plan(study), wrong).body())
                .contains("Each group of a plan has a name of its own.");
        wrong.put("treated", "coated");
        assertThat(served.post(Links.plan(study), wrong).statusCode()).isEqualTo(303);
        assertThat(plan(study).series())
                .singleElement()
                .satisfies(it -> assertThat(it.shape()).isEqualTo("bar-100x12.5x4"));
        assertThat(served.get(Links.plan(study) + "/form").body())
                .contains("value=\"length 100, width 12.5, thickness 4\"");
    }

    @Test
    void repeatsAPlanWithOneChange() {
        StudyName study = claimed("once");
        served.post(Links.plan(study), form());
        assertThat(served.post(Links.plan(study) + "/repeat", act()).body())
                .contains("Say in a few words what is changed.");
        Map<String, String> repeat = act();
        repeat.put("change", "two coats");
        HttpResponse<String> made = served.post(Links.plan(study) + "/repeat", repeat);
        assertThat(made.statusCode()).isEqualTo(303);
        StudyName again = served.workspace().study("once-two-coats");
        assertThat(made.headers().firstValue("Location")).hasValue(Links.plan(again) + "/form");
        assertThat(plan(again).allocation().design())
                .isEqualTo(plan(study).allocation().design());
        assertThat(plan(again).allocation().specimens())
                .isNotEqualTo(plan(study).allocation().specimens());
        assertThat(served.get(Links.study(again)).body()).contains("As once, but: two coats");
    }

    @Test
    void notesPilotsAndOpensTheKeyWithAReason() {
        StudyName study = claimed("keyed");
        served.post(Links.plan(study), form());
        Map<String, String> pilots = act();
        pilots.put("series", "tensile, flat");
        pilots.put("what", "strength in MPa");
        pilots.put("values", "48,1 50.3 46.9");
        assertThat(served.post(Links.plan(study) + "/pilots", pilots).statusCode())
                .isEqualTo(303);
        assertThat(page(study)).contains("mean 48.43, standard deviation 1.72", "key is opened");
        assertThat(served.post(Links.plan(study) + "/key", act()).body())
                .contains("12 specimens of the plan have no result yet");
        Map<String, String> key = act();
        key.put("why", "told apart by eye anyway");
        assertThat(served.post(Links.plan(study) + "/key", key).statusCode()).isEqualTo(303);
        assertThat(page(study)).contains("the key was opened");
    }

    private static StudyName claimed(String name) {
        HttpResponse<String> made = served.post(
                "/claims/guide",
                Map.of(
                        "act", UUID.randomUUID().toString(),
                        "words", "15 % stronger",
                        "control", "plain",
                        "name", name,
                        "a.stronger.how", "tensile.strength",
                        "a.stronger.per", "peak_force",
                        "a.stronger.orientation", "flat",
                        "a.stronger.worth", "5 %"));
        assertThat(made.statusCode()).as(made.body()).isEqualTo(303);
        return served.workspace().study(name);
    }

    private static Map<String, String> act() {
        return new HashMap<>(Map.of("act", UUID.randomUUID().toString()));
    }

    private static Map<String, String> form() {
        Map<String, String> form = act();
        form.putAll(Map.of(
                "sort", "coating",
                "control", "plain",
                "treated", "coated",
                "treated_words", "one coat of clear resin",
                "mix", "yes",
                "with.sanded", "yes",
                "runs", "2",
                "mixes", "2",
                "seed", "3",
                "resin", "0.3"));
        form.putAll(Map.of(
                "s0.shape", "iso527-1ba",
                "s0.orientation", "flat",
                "s0.n", "4",
                "s0.expected", "25 %",
                "s0.worth", "5 %",
                "s0.scatter", "6 %",
                "reasons", "misprinted\nbroken in handling"));
        return form;
    }

    private static String query(Map<String, String> form) {
        StringBuilder query = new StringBuilder();
        form.forEach((name, value) -> query.append(name)
                .append('=')
                .append(java.net.URLEncoder.encode(value, java.nio.charset.StandardCharsets.UTF_8))
                .append('&'));
        return query.toString();
    }

    private static String page(StudyName study) {
        return served.get(Links.plan(study)).body();
    }

    private static Plan plan(StudyName study) {
        return served.workspace().plans().of(study).plan().orElseThrow();
    }
}
