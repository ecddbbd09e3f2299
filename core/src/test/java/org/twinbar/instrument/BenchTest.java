package org.twinbar.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

class BenchTest {

    private static final Unit MM = Unit.of("mm");

    @Test
    void anUnknownInstrumentIsTheUsualOneAndSaysSo() {
        Instrument caliper = Bench.usual().of("width", Kind.CALIPER, MM);
        assertThat(caliper.resolution()).isEqualTo(0.01);
        assertThat(caliper.origin()).isEqualTo(Instrument.Origin.ASSUMED);
    }

    @Test
    void whatIsGivenForAKindHoldsForItsReadings() {
        Bench bench = Bench.usual().withResolution("caliper", Quantity.parse("20 um"));
        Instrument caliper = bench.of("width", Kind.CALIPER, MM);
        assertThat(caliper.resolution()).isCloseTo(0.02, within(1e-15));
        assertThat(caliper.origin()).isEqualTo(Instrument.Origin.GIVEN);
        assertThat(caliper.zero())
                .isEqualTo(bench.of("thickness", Kind.CALIPER, MM).zero());
    }

    @Test
    void whatIsGivenForOneReadingIsItsOwnInstrument() {
        Bench bench = Bench.usual().withZero("peak_force", Quantity.parse("1 N"));
        Instrument own = bench.of("peak_force", Kind.LOAD_CELL, Unit.of("N"));
        assertThat(own.name()).isEqualTo("peak force");
        assertThat(own.zero().identity()).isEqualTo("peak force zero");
        assertThat(bench.of("force", Kind.LOAD_CELL, Unit.of("N")).name()).isEqualTo("load cell");
    }

    @Test
    void namesAreReadHoweverTheyAreWritten() {
        Bench bench = Bench.usual().withGain("Load Cell", 0.02);
        assertThat(bench.of("force", Kind.LOAD_CELL, Unit.of("N")).gainUncertainty())
                .isEqualTo(0.02);
    }

    @Test
    void aStepOfAnotherDimensionIsRefused() {
        Bench bench = Bench.usual().withResolution("caliper", Quantity.parse("1 N"));
        assertThatThrownBy(() -> bench.of("width", Kind.CALIPER, MM))
                .isInstanceOf(QuantityException.class);
    }

    @Test
    void aStepIsARectangleOfOneTwelfth() {
        assertThat(Kind.RULER.usual(MM).resolutionUncertainty())
                .isCloseTo(0.288675134594813, within(1e-15));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyUsualInstrumentIsKnownInItsOwnUnit(Kind kind) {
        Unit unit = kind == Kind.NONE ? MM : Unit.of(kind.unit());
        Instrument usual = kind.usual(unit);
        assertThat(usual.resolution()).isGreaterThanOrEqualTo(0);
        assertThat(usual.unit()).isEqualTo(unit);
    }
}
