package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.method.Description;
import org.twinbar.method.Methods;
import org.twinbar.method.TestMethod;
import org.twinbar.study.Act;
import org.twinbar.study.TypedTest;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/** A study that is made from pages alone, by a browser without script. */
class MakingPagesTest {

    static final String PLANNED = """
            study = "planned cleats"
            question = "Does the resin make cleats stronger?"
            [plan]
            seed = 7
            blinding = "blind"
            mixes = 2
            [[plan.group]]
            name = "plain"
            role = "control"
            [[plan.group]]
            name = "coated"
            treatment = "one coat of clear resin"
            together = ["mix"]
            [[plan.series]]
            name = "flat bars"
            method = "tensile"
            shape = "iso527-1ba"
            per_group = 3
            """;

    @TempDir
    static Path folder;

    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.in(folder);
    }

    @AfterAll
    static void close() {
        served.close();
    }

    @Test
    void beginsATestByHandFromAListOfSpecimens() {
        String study = begun("Cleats get stronger");
        assertThat(served.get(study).body()).contains("Add a test", "Add a claim");
        assertThat(served.get(study + "/add-test?method=tensile").body())
                .contains("Readings will be typed", "What section carries the force?", "caliper");
        HttpResponse<String> test = served.post(
                study + "/add-test",
                Map.of(
                        "method", "tensile",
                        "specimens", "P1, plain, R1\nC1, coated, R1\n",
                        "things", "cleats",
                        "how-thickness", "3",
                        "how-width", "same",
                        "value-width", "10 mm"));
        assertThat(test.statusCode()).isEqualTo(303);
        assertThat(test.headers().firstValue("Location")).hasValue(study + "/rig/tensile");
        assertThat(typed(study, "tensile").fields())
                .extracting(TypedTest.Field::header)
                .startsWith("thickness_1_mm", "thickness_2_mm", "thickness_3_mm")
                .contains("peak_force_N")
                .doesNotContain("width_mm", "diameter_mm");
        assertThat(served.get(study).body()).contains("0 of 2 done, 2 to go");
        assertThat(served.get(study + "/add-test").body())
                .as("a study has one test of a method")
                .doesNotContain("value=\"tensile\"");
    }

    @Test
    void keepsWhatWasTypedWhereAListIsRefused() {
        String study = begun("Cleats get lighter");
        Map<String, String> form =
                new HashMap<>(Map.of("method", "tensile", "specimens", "P1, plain\nP1, coated\n"));
        HttpResponse<String> twice = served.post(study + "/add-test", form);
        assertThat(twice.statusCode()).isEqualTo(400);
        assertThat(twice.body()).contains("Specimen 'P1' stands there twice.", "P1, coated");
        form.put("how-width", "same");
        assertThat(served.post(study + "/add-test", form).body())
                .contains("Width is the same for all specimens, so its value is needed.");
    }

    @Test
    void hasAFormForEveryMethod() {
        String study = begun("Cleats of every kind");
        for (TestMethod method : Methods.builtIn().all()) {
            Description description = method.description();
            HttpResponse<String> page =
                    served.get(study + "/add-test?method=" + description.name());
            assertThat(page.statusCode()).as(description.name()).isEqualTo(200);
            assertThat(page.body()).contains(description.title(), "Readings are in files");
        }
        assertThat(served.get(study + "/add-test?method=creep").body())
                .contains("needs a curve of each specimen");
    }

    @Test
    void addsAClaimWithItsQuestion() {
        String study = begun("Bars get better");
        HttpResponse<String> claim = served.post(
                study + "/add-claim",
                Map.of(
                        "words", "At least 10 % stronger",
                        "said_by", "the leaflet",
                        "property", "tensile\tstrength",
                        "control", "plain",
                        "claimed", "10 %"));
        assertThat(claim.statusCode()).isEqualTo(303);
        assertThat(served.get(study).body())
                .contains("At least 10 % stronger", "No readings of the tensile test");
        HttpResponse<String> wrong = served.post(
                study + "/add-claim", Map.of("words", "Better", "property", "tensile\tnothing"));
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("Choose what would show it.", "value=\"Better\"");
    }

    @Test
    void testsThePlannedSpecimensWithoutTellingTheirGroups() {
        StudyName planned = served.workspace()
                .importStudy(
                        Act.by("the club"),
                        StudyFile.parse("plan.toml", PLANNED),
                        Handed.nothing());
        String study = Links.study(planned);
        assertThat(served.get(study + "/add-test?method=tensile").body())
                .contains("The plan has 6 of them for this test");
        assertThat(served.post(study + "/add-test/planned", Map.of("method", "tensile"))
                        .statusCode())
                .isEqualTo(303);
        TypedTest test = typed(study, "tensile");
        assertThat(test.specimens()).hasSize(6).allSatisfy(it -> {
            assertThat(it.group()).isEmpty();
            assertThat(it.isDone()).isFalse();
        });
        assertThat(served.get(study + "/rig/tensile").body())
                .contains("What section carries the force?", "0 of 6 done, 6 to go")
                .doesNotContain("coated", "plain");
        assertThat(served.post(study + "/add-test/planned", Map.of("method", "leak"))
                        .body())
                .contains("The plan has no leak test.");
    }

    private static String begun(String claim) {
        return served.post("/claims", Map.of("words", claim))
                .headers()
                .firstValue("Location")
                .orElseThrow();
    }

    private static TypedTest typed(String study, String method) {
        StudyName name = served.workspace().studies().stream()
                .filter(it -> Links.study(it).equals(study))
                .findFirst()
                .orElseThrow();
        return served.workspace().typing().test(name, method);
    }
}
