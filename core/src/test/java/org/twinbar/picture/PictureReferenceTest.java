package org.twinbar.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

/** Against R: closed forms, and uncertainties by Monte Carlo. */
class PictureReferenceTest {

    private static final Checks CHECKS = Checks.of(PictureReferenceTest.class);

    private static final Spot A = new Spot(120, 340, 2);
    private static final Spot B = new Spot(961, 402, 3);

    @Test
    void measuresALength() {
        Sighted length = Figure.LENGTH.of(List.of(A, B));
        CHECKS.row("length").expects(length.value());
        CHECKS.row("length-u").expects(length.standardUncertainty());
    }

    @Test
    void measuresAHeightOverALine() {
        CHECKS.row("height").expects(height().value());
        CHECKS.row("height-u").expects(height().standardUncertainty());
    }

    private static Sighted height() {
        return Figure.HEIGHT.of(
                List.of(new Spot(100, 300, 2), new Spot(500, 350, 1), new Spot(700, 900, 4)));
    }

    @Test
    void measuresAnAngle() {
        Sighted angle = Figure.ANGLE.of(
                List.of(new Spot(900, 420, 3), new Spot(400, 400, 5), new Spot(520, 100, 2)));
        CHECKS.row("angle").expects(angle.value());
        CHECKS.row("angle-u").expects(angle.standardUncertainty());
    }

    @Test
    void tellsTheOperatorsScatter() {
        Repeated repeated = Repeated.of(DoubleStream.of(411.2, 409.7, 412.9, 410.4, 411.8)
                .mapToObj(value -> new Sighted(value, 0.4))
                .toList());
        CHECKS.row("repeats-mean").expects(repeated.mean());
        CHECKS.row("repeats-sd").expects(repeated.sd());
        CHECKS.row("repeats-u").expects(repeated.standardUncertainty());
        assertThat(repeated.degreesOfFreedom()).isEqualTo(4);
    }

    @Test
    void setsAScaleAndMeasuresOnIt() {
        Scale scale = Scale.of(
                Repeated.of(List.of(Figure.LENGTH.of(List.of(A, B)))),
                50,
                0.1,
                new View(4, 3, 400));
        CHECKS.row("scale").expects(scale.perPx());
        CHECKS.row("scale-share").expects(scale.standardShare());
        CHECKS.row("on-scale-u")
                .expects(scale.of(Repeated.of(List.of(height()))).standardUncertainty());
        CHECKS.row("tilt").expects(View.foreshortening(5));
    }

    @Test
    void tellsClockTimeFromFilmTime() {
        FilmClock.Time time = new FilmClock(
                        1.0 / 25,
                        new FilmClock.Seen(2, 36_000, 1),
                        new FilmClock.Seen(62, 42_000, 1))
                .at(40);
        CHECKS.row("clock").expects(time.seconds());
        CHECKS.row("clock-u").expects(time.standardUncertainty());
    }

    @Test
    void readsBetweenTwoReadings() {
        Between between = Between.at(
                        new FilmClock.Time(118, 1),
                        List.of(new Between.Noted(160, 64), new Between.Noted(100, 61.5)),
                        0.5)
                .orElseThrow();
        CHECKS.row("between").expects(between.value());
        CHECKS.row("between-u").expects(between.standardUncertainty());
        assertThat(between.before()).isEqualTo(61.5);
        assertThat(between.after()).isEqualTo(64);
    }
}
