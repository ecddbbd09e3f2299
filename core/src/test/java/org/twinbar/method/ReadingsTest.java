package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.Unit;
import org.twinbar.uncertainty.Errors;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

class ReadingsTest {

    private static final Input WIDTH = Input.of("width", "Width", "mm", Kind.CALIPER);
    private static final Input ARM = Input.of("arm", "Arm", "mm", Kind.RULER);
    private static final Channel FORCE = Channel.of("force", "Force", "N", Kind.LOAD_CELL);
    private static final Words BREAK = new Words("break", "Break", List.of("C", "H"));
    private static final Mark PEAK = new Mark("peak", "Peak");
    private static final Setting LIMIT =
            new Setting("limit", "Limit", Unit.of("%"), 5, Limits.between(0, 10));

    private static Readings.Builder specimen() {
        return Readings.of("A1", "plain", Bench.usual());
    }

    private static Source source(Readings readings, String identity) {
        return readings.sources().stream()
                .filter(source -> source.identity().equals(identity))
                .findFirst()
                .orElseThrow(
                        () -> new AssertionError(identity + " is not in " + readings.sources()));
    }

    @Test
    void aNumberIsTheMeanOfItsReadings() {
        Readings readings = specimen().number(WIDTH, 10.0, 10.2, 10.1).build();
        assertThat(readings.number(WIDTH)).isCloseTo(10.1, within(1e-12));
        assertThat(readings.count(WIDTH)).isEqualTo(3);
        assertThat(readings.each(WIDTH)).containsExactly(10.0, 10.2, 10.1);
        assertThat(readings.count(ARM)).isZero();
    }

    @Test
    void oneReadingHasTheStepOfItsInstrument() {
        Readings readings = specimen().number(WIDTH, 10).build();
        readings.number(WIDTH);
        Source step = source(readings, "A1 width resolution");
        assertThat(step.shape()).isEqualTo(Shape.RECTANGULAR);
        assertThat(step.reach()).isEqualTo(Source.Reach.OWN);
        assertThat(step.standardUncertainty()).isCloseTo(0.01 / Math.sqrt(12), within(1e-15));
        assertThat(readings.readingUncertainty(WIDTH)).isEqualTo(step.standardUncertainty());
    }

    @Test
    void scatterThatShowsCountsInsteadOfTheStep() {
        Readings readings = specimen().number(WIDTH, 10.0, 10.2, 10.1).build();
        readings.number(WIDTH);
        Source scatter = source(readings, "A1 width scatter");
        assertThat(scatter.standardUncertainty()).isCloseTo(0.1 / Math.sqrt(3), within(1e-12));
        assertThat(scatter.degreesOfFreedom()).isEqualTo(2);
        assertThat(scatter.shape()).isEqualTo(Shape.STUDENT);
    }

    @Test
    void fiveEqualReadingsAreNotWithoutUncertainty() {
        Readings readings = specimen().number(WIDTH, 10, 10, 10, 10, 10).build();
        assertThat(readings.readingUncertainty(WIDTH))
                .isCloseTo(0.01 / Math.sqrt(12), within(1e-15));
    }

    /** METHODS J.1: below √3·u the variance of a mean is max(s²/n, u²). */
    @Test
    void littleScatterNeverGoesBelowTheStep() {
        double u = 0.01 / Math.sqrt(12);
        for (double s : new double[] {0.2 * u, 0.9 * u, 1.3 * u, 1.7 * u}) {
            double half = s / Math.sqrt(2);
            Readings readings = specimen().number(WIDTH, 10 - half, 10 + half).build();
            assertThat(readings.readingUncertainty(WIDTH))
                    .as("scatter of %s steps", s / u)
                    .isCloseTo(Math.max(s / Math.sqrt(2), u), within(1e-12));
        }
    }

    @Test
    void anUncertaintyThatWasGivenCounts() {
        Readings readings = specimen().numberWithUncertainty(WIDTH, 10, 0.05).build();
        assertThat(readings.readingUncertainty(WIDTH)).isEqualTo(0.05);
    }

    @Test
    void whatWasReadOnceForAllIsSharedByAll() {
        Readings one = specimen().numberForAll(ARM, 300).build();
        Readings other = Readings.of("B7", "coated", Bench.usual())
                .numberForAll(ARM, 300)
                .build();
        one.number(ARM);
        other.number(ARM);
        assertThat(one.sources()).isEqualTo(other.sources());
        assertThat(source(one, "arm resolution").reach()).isEqualTo(Source.Reach.SHARED);
        Readings given = specimen().numberForAllWithUncertainty(ARM, 300, 0.2).build();
        given.number(ARM);
        assertThat(source(given, "arm as given").reach()).isEqualTo(Source.Reach.SHARED);
    }

    @Test
    void gainAndZeroAreTheInstrumentsAndMoveTheReading() {
        Bench bench = Bench.usual().withGain("caliper", 0.001);
        Readings readings = Readings.of("A1", "plain", bench).number(WIDTH, 10).build();
        readings.number(WIDTH);
        Source gain = source(readings, "caliper gain");
        Source zero = source(readings, "caliper zero");
        assertThat(readings.in(Errors.of(gain, 0.001)).number(WIDTH))
                .isCloseTo(10.01, within(1e-12));
        assertThat(readings.in(Errors.of(zero, 0.01)).number(WIDTH))
                .isCloseTo(10.01, within(1e-12));
    }

    @Test
    void aTraceIsSeenThroughItsInstrumentWithoutACopy() {
        double[] rows = {0, 100, 200, 5};
        Readings readings = specimen().channel(FORCE, rows).build();
        Trace trace = readings.trace(FORCE);
        assertThat(trace.get(2)).isEqualTo(200);
        assertThat(trace.rowOfLargest()).isEqualTo(2);
        assertThat(trace.last()).isEqualTo(5);
        Readings moved = readings.in(Errors.of(source(readings, "load cell zero"), 3));
        assertThat(moved.trace(FORCE).get(2)).isEqualTo(203);
        rows[2] = 150;
        assertThat(trace.get(2)).isEqualTo(150);
    }

    @Test
    void aTraceWithoutNumbersHasNoLargest() {
        Readings readings = specimen()
                .channel(FORCE, new double[] {Double.NaN, 3, Double.NaN, 7, 5})
                .build();
        assertThat(readings.trace(FORCE).rowOfLargest()).isEqualTo(3);
    }

    @Test
    void aPlaceOnACurveHasItsOwnStep() {
        Readings readings = specimen().channel(FORCE, new double[] {1, 2}).build();
        assertThat(readings.resolutionAt(FORCE, "peak")).isZero();
        Source step = source(readings, "A1 force at peak resolution");
        assertThat(readings.in(Errors.of(step, 0.03)).resolutionAt(FORCE, "peak"))
                .isEqualTo(0.03);
        assertThat(readings.in(Errors.of(step, 0.03)).resolutionAt(FORCE, "yield"))
                .isZero();
    }

    @Test
    void aMarkIsSoughtOnceAndStandsStillWhileErrorsMove() {
        Readings readings = specimen().channel(FORCE, new double[] {1, 5, 2}).build();
        int[] searches = {0};
        for (Readings world : List.of(
                readings, readings.in(Errors.of(Source.own("x", Shape.NORMAL, 1), 1)), readings)) {
            OptionalInt row = world.mark(PEAK, () -> {
                searches[0]++;
                return OptionalInt.of(world.trace(FORCE).rowOfLargest());
            });
            assertThat(row).hasValue(1);
        }
        assertThat(searches[0]).isEqualTo(1);
        assertThat(readings.marks()).containsEntry(PEAK, OptionalInt.of(1));
    }

    @Test
    void aMarkThatAPersonMovedIsNotSought() {
        Readings readings =
                specimen().channel(FORCE, new double[] {1, 5, 2}).mark(PEAK, 2).build();
        OptionalInt row = readings.mark(PEAK, () -> {
            throw new AssertionError("sought");
        });
        assertThat(row).hasValue(2);
        assertThat(readings.marks()).containsEntry(PEAK, OptionalInt.of(2));
    }

    @Test
    void aMarkBeyondTheCurveIsRefused() {
        Readings.Builder builder =
                specimen().channel(FORCE, new double[] {1, 5, 2}).mark(PEAK, 3);
        assertThatThrownBy(builder::build)
                .hasMessage("peak of A1 was put on row 3, the curve has rows 0 to 2");
    }

    @Test
    void whatNoWorldChangesIsCalculatedOnce() {
        Readings readings = specimen().build();
        int[] runs = {0};
        for (int i = 0; i < 3; i++) {
            assertThat(readings.in(Errors.NONE).once("noise", Integer.class, () -> ++runs[0]))
                    .isEqualTo(1);
        }
    }

    @Test
    void whatABuilderMadeDoesNotChangeWithIt() {
        Readings.Builder builder = specimen().number(WIDTH, 10);
        Readings first = builder.build();
        first.once("noise", Integer.class, () -> 1);
        Readings second = builder.number(WIDTH, 20).build();
        assertThat(first.number(WIDTH)).isEqualTo(10);
        assertThat(second.number(WIDTH)).isEqualTo(20);
        assertThat(second.once("noise", Integer.class, () -> 2)).isEqualTo(2);
    }

    @Test
    void onlyTheWorldWithoutErrorsIsAtRest() {
        Readings readings = specimen().build();
        assertThat(readings.atRest()).isTrue();
        assertThat(readings.in(Errors.of(Source.own("x", Shape.NORMAL, 1), 1)).atRest())
                .isFalse();
    }

    @Test
    void instrumentsThatNobodyGaveAreNamed() {
        Bench bench = Bench.usual().withResolution("ruler", Quantity.parse("0.5 mm"));
        Readings readings = Readings.of("A1", "plain", bench)
                .number(WIDTH, 10)
                .number(ARM, 300)
                .build();
        readings.number(WIDTH);
        readings.number(ARM);
        assertThat(readings.assumed()).extracting(Instrument::name).containsExactly("caliper");
    }

    @Test
    void whatWasNotReadIsNotThere() {
        Readings readings = specimen().build();
        assertThat(readings.has(WIDTH)).isFalse();
        assertThatThrownBy(() -> readings.number(WIDTH)).hasMessage("width was not read");
        assertThatThrownBy(() -> readings.word(BREAK)).hasMessage("break was not noted");
        assertThatThrownBy(() -> readings.trace(FORCE)).hasMessage("force was not recorded");
        assertThat(readings.setting(LIMIT)).isEqualTo(5);
    }

    @Test
    void whatCannotBeIsRefusedInOneSentence() {
        assertThatThrownBy(() -> specimen().number(WIDTH, -1))
                .hasMessageContaining("width of A1 is -1.0 mm, must be above 0");
        assertThatThrownBy(() -> specimen().number(WIDTH, Double.NaN))
                .hasMessageContaining("width of A1 is NaN mm");
        assertThatThrownBy(() -> specimen().number(WIDTH)).hasMessage("width of A1 has no reading");
        assertThatThrownBy(() -> specimen().word(BREAK, "Z"))
                .hasMessage("break of A1 is 'Z', must be one of C, H");
        assertThatThrownBy(() -> specimen().setting(LIMIT, 11))
                .hasMessageContaining("limit is 11.0 %");
        Channel time = Channel.of("time", "Time", "s", Kind.NONE);
        assertThatThrownBy(
                        () -> specimen().channel(FORCE, new double[3]).channel(time, new double[2]))
                .hasMessage("time of A1 has 2 rows, another channel has 3");
    }
}
