package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

/** Whole comparisons against METHODS.md section I (set W) and against R on real pull tests. */
class ComparingReferenceTest {

    private final Checks checks = Checks.of(getClass());

    @Test
    void agreesOnSetW() {
        List<Observation> specimens =
                Specimens.of("plain", Specimens.W_PLAIN, "coated", Specimens.W_COATED);
        Comparison ratio = Comparing.of(
                Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER)
                        .withWorth(0.05),
                specimens,
                "plain",
                "coated");
        checks.row("w-ratio").expects(ratio.found().estimate().orElse(0));
        checks.row("w-ratio-low").expects(ratio.found().low().orElse(0));
        checks.row("w-ratio-high").expects(ratio.found().high().orElse(0));
        checks.row("w-ratio-df").expects(ratio.found().df().orElse(0));
        assertThat(ratio.verdict()).isEqualTo(Verdict.SUPPORTED);
        Comparison difference = Comparing.of(
                Question.of(Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER),
                specimens,
                "plain",
                "coated");
        checks.row("w-difference-low").expects(difference.found().low().orElse(0));
        checks.row("w-difference-high").expects(difference.found().high().orElse(0));
        checks.row("w-difference-p").expects(difference.found().p().orElse(0));
    }
}
