package org.twinbar.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.method.Methods;
import org.twinbar.treatment.Procedure;

class RecipesTest {

    @TempDir
    Path folder;

    private Workspace workspace;

    @BeforeEach
    void open() {
        Clock noon = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
        workspace = Workspace.open(folder, Methods.builtIn(), noon, "Twinbar test");
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    @Test
    void keepsARecipeOnceAndReadsItBack() {
        Act act = Act.by("the club");
        RecipeSheet sheet = sheet(RecipeKind.ANNEALING, "slow", "hold", "80", "minutes", "60");
        KeptRecipe kept = workspace.recipes().add(act, sheet);
        assertThat(workspace.recipes().add(act, sheet)).isEqualTo(kept);
        assertThat(workspace.recipes().all()).containsExactly(kept);
        assertThat(workspace.recipes().all(RecipeKind.MIX)).isEmpty();
        Procedure steps = kept.sheet().procedure();
        assertThat(steps.sort()).isEqualTo(Procedure.Sort.ANNEALING);
        assertThat(steps.steps().get(3).celsius()).hasValue(80);
        assertThat(steps.steps().get(3).minutes()).hasValue(60);
    }

    @Test
    void aChangeNeedsItsReasonAndLeavesWhatWasTaken() {
        KeptRecipe kept = workspace
                .recipes()
                .add(Act.by("the club"), sheet(RecipeKind.SANDING, "fine", "grits", "220, 400"));
        RecipeSheet finer = sheet(RecipeKind.SANDING, "fine", "grits", "P320;600");
        assertThatThrownBy(
                        () -> workspace.recipes().change(Act.by("the club"), kept.id(), finer, " "))
                .isInstanceOf(FieldException.class)
                .hasMessage("say why the recipe changes");
        KeptRecipe changed =
                workspace.recipes().change(Act.by("the club"), kept.id(), finer, "no 220 left");
        assertThat(changed.id()).isEqualTo(kept.id());
        assertThat(changed.sheet().procedure().steps().get(1).what()).contains("P320");
        assertThat(kept.sheet().procedure().steps().get(1).what()).contains("P220");
    }

    @Test
    void aNameIsOnePerKind() {
        RecipeSheet sheet = sheet(RecipeKind.SANDING, "fine", "grits", "220");
        workspace.recipes().add(Act.by("the club"), sheet);
        assertThatThrownBy(() -> workspace.recipes().add(Act.by("the club"), sheet))
                .isInstanceOf(FieldException.class)
                .hasMessage("there is a sanding 'fine' already")
                .extracting(it -> ((FieldException) it).field())
                .isEqualTo("name");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "annealing | hold    | write down at what temperature it is held | minutes=60",
                "annealing | hold    | A treatment is done from -30 to 300 °C, not at 400 °C. | hold=400;minutes=60",
                "annealing | minutes | write down how long it is held | hold=80",
                "annealing | ramp    | The rate of heating must be above zero, not 0 °C/min. | hold=80;minutes=60;ramp=0",
                "coating   | coats   | 'two' must be a whole number from 1 to 20 | coats=two",
                "coating   | recoat_to | The recoat window must end after it begins at 6 h, not at 2 h. | recoat_from=6;recoat_to=2",
                "vapour    | solvent | write down which solvent it is | minutes=5",
                "sanding   | grits   | 'fine' is no grit, such as 220 | grits=fine",
                "dyeing    | bath    | write down how warm the bath is | minutes=5",
                "other     | steps   | write down a line for each step | cautions=hot",
                "material  | density | The density of the film must lie from 0.1 to 23 g/cm³, not at 1150: is it given in kg/m³? | density=1150",
                "mix       | part_1  | write down the parts of B | part_0=2;by=mass",
            })
    void whatIsMissingOrWrongIsToldWithItsField(
            String kind, String field, String sentence, String fields) {
        RecipeSheet sheet = sheet(RecipeKind.of(kind).orElseThrow(), "one", fields.split("[=;]"));
        assertThatThrownBy(sheet::checked)
                .isInstanceOf(FieldException.class)
                .hasMessage(sentence)
                .extracting(it -> ((FieldException) it).field())
                .isEqualTo(field);
    }

    @Test
    void stepsOfOnesOwnHaveTimesAndTemperatures() {
        Procedure steps = sheet(
                        RecipeKind.OTHER,
                        "tea",
                        "steps",
                        "Lay it into the tea; 2 h; 60 °C\n\nDry it",
                        "cautions",
                        "Hot.")
                .procedure();
        assertThat(steps.steps()).hasSize(2);
        assertThat(steps.steps().get(0).minutes()).hasValue(120);
        assertThat(steps.steps().get(0).celsius()).hasValue(60);
        assertThat(steps.cautions()).containsExactly("Hot.");
        assertThatThrownBy(() ->
                        sheet(RecipeKind.OTHER, "tea", "steps", "Soak it; 3 mm").checked())
                .isInstanceOf(FieldException.class)
                .hasMessageContaining("neither a time such as 30 min nor a temperature");
    }

    @ParameterizedTest
    @EnumSource
    void everyKindSaysWhatItAsks(RecipeKind kind) {
        assertThat(kind.asks()).isNotEmpty().extracting(RecipeAsk::key).doesNotHaveDuplicates();
        assertThat(RecipeKind.of(kind.word())).hasValue(kind);
    }

    private static RecipeSheet sheet(RecipeKind kind, String name, String... fields) {
        Map<String, String> filled = new LinkedHashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            filled.put(fields[i], fields[i + 1]);
        }
        return new RecipeSheet(kind, name, new Filled(filled));
    }
}
