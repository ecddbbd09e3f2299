package org.twinbar.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;

class MixTest {

    private final Recipe twoToOne =
            Recipe.of(Recipe.By.VOLUME, List.of(2.0, 1.0), List.of(1.15, 0.98));

    @Test
    void takesARatioByMassWithoutDensities() {
        Recipe recipe = Recipe.of(Recipe.By.MASS, List.of(100.0, 43.0), List.of());
        assertThat(recipe.partsPerHundred(1)).isCloseTo(43, within(1e-12));
        assertThat(recipe.ofFirst(14).grams().get(1)).isCloseTo(6.02, within(1e-12));
    }

    @Test
    void showsMassesAtTheScalesSteps() {
        Scale scale = new Scale(0.1);
        assertThat(twoToOne.ofTotal(20).onScale(scale).grams()).containsExactly(14.0, 6.0);
        assertThat(scale.nearest(0.25)).isEqualTo(0.3);
        assertThat(new Scale(0.02).nearest(5.976)).isEqualTo(5.98);
    }

    @Test
    void saysHowMuchOfTheOtherIsStillToBePoured() {
        Batch cup = new Batch(
                Recipe.of(Recipe.By.MASS, List.of(2.0, 1.0), List.of()), List.of(14.6, 7.0));
        assertThat(cup.stillToPour().get(0)).isZero();
        assertThat(cup.stillToPour().get(1)).isCloseTo(0.3, within(1e-9));
    }

    @Test
    void splitsIntoEqualCups() {
        List<Batch> cups = twoToOne.ofTotal(250).split(Batch.MOST_IN_A_CUP);
        assertThat(cups).hasSize(3);
        assertThat(cups.get(0).total()).isCloseTo(250.0 / 3, within(1e-9));
        assertThat(twoToOne.ofTotal(100).split(100)).hasSize(1);
    }

    @Test
    void halvesTheWorkingLifeForTenDegreesMore() {
        WorkingLife life = new WorkingLife(30, 23);
        assertThat(life.minutesAt(33)).isCloseTo(15, within(1e-12));
        assertThat(life.minutesAt(13)).isCloseTo(60, within(1e-12));
        assertThat(life.largestBatch(23, 2)).isCloseTo(60, within(1e-12));
        assertThat(life.largestBatch(23, 20)).isEqualTo(Batch.MOST_IN_A_CUP);
    }

    @Test
    void warnsOfHeatAndOfACoarseScale() {
        assertThat(MixFindings.planned(twoToOne.ofTotal(250), new Scale(0.1)))
                .extracting(Finding::text)
                .containsExactly(
                        "250 g in one cup may heat itself until it smokes: split it into 3 batches of at most 100 g and spread each out in a shallow tray (common practice).");
        assertThat(MixFindings.planned(twoToOne.ofTotal(8), new Scale(0.1)))
                .extracting(Finding::code)
                .containsExactly("scale-too-coarse");
        assertThat(MixFindings.planned(twoToOne.ofTotal(20), new Scale(0.1))).isEmpty();
    }

    @Test
    void judgesWhatWasWeighed() {
        Recipe recipe = Recipe.of(Recipe.By.MASS, List.of(2.0, 1.0), List.of());
        assertThat(MixFindings.weighed(new Batch(recipe, List.of(14.0, 7.1)))).isEmpty();
        assertThat(MixFindings.weighed(new Batch(recipe, List.of(14.0, 7.3))))
                .extracting(Finding::code)
                .containsExactly("ratio-off");
        assertThat(MixFindings.weighed(new Batch(recipe, List.of(14.0, 8.0))))
                .extracting(Finding::text)
                .first()
                .asString()
                .startsWith("The ratio in the cup is off by 12.5 %");
    }

    @Test
    void warnsOfMuchThinner() {
        assertThat(MixFindings.thinned(twoToOne.ofTotal(20).thinner(0.05)))
                .extracting(Finding::code)
                .containsExactly("thinner-control");
        assertThat(MixFindings.thinned(twoToOne.ofTotal(20).thinner(0.2)))
                .extracting(Finding::code)
                .contains("much-thinner");
    }

    @Test
    void findsTheFilmUncertainByItsWeighings() {
        Film film = new Film(12_000, 1.10);
        double expected = film.thickness(0.9) * 0.01 / Math.sqrt(6) / 0.9;
        assertThat(film.uncertainty(0.9, new Scale(0.01), 0, 0)).isCloseTo(expected, within(1e-12));
        assertThat(film.uncertainty(0.9, new Scale(1e-9), 0.03, 0.04))
                .isCloseTo(0.05 * film.thickness(0.9), within(1e-6));
    }

    @Test
    void refusesInOneSentence() {
        refuses(
                () -> Recipe.of(Recipe.By.VOLUME, List.of(2.0, 1.0), List.of()),
                "A mix by volume needs the density of A in g/cm³ from its data sheet: without it the mass would be a guess.");
        refuses(
                () -> Recipe.of(Recipe.By.MASS, List.of(2.0, -1.0), List.of()),
                "The part of B must be above zero, not -1.");
        refuses(
                () -> Recipe.of(Recipe.By.VOLUME, List.of(2.0, 1.0), List.of(1150.0, 980.0)),
                "The density of A must lie from 0.1 to 23 g/cm³, not at 1150: is it given in kg/m³?");
        refuses(
                () -> Recipe.of(Recipe.By.VOLUME, List.of(2.0, 1.0), List.of(1.15, 0.0)),
                "The density of B must be above zero, not 0 g/cm³.");
        refuses(
                () -> Recipe.of(Recipe.By.MASS, List.of(2.0), List.of()),
                "A mix has from 2 to 26 components, not 1.");
        refuses(
                () -> Recipe.of(Recipe.By.MASS, List.of(5000.0, 1.0), List.of()),
                "A ratio of 5000 to 1 is wider than 1000 to 1, which no resin is mixed at.");
        refuses(
                () -> twoToOne.ofTotal(0.2).onScale(new Scale(0.1)),
                "The batch asks for 0.05976 g of B, less than the scale's step of 0.1 g: mix more, or take a finer scale.");
        refuses(
                () -> twoToOne.ofTotal(Double.NaN),
                "The batch must be above zero, not no number g.");
        refuses(
                () -> new Scale(0.1).smallestBatch(twoToOne, 0),
                "The limit of the ratio must lie from 0.1 to 100 %, not at 0 %.");
        refuses(
                () -> new Film(12_000, 1.1).needed(150, 1.2),
                "The transfer must lie above 0 and up to 100 %, not at 120 %.");
        refuses(
                () -> new WorkingLife(30, 23).minutesAt(90),
                "Resin is worked from 0 to 60 °C, not at 90 °C.");
    }

    private static void refuses(ThrowingCallable call, String sentence) {
        assertThatThrownBy(call).isInstanceOf(TreatmentException.class).hasMessage(sentence);
    }
}
