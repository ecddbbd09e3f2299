package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.study.Act;
import org.twinbar.study.RecipeKind;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Moment;
import org.twinbar.study.judged.StepDone;
import org.twinbar.study.judged.StudyName;

/** Recipes, steps, coats, waiting and conditions, as forms send them. */
class TreatPagesTest {

    @TempDir
    Path folder;

    private Served served;
    private StudyName study;

    @BeforeEach
    void serve() {
        served = Served.in(folder);
        study = Cleats.in(served);
    }

    @AfterEach
    void close() {
        served.close();
    }

    @Test
    void saysWhatMayBeTestedAndWhatIsNext() {
        assertThat(page(Links.treating(study)))
                .contains("3 specimens wait to be treated")
                .contains("3 specimens still curing, until 8 May, 12:00")
                .contains("Choose how 'coated' is treated")
                .contains("Whoever reads the instruments stays away from this page");
        assertThat(page(Links.study(study)))
                .contains("no recipe for coated; 3 specimens wait to be treated");
        assertThat(page("/today")).contains("Does the coat make cleats stronger?");
    }

    @Test
    void timesOfWaitingAreKept() {
        String waiting = Links.treating(study) + "/waiting";
        assertThat(post(waiting, Map.of("cure", "1,5", "condition", "4")).statusCode())
                .isEqualTo(303);
        assertThat(page(Links.treating(study))).contains("3 specimens may be tested today");
        HttpResponse<String> refused = post(waiting, Map.of("cure", "7", "condition", "-1"));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(plain(refused))
                .contains("The time of conditioning must lie from 0 to 3650 days")
                .contains("value=\"7\"");
    }

    @Test
    void aRecipeIsTakenAndKept() {
        takeAnnealing();
        assertThat(served.workspace().plans().forTreating(study).recipes())
                .containsOnlyKeys("coated");
        assertThat(served.workspace().recipes().all())
                .singleElement()
                .satisfies(it -> assertThat(it.sheet().name()).isEqualTo("slow oven"));
        assertThat(page(Links.study(study))).contains("1 recipe, 0 steps noted, 0 mixes");
        String id = served.workspace().recipes().all().get(0).id().toString();
        assertThat(page(Links.recipe(study, "coated"))).contains("slow oven");
        assertThat(page(Links.recipe(study, "coated") + "&like=" + id))
                .contains("value=\"80\"", "value=\"60\"");
        assertThat(page("/recipes/" + id)).contains("What is in slow oven?", "value=\"80\"");
    }

    @Test
    void aWrongRecipeIsToldBesideItsField() {
        HttpResponse<String> refused = post(
                Links.study(study) + "/recipe",
                Map.of("group", "coated", "kind", "annealing", "hold", "400", "minutes", "60"));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(plain(refused))
                .contains("id=\"hold-amiss\" role=\"alert\">A treatment is done from -30 to 300 °C")
                .contains("value=\"400\"", "value=\"60\"");
    }

    @Test
    void stepsBeginAndEndOnButtonsOnce() {
        takeAnnealing();
        Map<String, String> form = ticked();
        form.put("begin", "4");
        form.put("act", UUID.randomUUID().toString());
        post(Links.study(study) + "/steps", form);
        post(Links.study(study) + "/steps", form);
        assertThat(steps()).singleElement().satisfies(step -> {
            assertThat(step.step()).isEqualTo(3);
            assertThat(step.specimens()).hasSize(3);
        });
        assertThat(page(Links.steps(study, "coated")))
                .contains("data-left=\"3600\"", "60 min left", "Stop step 4")
                .contains("never unwatched");
        Map<String, String> end = ticked();
        end.put("end", steps().get(0).id().toString());
        end.put("minutes_4", "42");
        end.put("celsius_4", "79,5");
        end.put("noted_4", "the door was opened");
        post(Links.study(study) + "/steps", end);
        assertThat(page(Links.steps(study, "coated")))
                .contains("42 min at 79.5 °C: the door was opened")
                .contains("Step 4 took 42 min for");
        assertThat(page(Links.treating(study))).contains("Step 4 took 42 min for");
    }

    @Test
    void aStepThatIsRefusedKeepsWhatWasTyped() {
        takeAnnealing();
        Map<String, String> form = ticked();
        form.put("done", "4");
        form.put("celsius_4", "warm");
        form.put("noted_4", "smelled");
        HttpResponse<String> refused = post(Links.study(study) + "/steps", form);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(plain(refused))
                .contains("value=\"smelled\"", "value=\"warm\"")
                .containsPattern("id=\"celsius_4-amiss\" role=\"alert\">[^<]+warm");
        HttpResponse<String> nobody = post(
                Links.study(study) + "/steps",
                Map.of("group", "coated", "sent", "yes", "begin", "1"));
        assertThat(plain(nobody)).contains("Tick the specimens that step 1 is done to.");
        assertThat(steps()).isEmpty();
    }

    @Test
    void whoIsTreatedBeginsToCure() {
        takeAnnealing();
        Map<String, String> form = ticked();
        form.put("treated", "now");
        post(Links.study(study) + "/steps", form);
        assertThat(page(Links.treating(study))).contains("6 specimens still curing");
    }

    @Test
    void aCoatTakesSoMuch() {
        assertThat(page(Links.coat(study)
                        + "?area=120&film=150&density=1,1&transfer=85&reserve=10&specimens=6"))
                .contains(
                        "Mix 15.4 g for 6 specimens of 120 cm²: 2.33 g each, and 10 % in reserve.")
                .contains("total=15.4");
        assertThat(page(Links.coat(study) + "?area=60&film=100&density=1,1&coats=2&solids=60"))
                .contains("2 coats of 50 µm", "Spread each coat 83.3 µm wet.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "density  | 0    | The density of the film must be above zero, not 0 g/cm³.",
                "film     | -5   | The film thickness must be above zero, not -5 µm.",
                "transfer | 120  | The transfer must lie above 0 and up to 100 %, not at 120 %.",
                "reserve  | -3   | The reserve must lie from 0 to 200 %, not at -3 %.",
                "coats    | many | 'many' must be a whole number from 1 to 20.",
            })
    void aWrongCoatIsToldBesideItsField(String field, String typed, String sentence) {
        Map<String, String> fields =
                new LinkedHashMap<>(Map.of("area", "120", "film", "150", "density", "1.1"));
        fields.put(field, typed);
        StringBuilder query = new StringBuilder();
        fields.forEach(
                (name, value) -> query.append('&').append(name).append('=').append(value));
        HttpResponse<String> refused = served.get(Links.coat(study) + "?" + query.substring(1));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(plain(refused))
                .contains("id=\"%s-amiss\" role=\"alert\">%s".formatted(field, sentence));
    }

    @Test
    void filmsAreToldFromTheMassesInTheRegister() {
        List<String> codes = coated();
        double[] after = {5.40, 5.42, 5.15};
        for (int i = 0; i < 3; i++) {
            weigh(codes.get(i), Moment.BEFORE, 5);
            weigh(codes.get(i), Moment.AFTER, after[i]);
        }
        HttpResponse<String> answer = post(
                Links.coat(study) + "/film", Map.of("cured_density", "1,1", "film_area", "40"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(page(Links.coat(study)))
                .contains("The film is 73.5 µm thick in the mean")
                .contains("%s was coated thin".formatted(codes.get(2)))
                .containsPattern("90\\.91 ± 0\\.93 µm");
    }

    @Test
    void evidenceIsAttachedOnceAndNeedsItsWords() {
        Map<String, String> form = new LinkedHashMap<>(Map.of(
                "claim", "Fit for drinking water",
                "condition", "1",
                "evidence", "migration test passed",
                "act", UUID.randomUUID().toString()));
        assertThat(post(Links.conditions(study), form).statusCode()).isEqualTo(303);
        assertThat(page(Links.conditions(study)))
                .contains("migration test passed", "An accredited laboratory");
        form.put("evidence", "");
        form.put("act", UUID.randomUUID().toString());
        HttpResponse<String> refused = post(Links.conditions(study), form);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(plain(refused)).contains("Write down what the evidence is and what it shows.");
    }

    @Test
    void materialsAndMixesAreKeptAndOfferedWhereTheyAreUsed() {
        post("/recipes", Map.of("kind", "material", "name", "white filament", "density", "1,24"));
        post(
                "/recipes",
                Map.of(
                        "kind",
                        "mix",
                        "name",
                        "clear resin",
                        "by",
                        "volume",
                        "part_0",
                        "2",
                        "part_1",
                        "1",
                        "density_0",
                        "1.15",
                        "density_1",
                        "0.98"));
        assertThat(page("/recipes")).contains("white filament", "clear resin");
        assertThat(page(Links.coat(study))).contains("white filament: 1,24", "clear resin: 1.093");
        String id = served.workspace().recipes().all(RecipeKind.MIX).get(0).id().toString();
        assertThat(page(Links.weigh(study))).contains("clear resin");
        assertThat(page(Links.weigh(study) + "?total=20&step=0.1&recipe=" + id))
                .contains("Pour 14.0 g of A");
        HttpResponse<String> refused = post(
                "/recipes/" + id, Map.of("name", "clear resin", "by", "volume", "part_0", "2"));
        assertThat(refused.statusCode()).isEqualTo(400);
    }

    private void takeAnnealing() {
        HttpResponse<String> answer = post(
                Links.study(study) + "/recipe",
                Map.of(
                        "group", "coated",
                        "kind", "annealing",
                        "hold", "80",
                        "minutes", "60",
                        "name", "slow oven"));
        assertThat(answer.statusCode()).isEqualTo(303);
    }

    private void weigh(String code, Moment moment, double grams) {
        served.workspace()
                .register()
                .measured(
                        Act.by("the club"),
                        study,
                        code,
                        new Measured(Measured.MASS, moment, List.of(grams)),
                        Optional.empty());
    }

    private Map<String, String> ticked() {
        Map<String, String> form = new LinkedHashMap<>(Map.of("group", "coated", "sent", "yes"));
        coated().forEach(code -> form.put("s." + code, "on"));
        return form;
    }

    private List<String> coated() {
        return served.workspace().plans().forTreating(study).specimens().stream()
                .filter(each -> each.placed().group().equals("coated"))
                .map(Registered::code)
                .toList();
    }

    private List<StepDone> steps() {
        return served.workspace().plans().forTreating(study).steps();
    }

    private HttpResponse<String> post(String path, Map<String, String> fields) {
        return served.post(path, fields);
    }

    private String page(String path) {
        HttpResponse<String> page = served.get(path);
        assertThat(page.statusCode()).as(path).isEqualTo(200);
        return plain(page);
    }

    private static String plain(HttpResponse<String> page) {
        return page.body()
                .replace('\u202f', ' ')
                .replace('\u00a0', ' ')
                .replace("&#39;", "'")
                .replace("&#34;", "\"");
    }
}
