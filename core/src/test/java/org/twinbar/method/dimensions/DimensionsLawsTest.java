package org.twinbar.method.dimensions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

class DimensionsLawsTest {

    private static final long SEED = 17;
    private static final int TIMES = 200;

    private static Readings.Builder bar(Bench bench) {
        return Readings.of("C1", "coated", bench);
    }

    private static Result result(Readings.Builder readings) {
        return Result.of(new Dimensions(), readings.build());
    }

    private static double percent(Axis axis, double before, double after) {
        return Exactly.value(
                result(bar(Exactly.bench())
                        .number(axis.before(), before)
                        .number(axis.after(), after)),
                axis.change());
    }

    @Test
    void whatStaysAsItWasHasNotChanged() {
        for (Axis axis : Axis.ALL) {
            assertThat(percent(axis, 41.7, 41.7)).isZero();
        }
    }

    @Test
    void aShareKnowsNoUnit() {
        Random random = new Random(SEED);
        for (int i = 0; i < TIMES; i++) {
            double before = 1 + 200 * random.nextDouble();
            double after = before * (0.9 + 0.2 * random.nextDouble());
            assertThat(percent(Axis.LENGTH, 25.4 * before, 25.4 * after))
                    .as("seed %s, run %s", SEED, i)
                    .isCloseTo(percent(Axis.LENGTH, before, after), within(1e-9));
        }
    }

    /** (1 + a)(1 + b) − 1: two treatments one after the other. */
    @Test
    void changesFollowOneAnother() {
        double first = percent(Axis.WIDTH, 10, 9.7) / 100;
        double second = percent(Axis.WIDTH, 9.7, 9.9) / 100;
        assertThat(percent(Axis.WIDTH, 10, 9.9) / 100)
                .isCloseTo((1 + first) * (1 + second) - 1, within(1e-12));
    }

    @Test
    void whatIsUndoneLeavesNothing() {
        Random random = new Random(SEED);
        for (int i = 0; i < TIMES; i++) {
            double before = 1 + 200 * random.nextDouble();
            double after = before * (0.9 + 0.2 * random.nextDouble());
            double there = 1 + percent(Axis.MASS, before, after) / 100;
            double back = 1 + percent(Axis.MASS, after, before) / 100;
            assertThat(there * back).as("seed %s, run %s", SEED, i).isCloseTo(1, within(1e-12));
        }
    }

    private static Readings.Builder film(Bench bench, double mm) {
        double area = 20;
        double density = 1.1;
        return bar(bench)
                .number(Axis.THICKNESS.before(), 4)
                .number(Axis.THICKNESS.after(), 4 + 2 * mm)
                .number(Axis.MASS.before(), 10)
                .number(Axis.MASS.after(), 10 + mm / 10 * area * density)
                .number(DimensionsForm.AREA, area)
                .number(DimensionsForm.FILM_DENSITY, density);
    }

    /** An even film on a part that did not change is the same by caliper and by scale. */
    @Test
    void aFilmIsTheSameByThicknessAndByMass() {
        Random random = new Random(SEED);
        for (int i = 0; i < TIMES; i++) {
            double mm = 0.4 * random.nextDouble();
            Result result = result(film(Exactly.bench(), mm));
            assertThat(Exactly.value(result, DimensionsForm.FILM))
                    .as("seed %s, run %s", SEED, i)
                    .isCloseTo(1000 * mm, within(1e-9))
                    .isCloseTo(Exactly.value(result, DimensionsForm.FILM_BY_MASS), within(1e-9));
            assertThat(Exactly.found(result(film(Bench.usual(), mm)), "films-disagree"))
                    .isFalse();
        }
    }

    @Test
    void oneFaceCarriesWhatTwoShare() {
        double both = Exactly.value(result(film(Exactly.bench(), 0.1)), DimensionsForm.FILM);
        double one = Exactly.value(
                result(film(Exactly.bench(), 0.1).word(DimensionsForm.FACES, DimensionsForm.ONE)),
                DimensionsForm.FILM);
        assertThat(one).isCloseTo(2 * both, within(1e-9));
    }

    /** One caliper for both readings: its gain makes the film longer by its share, no more. */
    @Test
    void aGainMovesAFilmByItsShareAlone() {
        Result result = result(film(Exactly.bench("caliper", 0.01, "0.05 mm", "0 mm"), 0.1));
        assertThat(Exactly.u(result, DimensionsForm.FILM)).isCloseTo(0.01 * 100, within(1e-9));
    }
}
