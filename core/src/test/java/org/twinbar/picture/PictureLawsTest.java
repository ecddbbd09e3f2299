package org.twinbar.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Propagation;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/** What must hold wherever places lie. */
class PictureLawsTest {

    private static final int DRAWS = 200;

    private static List<Spot> random(Random random, int spots) {
        List<Spot> drawn = new ArrayList<>();
        for (int i = 0; i < spots; i++) {
            drawn.add(new Spot(
                    4000 * random.nextDouble(),
                    3000 * random.nextDouble(),
                    0.01 + 0.02 * random.nextDouble()));
        }
        return drawn;
    }

    private static List<Spot> each(List<Spot> spots, UnaryOperator<Spot> change) {
        return spots.stream().map(change).toList();
    }

    @ParameterizedTest
    @EnumSource(Figure.class)
    void isTheSameWhereverThePictureIsTurnedAndMoved(Figure figure) {
        Random random = new Random(1);
        for (int i = 0; i < DRAWS; i++) {
            List<Spot> spots = random(random, figure.spots());
            double turn = 2 * Math.PI * random.nextDouble();
            double sine = StrictMath.sin(turn);
            double cosine = StrictMath.cos(turn);
            Sighted moved = figure.of(each(
                    spots,
                    it -> new Spot(
                            cosine * it.xPx() - sine * it.yPx() + 77,
                            sine * it.xPx() + cosine * it.yPx() - 31,
                            it.stepPx())));
            Sighted still = figure.of(spots);
            assertThat(moved.value()).isCloseTo(still.value(), within(1e-8));
            assertThat(moved.standardUncertainty())
                    .isCloseTo(still.standardUncertainty(), within(1e-8));
        }
    }

    @ParameterizedTest
    @EnumSource(Figure.class)
    void isTheSameReadBackwards(Figure figure) {
        Random random = new Random(2);
        for (int i = 0; i < DRAWS; i++) {
            List<Spot> spots = random(random, figure.spots());
            List<Spot> back = new ArrayList<>(spots);
            if (figure == Figure.HEIGHT) {
                Collections.swap(back, 0, 1);
            } else {
                Collections.reverse(back);
            }
            assertThat(figure.of(back).value()).isCloseTo(figure.of(spots).value(), within(1e-8));
            assertThat(figure.of(back).standardUncertainty())
                    .isCloseTo(figure.of(spots).standardUncertainty(), within(1e-8));
        }
    }

    /** The package that carries budgets moves each coordinate and asks the figure again. */
    @ParameterizedTest
    @EnumSource(Figure.class)
    void propagatesAsABudgetDoes(Figure figure) {
        Random random = new Random(3);
        for (int i = 0; i < DRAWS; i++) {
            List<Spot> spots = random(random, figure.spots());
            List<Source> sources = new ArrayList<>();
            for (int s = 0; s < spots.size(); s++) {
                double u = spots.get(s).standardUncertaintyPx();
                sources.add(Source.own(s + " x", Shape.RECTANGULAR, u));
                sources.add(Source.own(s + " y", Shape.RECTANGULAR, u));
            }
            Budget budget = Propagation.linear(
                            errors -> {
                                List<Spot> moved = new ArrayList<>();
                                for (int s = 0; s < spots.size(); s++) {
                                    moved.add(new Spot(
                                            spots.get(s).xPx() + errors.of(sources.get(2 * s)),
                                            spots.get(s).yPx() + errors.of(sources.get(2 * s + 1)),
                                            1));
                                }
                                return new double[] {figure.of(moved).value()};
                            },
                            sources)
                    .get(0);
            assertThat(figure.of(spots).standardUncertainty())
                    .isCloseTo(budget.u(), within(1e-3 * budget.u()));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 40})
    void onesOwnLengthMeasuresItsDistance(double distance) {
        Random random = new Random(4);
        for (int i = 0; i < DRAWS; i++) {
            Repeated length = Repeated.of(List.of(Figure.LENGTH.of(random(random, 2))));
            Scale scale = Scale.of(length, distance, 0, View.SQUARE);
            assertThat(scale.of(length).value()).isCloseTo(distance, within(1e-12 * distance));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, 2, 5, 9})
    void aFilmAsFilmedKeepsItsTime(double film) {
        FilmClock.Time time = FilmClock.asFilmed(0.04).at(film);
        assertThat(time.seconds()).isEqualTo(film);
        assertThat(time.standardUncertainty()).isCloseTo(0.04 / Math.sqrt(12), within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 90, 180, 270, 12, 197})
    void aDropIsDownwardsWhicheverWayTheLineWasDrawn(double deg) {
        double x = StrictMath.cos(StrictMath.toRadians(deg));
        double y = StrictMath.sin(StrictMath.toRadians(deg));
        Spot one = new Spot(10, 10, 1);
        Spot other = new Spot(10 + 50 * x, 10 + 50 * y, 1);
        Drop drop = Drop.across(one, other);
        Drop back = Drop.across(other, one);
        assertThat(drop.normalX()).isCloseTo(back.normalX(), within(1e-12));
        assertThat(drop.normalY()).isCloseTo(back.normalY(), within(1e-12));
        assertThat(drop.of(one, other).value()).isCloseTo(0, within(1e-12));
        Spot moved = new Spot(10 + 7 * drop.normalX(), 10 + 7 * drop.normalY(), 1);
        assertThat(drop.of(one, moved).value()).isCloseTo(7, within(1e-12));
        boolean upright = Math.abs(x) < 1e-9;
        assertThat(upright ? Math.abs(drop.normalX()) : drop.normalY()).isPositive();
    }
}
