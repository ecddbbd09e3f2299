package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.statistics.assumption.Outliers;
import org.twinbar.statistics.assumption.Outliers.Side;
import org.twinbar.statistics.groups.Holm;

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

    /**
     * Peak stress of real pulls; the curves are no part of the product, their peaks are typed here.
     */
    @Test
    void agreesOnAnnealedNylon() {
        annealed(
                "xy",
                new double[] {58.36156, 65.018573, 63.863013, 55.3958, 66.899093},
                new double[] {68.449853, 70.695067, 71.04436, 69.002387, 69.966093},
                Verdict.BETTER_SIZE_OPEN);
        annealed(
                "z",
                new double[] {9.60222, 9.479393, 9.57836, 8.582967, 8.694827},
                new double[] {9.438813, 9.248987, 9.87856, 9.85794, 9.484427},
                Verdict.OPEN);
    }

    private void annealed(String orientation, double[] plain, double[] annealed, Verdict verdict) {
        Comparison comparison = Comparing.of(
                Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER)
                        .withWorth(0.05),
                Specimens.of("plain", plain, "annealed", annealed),
                "plain",
                "annealed");
        Found found = comparison.found();
        String row = "nylon-" + orientation;
        checks.row(row + "-ratio").expects(found.estimate().orElse(0));
        checks.row(row + "-low").expects(found.low().orElse(0));
        checks.row(row + "-high").expects(found.high().orElse(0));
        checks.row(row + "-df").expects(found.df().orElse(0));
        checks.row(row + "-p").expects(found.p().orElse(0));
        assertThat(comparison.verdict()).isEqualTo(verdict);
    }

    private static final double[][] RUNS = {
        {50.1, 51.0, 49.2},
        {47.3, 47.9},
        {52.0, 52.4, 51.1, 53.0},
        {44.0, 45.1},
        {46.6, 45.0, 46.1},
        {43.0, 42.2, 44.1}
    };

    private static List<Observation> run(int run, String group) {
        return IntStream.range(0, RUNS[run].length)
                .mapToObj(i -> Observation.of("S" + run + i, group, RUNS[run][i]))
                .toList();
    }

    /** Several mixes are a random effect within the treated group. */
    @Test
    void agreesOnMixes() {
        List<Observation> bars = new ArrayList<>();
        for (int mix = 0; mix < 3; mix++) {
            Block block = new Block("mix", "M" + mix);
            run(mix, "coated").forEach(bar -> bars.add(bar.inBlock(block)));
        }
        bars.addAll(run(3, "plain"));
        bars.addAll(run(4, "plain"));
        for (Effect effect : List.of(Effect.DIFFERENCE, Effect.RATIO)) {
            Question question =
                    Question.of(Specimens.STRENGTH, effect, Expectation.HIGHER).withResolution(0);
            Found found = Comparing.of(question, bars, "plain", "coated").found();
            String row = "mixes-" + effect.word();
            checks.row(row).expects(found.estimate().orElse(0));
            checks.row(row + "-df").expects(found.df().orElse(0));
            checks.row(row + "-low").expects(found.low().orElse(0));
            checks.row(row + "-high").expects(found.high().orElse(0));
            assertThat(found.method()).startsWith("3 mixes, REML");
        }
    }

    /** Runs that each have one treatment count once, however many bars they hold. */
    @Test
    void agreesOnUnits() {
        List<Observation> bars = new ArrayList<>();
        for (int run = 0; run < 6; run++) {
            String name = "run " + run;
            run(run, run < 3 ? "coated" : "plain").forEach(bar -> bars.add(bar.inUnit(name)));
        }
        Question question = Question.of(Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER)
                .withResolution(0);
        Comparison comparison = Comparing.of(question, bars, "plain", "coated");
        checks.row("units-difference").expects(comparison.found().estimate().orElse(0));
        checks.row("units-low").expects(comparison.found().low().orElse(0));
        checks.row("units-high").expects(comparison.found().high().orElse(0));
        checks.row("units-p").expects(comparison.found().p().orElse(0));
        assertThat(comparison.treated().n()).isEqualTo(3);
    }

    @Test
    void agreesWithGrubbs() {
        for (int n : new int[] {3, 5, 8, 12, 20}) {
            checks.row("grubbs-" + n).expects(Outliers.criticalGrubbs(n, Side.EITHER, 0.05));
        }
    }

    @Test
    void agreesWithHolm() {
        double[] adjusted = Holm.adjusted(0.03, 0.01, 0.04, 0.02);
        for (int i = 0; i < 4; i++) {
            checks.row("holm-" + i).expects(adjusted[i]);
        }
    }
}
