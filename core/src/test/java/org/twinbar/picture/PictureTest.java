package org.twinbar.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class PictureTest {

    private static final Repeated HUNDRED_PX = Repeated.of(List.of(new Sighted(100, 0.4)));

    private static Spot at(double x, double y) {
        return new Spot(x, y, 1);
    }

    @Test
    void knowsTheRightAngleOfTheTriangleOfThreeFourFive() {
        assertThat(Figure.ANGLE.of(List.of(at(3, 0), at(0, 0), at(0, 4))).value())
                .isEqualTo(90);
        assertThat(Figure.LENGTH.of(List.of(at(3, 0), at(0, 4))).value()).isEqualTo(5);
        assertThat(Figure.HEIGHT.of(List.of(at(3, 0), at(0, 4), at(0, 0))).value())
                .isCloseTo(2.4, within(1e-12));
    }

    @Test
    void looksThatAllFellOnOnePixelStillHaveItsStep() {
        Repeated equal = Repeated.of(
                List.of(new Sighted(100, 0.4), new Sighted(100, 0.4), new Sighted(100, 0.4)));
        assertThat(equal.sd()).isZero();
        assertThat(equal.standardUncertainty()).isEqualTo(0.4);
        assertThat(equal.degreesOfFreedom()).isInfinite();
    }

    @Test
    void aScaleHalfAsLongIsHalfAsWellKnown() {
        Scale whole = Scale.of(HUNDRED_PX, 50, 0, View.SQUARE);
        Scale half = Scale.of(Repeated.of(List.of(new Sighted(50, 0.4))), 25, 0, View.SQUARE);
        assertThat(half.standardShare()).isCloseTo(2 * whole.standardShare(), within(1e-15));
        assertThat(half.perPx()).isEqualTo(whole.perPx());
    }

    @Test
    void anAngleHasNothingOfTheScale() {
        Scale.Measured angle = Scale.Measured.withoutScale(HUNDRED_PX);
        assertThat(angle.sharedShare()).isZero();
        assertThat(angle.standardUncertainty()).isEqualTo(0.4);
    }

    @Test
    void aScaleThatWasSeenOftenHasTheFreedomOfItsScatter() {
        Repeated scattered = Repeated.of(List.of(new Sighted(99, 0.1), new Sighted(101, 0.1)));
        assertThat(Scale.of(scattered, 50, 0, View.SQUARE).degreesOfFreedom())
                .isCloseTo(1, within(1e-12));
        assertThat(Scale.of(scattered, 50, 1, View.SQUARE).degreesOfFreedom()).isGreaterThan(1);
    }

    @Test
    void slowMotionAndTimeLapseHaveTheirRates() {
        FilmClock lapse =
                new FilmClock(0.04, new FilmClock.Seen(0, 0, 1), new FilmClock.Seen(10, 6000, 1));
        assertThat(lapse.rate()).isEqualTo(600);
        assertThat(lapse.at(5).standardUncertainty()).isGreaterThan(600 * 0.04 / Math.sqrt(12));
        FilmClock slow =
                new FilmClock(0.04, new FilmClock.Seen(0, 0, 0.01), new FilmClock.Seen(8, 1, 0.01));
        assertThat(slow.at(4).seconds()).isEqualTo(0.5);
        assertThat(slow.at(16).standardUncertainty())
                .as("beyond the two frames it grows")
                .isGreaterThan(slow.at(8).standardUncertainty());
    }

    @Test
    void nothingIsReadBeyondTheFirstAndTheLastReading() {
        List<Between.Noted> noted = List.of(new Between.Noted(10, 50), new Between.Noted(20, 60));
        assertThat(Between.at(new FilmClock.Time(9.9, 0), noted, 0.1)).isEmpty();
        assertThat(Between.at(new FilmClock.Time(20.1, 0), noted, 0.1)).isEmpty();
        assertThat(Between.at(new FilmClock.Time(20, 0), noted, 0.1)
                        .orElseThrow()
                        .value())
                .isEqualTo(60);
        assertThat(Between.at(new FilmClock.Time(10, 0), noted.subList(0, 1), 0.1)
                        .orElseThrow()
                        .standardUncertainty())
                .isCloseTo(0.1 / Math.sqrt(12), within(1e-15));
        assertThat(Between.at(new FilmClock.Time(10, 0), List.of(), 0.1)).isEmpty();
    }

    @Test
    void refusesWhatIsNoMeasurement() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Spot(Double.NaN, 0, 1))
                .withMessage("a place on a picture is NaN, 0.0 px, must be finite");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Spot(1, 0, 0))
                .withMessage("the step of a place is 0.0 px, must be above 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Figure.LENGTH.of(List.of(at(1, 1), at(1, 1))))
                .withMessage("two places lie on one another, must lie apart");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Figure.ANGLE.of(List.of(at(1, 1), at(2, 1))))
                .withMessage("2 places were set, must be 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Scale.of(HUNDRED_PX, 0, 0, View.SQUARE))
                .withMessage("the known distance is 0.0, must be above 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Scale.of(HUNDRED_PX, 1, Double.NaN, View.SQUARE))
                .withMessageContaining("must be 0 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new View(46, 0, 1))
                .withMessage("the tilt is 46.0 °, must be from 0 to 45.0 °");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new View(0, 5, 5))
                .withMessageContaining("must be less");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FilmClock(
                        0.04, new FilmClock.Seen(0, 100, 1), new FilmClock.Seen(5, 90, 1)))
                .withMessageContaining("must run the same way as the film");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Between.at(
                        new FilmClock.Time(10, 0),
                        List.of(new Between.Noted(10, 50), new Between.Noted(10, 51)),
                        0.1))
                .withMessageContaining("must be one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Repeated.of(List.of()))
                .withMessage("nothing was measured on the picture");
    }
}
