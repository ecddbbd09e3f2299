package org.twinbar.treatment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.treatment.Followed.Went;
import org.twinbar.treatment.Procedure.Annealing;
import org.twinbar.treatment.Procedure.RecoatWindow;

class FollowedTest {

    private static final Procedure OVEN = Procedure.annealing(new Annealing(20, 80, 60, 1, 0.5));
    private static final int HOLD = 3;

    @Test
    void saysNothingWhereTheRecipeWasFollowed() {
        assertThat(Followed.findings(
                        Procedure.sanding(List.of(220)),
                        List.of(went(0, "A1"), went(1, "A1"), went(2, "A1"), went(3, "A1"))))
                .isEmpty();
        assertThat(texts(OVEN, went(HOLD, 62, 82, "A1"))).noneMatch(it -> it.startsWith("Step 4"));
    }

    @Test
    void saysWhatWasShorterLongerOrWarmer() {
        assertThat(texts(OVEN, went(HOLD, 40, 91, "A1", "A2")))
                .contains(
                        "Step 4 took 40 min for A1, A2, where the recipe says 60 min or more.",
                        "Step 4 was at 91 °C for A1, A2, where the recipe says 80 °C.");
        assertThat(texts(OVEN, went(HOLD, 75, 80, "A1")))
                .contains("Step 4 took 75 min for A1, where the recipe says 60 min.");
    }

    @Test
    void aRecoatWindowIsLeftOnlyPastItsEnd() {
        Procedure coats = Procedure.coating(2, RecoatWindow.USUAL, 168, 23);
        int wait = 3;
        assertThat(coats.steps().get(wait).mostMinutes()).hasValue(360);
        assertThat(texts(coats, went(wait, 300, 20, "A1"))).noneMatch(it -> it.contains("300"));
        assertThat(texts(coats, went(wait, 400, 20, "A1")))
                .anyMatch(it -> it.startsWith("Step 4 took 400 min for A1, past the 360 min"));
    }

    @Test
    void namesThoseThatAStepWasNotNotedFor() {
        assertThat(texts(
                        Procedure.sanding(List.of(220)),
                        went(0, "A1"),
                        went(1, "A1"),
                        went(1, "A2")))
                .containsExactly(
                        "Step 1 (Weigh each specimen, and measure it at its places, before anything is done to it.) was not noted for A2, though a later one was: were they treated as the others?");
    }

    private static List<String> texts(Procedure recipe, Went... all) {
        return Followed.findings(recipe, List.of(all)).stream()
                .map(Finding::text)
                .toList();
    }

    private static Went went(int step, String... codes) {
        return new Went(step, List.of(codes), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static Went went(int step, double minutes, double celsius, String... codes) {
        return new Went(
                step, List.of(codes), OptionalDouble.of(minutes), OptionalDouble.of(celsius));
    }
}
