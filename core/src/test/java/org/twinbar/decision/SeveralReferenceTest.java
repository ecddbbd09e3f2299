package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.quantity.Unit;
import org.twinbar.statistics.Published;

/** Several groups, crossed factors and lines on the path to a verdict, against R. */
class SeveralReferenceTest {

    private static final Subject WEIGHT = Subject.of("weight", Unit.of("g"));
    private static final Subject LENGTH = Subject.of("length", Unit.ONE);
    private static final Question MORE = Question.of(WEIGHT, Effect.DIFFERENCE, Expectation.HIGHER);

    private final Checks checks = Checks.of(getClass());

    @Test
    void holdsPlantsTogetherAsR() {
        List<Observation> plants = new ArrayList<>();
        for (String group : List.of("ctrl", "trt1", "trt2")) {
            plants.addAll(Specimens.of(group, Published.values("PlantGrowth", group)));
        }

        Family family = Several.of(MORE, plants, "ctrl", List.of("trt1", "trt2"))
                .get(0)
                .context()
                .family()
                .orElseThrow();

        for (int i = 1; i <= 2; i++) {
            Found held = family.of("trt" + i).found();
            checks.row("plants-held-low-" + i).expects(held.lowest());
            checks.row("plants-held-high-" + i).expects(held.highest());
        }
        checks.row("plants-pair-low-21").expects(family.pairs().get(0).found().lowest());
        checks.row("plants-pair-low-31").expects(family.pairs().get(1).found().lowest());
        checks.row("plants-pair-low-32").expects(family.pairs().get(2).found().lowest());
    }

    @Test
    void crossesSupplementWithDoseAsR() {
        List<Crossing.Part> doses =
                List.of(new Crossing.Part("0.5", teeth("0.5")), new Crossing.Part("2", teeth("2")));
        Question difference = Question.of(LENGTH, Effect.DIFFERENCE, Expectation.HIGHER);
        Question ratio = Question.of(LENGTH, Effect.RATIO, Expectation.HIGHER);

        Alike added = Crossing.of(difference, doses, "OJ", "VC").get(0);
        Alike multiplied = Crossing.of(ratio, doses, "OJ", "VC").get(0);

        checks.row("teeth-contrast").expects(added.contrast().estimate().orElse(0));
        checks.row("teeth-contrast-low").expects(added.contrast().lowest());
        checks.row("teeth-ratios").expects(multiplied.contrast().estimate().orElse(0));
        checks.row("teeth-ratios-high").expects(multiplied.contrast().highest());
        assertThat(added.answer()).isEqualTo(Alike.Answer.DIFFERENT);
        assertThat(added.words())
                .isEqualTo("Length of VC against OJ was 5.3 lower (0.5) and 0.1 higher (2): the"
                        + " treatment acts differently in the two (the first is 5.3 lower than the"
                        + " second, 95\u2009% interval 0.4 to 10.2 lower).");
    }

    @Test
    void fitsLengthOverDoseAsR() {
        List<Trending.Given> given = new ArrayList<>();
        for (String supplement : List.of("VC", "OJ")) {
            for (String dose : List.of("0.5", "1", "2")) {
                given.addAll(given(supplement, dose, Optional.empty()));
            }
        }

        Trend trend = Trending.of(
                Question.of(LENGTH, Effect.RATIO, Expectation.HIGHER),
                Subject.of("dose", Unit.of("mg")),
                given,
                List.of());

        checks.row("teeth-slope").expects(trend.slope().estimate().orElse(0));
        checks.row("teeth-slope-low").expects(trend.slope().lowest());
        checks.row("teeth-slope-high").expects(trend.slope().highest());
        checks.row("teeth-band-low").expects(trend.line().get(0).low());
        assertThat(trend.findings())
                .extracting(org.twinbar.finding.Finding::code)
                .containsExactly("line-is-bent");
        assertThat(trend.verdict()).isEqualTo(Verdict.SUPPORTED);
    }

    @Test
    void fitsWithinBlocksAsR() {
        List<Trending.Given> given = new ArrayList<>();
        for (String supplement : List.of("VC", "OJ")) {
            for (String dose : List.of("0.5", "1", "2")) {
                if (!(supplement + dose).equals("VC2")) {
                    given.addAll(given(
                            supplement, dose, Optional.of(new Block("supplement", supplement))));
                }
            }
        }

        Trend trend = Trending.of(
                Question.of(LENGTH, Effect.DIFFERENCE, Expectation.LOWER),
                Subject.of("dose", Unit.of("mg")),
                given,
                List.of("X1"));

        checks.row("teeth-within-slope").expects(trend.slope().estimate().orElse(0));
        checks.row("teeth-within-low").expects(trend.slope().lowest());
        assertThat(trend.verdict()).isEqualTo(Verdict.CONTRADICTED);
        assertThat(trend.reasons())
                .containsExactly(
                        "Length rose by 13.1 from 0.5 to 2\u2009mg of dose (95\u2009% interval 9.7 to 16.6,"
                                + " 50 specimens at 3 amounts).",
                        "It goes up with dose, not down.",
                        "The slope is +8.8\u20091/mg (+6.5 to +11.0\u20091/mg).");
    }

    private static List<Observation> teeth(String dose) {
        return Specimens.of(
                "OJ",
                Published.values("ToothGrowth", "OJ " + dose),
                "VC",
                Published.values("ToothGrowth", "VC " + dose));
    }

    private static List<Trending.Given> given(
            String supplement, String dose, Optional<Block> block) {
        List<Trending.Given> given = new ArrayList<>();
        int number = 0;
        for (double length : Published.values("ToothGrowth", supplement + " " + dose)) {
            number++;
            Observation one = Observation.of(supplement + dose + "-" + number, supplement, length);
            given.add(new Trending.Given(
                    block.map(one::inBlock).orElse(one), Double.parseDouble(dose)));
        }
        return given;
    }
}
