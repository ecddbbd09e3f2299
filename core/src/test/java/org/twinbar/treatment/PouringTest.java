package org.twinbar.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.treatment.Pouring.Pour;
import org.twinbar.treatment.Pouring.Reading;
import org.twinbar.treatment.Pouring.Standing;

class PouringTest {

    private final Recipe twoToOne =
            Recipe.of(Recipe.By.VOLUME, List.of(2.0, 1.0), List.of(1.15, 0.98));
    private final Batch twenty = twoToOne.ofTotal(20);
    private final Scale tenth = new Scale(0.1);

    @Test
    void anEmptyCupAsksForTheFirstComponent() {
        Pouring cup = cup(Reading.TARED);
        assertThat(cup.next()).hasValue(0);
        assertThat(cup.showsAt(0)).isEqualTo(twenty.grams().get(0));
        assertThat(cup.hasAll()).isFalse();
        assertThat(cup.reached()).isEmpty();
        assertThatThrownBy(() -> cup.standing(0.02)).isInstanceOf(TreatmentException.class);
    }

    @Test
    void tellsWhatTheScaleWillShow() {
        assertThat(cup(Reading.TARED, new Pour(0, 9)).showsAt(0)).isCloseTo(14.024, within(1e-3));
        Pouring tared = cup(Reading.TARED, new Pour(0, 14), new Pour(1, 2));
        assertThat(tared.next()).hasValue(1);
        assertThat(tared.showsAt(1)).isCloseTo(5.976, within(1e-3));
        Pouring running = cup(Reading.RUNNING, new Pour(0, 14), new Pour(1, 16));
        assertThat(running.grams(1)).isEqualTo(2);
        assertThat(running.showsAt(1)).isCloseTo(19.976, within(1e-3));
    }

    @Test
    void anExcessThatNoDisplayShowsAsksForNothing() {
        Pouring cup = cup(Reading.TARED, new Pour(0, 14.1));
        assertThat(cup.over()).isEmpty();
        assertThat(cup.target()).isEqualTo(twenty);
        assertThat(cup.still(0)).isZero();
    }

    @Test
    void anOverPouredHardenerIsSavedByMoreResin() {
        Pouring cup = cup(Reading.TARED, new Pour(0, 14), new Pour(1, 6.8));
        assertThat(cup.over()).hasValue(1);
        assertThat(cup.standing(0.02)).isEqualTo(Standing.BEYOND);
        assertThat(cup.next()).hasValue(0);
        assertThat(cup.still(0)).isCloseTo(6.8 * 2.346939 - 14, within(1e-4));
        assertThat(cup.showsAt(0)).isEqualTo(cup.still(0));
        Pouring saved = cup(Reading.TARED, new Pour(0, 14), new Pour(1, 6.8), new Pour(0, 2));
        assertThat(saved.next()).isEmpty();
        assertThat(saved.cup().grams()).containsExactly(16.0, 6.8);
        assertThat(saved.standing(0.02)).isEqualTo(Standing.WITHIN);
    }

    @Test
    void saysWhereTheScaleCannotTell() {
        assertThat(cup(Reading.TARED, new Pour(0, 14.1), new Pour(1, 5.9)).standing(0.02))
                .isEqualTo(Standing.UNSURE);
    }

    @Test
    void threeComponentsFollowTheOneThatThereIsMostOf() {
        Batch batch =
                Recipe.of(Recipe.By.MASS, List.of(4.0, 2.0, 1.0), List.of()).ofTotal(70);
        Pouring cup =
                new Pouring(batch, List.of(new Pour(0, 40), new Pour(1, 25)), Reading.TARED, tenth);
        assertThat(cup.over()).hasValue(1);
        assertThat(cup.target().total()).isCloseTo(87.5, within(1e-9));
        assertThat(cup.still(0)).isCloseTo(10, within(1e-9));
        assertThat(cup.still(2)).isCloseTo(12.5, within(1e-9));
    }

    @Test
    void refusesATotalThatFalls() {
        assertThatThrownBy(() -> cup(Reading.RUNNING, new Pour(0, 14), new Pour(1, 6)))
                .isInstanceOf(TreatmentException.class)
                .hasMessage(
                        "The total of 6 g after B is less than the 14 g before it: is the scale set to zero between pours?");
        assertThatThrownBy(() -> cup(Reading.TARED, new Pour(0, Double.NaN)))
                .isInstanceOf(TreatmentException.class);
        assertThatThrownBy(() -> cup(Reading.TARED, new Pour(0, -0.1)))
                .isInstanceOf(TreatmentException.class);
    }

    /** Whatever was poured, the target holds it, keeps the ratio, and what is missing fills it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatIsStillToPourMakesTheRecipe(long seed) {
        Random random = new Random(seed);
        Recipe recipe = Recipe.of(
                Recipe.By.MASS,
                List.of(1 + 9 * random.nextDouble(), 1 + 9 * random.nextDouble(), 1.0),
                List.of());
        Batch batch = recipe.ofTotal(20 + 80 * random.nextDouble());
        List<Pour> pours = List.of(
                new Pour(0, 40 * random.nextDouble()),
                new Pour(1, 40 + 40 * random.nextDouble()),
                new Pour(2, 80 + 40 * random.nextDouble()));
        Pouring cup = new Pouring(batch, pours, Reading.RUNNING, tenth);
        List<Double> filled = new java.util.ArrayList<>();
        for (int i = 0; i < 3; i++) {
            filled.add(cup.grams(i) + cup.still(i));
        }
        assertThat(new Batch(recipe, filled).ratioError()).as("seed %s", seed).isLessThan(0.01);
        assertThat(cup.target().total()).isGreaterThanOrEqualTo(batch.total());
        assertThat(cup.cup().total()).isCloseTo(pours.get(2).shown(), within(1e-9));
    }

    private Pouring cup(Reading reading, Pour... pours) {
        return new Pouring(twenty, List.of(pours), reading, tenth);
    }
}
