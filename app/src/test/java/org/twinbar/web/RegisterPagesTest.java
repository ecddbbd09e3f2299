package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.twinbar.study.Act;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/** What was done to specimens, noted on pages by a browser without script. */
class RegisterPagesTest {

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
    void notesAStepOfARunOfAGroupAndOfWhatIsTicked() {
        StudyName study = planned("stepped");
        assertThat(note(
                                study,
                                Map.of(
                                        "step",
                                        "printed",
                                        "which",
                                        "run 1",
                                        "when",
                                        "2026-05-02T18:30"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(served.get(Links.study(study)).body()).contains("6 specimens dealt, not sealed");
        assertThat(page(study)).contains("printed 2 May, 18:30", "group coated", "mix 2");
        note(study, Map.of("step", "treated", "which", "group coated"));
        List<Registered> all = served.workspace().plans().forTreating(study).specimens();
        assertThat(all)
                .filteredOn(it -> it.done(Step.TREATED).isPresent())
                .hasSize(3)
                .allSatisfy(it -> assertThat(it.group().orElseThrow().name()).isEqualTo("coated"));
        assertThat(page(study)).as("which would tell the groups").doesNotContain("treated 4 May");
        String code = all.get(0).code();
        note(study, Map.of("step", "conditioned", "which", "ticked", "code", code));
        assertThat(one(study, code).done(Step.CONDITIONED)).isPresent();
    }

    @Test
    void keepsTheFormWhereAStepIsRefused() {
        StudyName study = planned("refused");
        HttpResponse<String> nobody = note(
                study, Map.of("step", "printed", "which", "ticked", "what", "the nozzle clogged"));
        assertThat(nobody.statusCode()).isEqualTo(400);
        assertThat(nobody.body())
                .contains("Say which specimens were printed.", "value=\"the nozzle clogged\"");
        assertThat(note(study, Map.of("step", "printed", "which", "all", "when", "yesterday"))
                        .body())
                .contains("is not a time such as 2026-05-04 18:30", "value=\"yesterday\"");
    }

    @Test
    void measuresAtSeveralPlacesAndSaysWhatTheyTell() {
        StudyName study = planned("measured");
        String link = specimen(study);
        assertThat(served.get(link + "/measured?quantity=width&v0=5,02&v1=4.98&v2=5.03")
                        .body())
                .contains("mean 5.01", "least 4.98", "spread 0.05");
        assertThat(served.get(link + "/measured?quantity=width&v0=five").body())
                .contains("not a number");
        assertThat(served.post(link + "/measured", width("5,02", "4.98", "5.03"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(served.get(link).body())
                .contains("mean 5.01", "value=\"4.98\"", "Keep the thickness", "Keep the mass");
        HttpResponse<String> again = served.post(link + "/measured", width("5.1", "5.1", "5.1"));
        assertThat(again.statusCode()).isEqualTo(400);
        assertThat(again.body()).contains("say why it is another now", "value=\"5.1\"");
        Map<String, String> mass = act();
        mass.putAll(Map.of("quantity", "mass", "moment", "before", "v0", "2.31"));
        served.post(link + "/measured", mass);
        Map<String, String> after = act();
        after.putAll(Map.of("quantity", "mass", "moment", "after", "v0", "2.48 g"));
        assertThat(served.post(link + "/measured", after).headers().firstValue("Location"))
                .hasValue(link + "?moment=after#mass");
        assertThat(served.get(link + "?moment=after").body())
                .as("which would tell the groups")
                .doesNotContain("It gained");
        assertThat(served.post(link + "/measured", act()).body())
                .contains("Say what was measured.");
    }

    @Test
    void notesWhatBecameOfASpecimenWithTheReason() {
        StudyName study = planned("fated");
        String link = specimen(study);
        Map<String, String> lost = act();
        lost.put("fate", "LOST");
        HttpResponse<String> refused = served.post(link + "/fate", lost);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("Say why specimen", "It can't be tested");
        lost.put("why", "overboard");
        assertThat(served.post(link + "/fate", lost).statusCode()).isEqualTo(303);
        assertThat(page(study)).contains("lost: overboard");
        assertThat(served.post(link + "/photos", act()).body())
                .contains("Choose or take a photo first.");
        assertThat(served.get(Links.register(study) + "/Z999").statusCode()).isEqualTo(404);
    }

    @Test
    void hasThePilotsBeforeAllOthers() {
        StudyName study = served.workspace()
                .importStudy(
                        Act.by("the club"),
                        StudyFile.parse(
                                "plan.toml",
                                MakingPagesTest.PLANNED
                                        .replace("planned cleats", "piloted")
                                        .replace("per_group = 3", "per_group = 3\npilots = 2")),
                        Handed.nothing());
        note(study, Map.of("step", "printed", "which", "the pilots"));
        Making making = served.workspace().plans().of(study);
        assertThat(making.pilotSpecimens())
                .hasSize(2)
                .allSatisfy(it -> assertThat(it.done(Step.PRINTED)).isPresent());
        assertThat(making.specimens())
                .allSatisfy(it -> assertThat(it.done(Step.PRINTED)).isEmpty());
        String pilot = making.pilotSpecimens().get(0).code();
        assertThat(served.get(Links.registered(study, pilot)).body()).contains("pilot 1");
        assertThat(served.get(Links.plan(study)).body())
                .contains("Pilots, before run 1", "<td class=\"number\">pilot</td>");
        assertThat(served.get(Links.plan(study) + "/plate.3mf?run=0").statusCode())
                .isEqualTo(200);
    }

    @Test
    void leadsAStudyWithoutAPlanToOne() {
        assertThat(served.get(Links.register(served.demo())).body())
                .contains("The study has no plan yet", "Plan the specimens");
    }

    private static Map<String, String> act() {
        return new HashMap<>(Map.of("act", UUID.randomUUID().toString()));
    }

    private static Map<String, String> width(String... values) {
        Map<String, String> form = act();
        form.put("quantity", "width");
        form.put("moment", "before");
        for (int i = 0; i < values.length; i++) {
            form.put("v" + i, values[i]);
        }
        return form;
    }

    private static HttpResponse<String> note(StudyName study, Map<String, String> fields) {
        Map<String, String> form = act();
        form.putAll(fields);
        return served.post(Links.register(study), form);
    }

    private static StudyName planned(String name) {
        return served.workspace()
                .importStudy(
                        Act.by("the club"),
                        StudyFile.parse(
                                "plan.toml",
                                MakingPagesTest.PLANNED.replace("planned cleats", name)),
                        Handed.nothing());
    }

    private static String specimen(StudyName study) {
        Making making = served.workspace().plans().of(study);
        return Links.registered(study, making.specimens().get(0).code());
    }

    private static Registered one(StudyName study, String code) {
        return served.workspace().plans().of(study).specimen(code).orElseThrow();
    }

    private static String page(StudyName study) {
        return served.get(Links.register(study)).body();
    }
}
