package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Calibration.Point;
import org.twinbar.instrument.Correction;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.instrument.Reference;
import org.twinbar.quantity.Unit;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/** Readings on instruments that were calibrated. */
class CalibratedReadingsTest {

    private static final Input FORCE = Input.of("peak_force", "Largest force", "N", Kind.LOAD_CELL);
    private static final Channel TRACE = Channel.of("force", "Force", "N", Kind.LOAD_CELL);
    private static final Property STRENGTH =
            Property.of("strength", "Strength", "N", Property.Scale.RATIO);

    /** Gives back what it reads. */
    private static final TestMethod METHOD = new TestMethod() {
        @Override
        public Description description() {
            return new Description(
                    "echo",
                    1,
                    "Echo",
                    "none",
                    List.of(Ask.optional("How much?", List.of(FORCE), List.of(TRACE))),
                    List.of(),
                    List.of(),
                    List.of(STRENGTH),
                    List.of());
        }

        @Override
        public Outcome calculate(Readings readings) {
            double value = readings.has(FORCE)
                    ? readings.number(FORCE)
                    : readings.trace(TRACE).last() + readings.resolutionAt(TRACE, "peak");
            return Outcome.of(description()).value(STRENGTH, value).build();
        }
    };

    private static Bench bench() {
        Calibration calibration = Calibration.of(
                List.of(
                        new Point(0, 0.8),
                        new Point(50, 52.1),
                        new Point(100, 102.7),
                        new Point(150, 154.2),
                        new Point(200, 205.1)),
                0.1,
                Reference.exact("weights"));
        Correction correction = calibration.correction("Cell A", "today");
        Instrument cell = new Instrument(
                "Cell A",
                Unit.of("N"),
                0.1,
                0,
                0,
                3,
                Instrument.Origin.CALIBRATED,
                Optional.of(correction));
        return Bench.usual().withInstrument("load cell", cell);
    }

    private static Correction correction() {
        return bench().of("peak_force", Kind.LOAD_CELL, Unit.of("N"))
                .correction()
                .orElseThrow();
    }

    @Test
    void aReadingIsCorrectedAndCarriesTheLinesErrors() {
        Readings readings =
                Readings.of("A1", "plain", bench()).number(FORCE, 120).build();
        Budget budget = Result.of(METHOD, readings).budgets().get(STRENGTH);
        double value = correction().of(120);
        assertThat(budget.value()).isCloseTo(value, within(1e-12));
        assertThat(budget.u()).isCloseTo(correction().uncertaintyAt(value), within(1e-9));
        assertThat(budget.u(Source.Reach.SHARED))
                .isCloseTo(correction().sharedUncertaintyAt(value), within(1e-9));
        assertThat(budget.degreesOfFreedom()).isBetween(3.0, 10.0);
    }

    @Test
    void aCurveIsCorrectedAsAReadingIs() {
        Readings curve = Readings.of("A1", "plain", bench())
                .channel(TRACE, new double[] {2, 60, 120})
                .build();
        Budget budget = Result.of(METHOD, curve).budgets().get(STRENGTH);
        double value = correction().of(120);
        assertThat(budget.value()).isCloseTo(value, within(1e-12));
        assertThat(budget.u()).isCloseTo(correction().uncertaintyAt(value), within(1e-9));
    }

    /** Readings on one cell move together: half of one is half of its line's error, no more. */
    @Test
    void sharedErrorsOfTheLineCancelInADifferenceAtOnePlace() {
        Budget one = of(120);
        Budget other = of(120);
        one.shifts().forEach((source, shift) -> {
            if (source.reach() == Source.Reach.SHARED) {
                assertThat(shift - other.shifts().get(source)).isZero();
            }
        });
    }

    private static Budget of(double reading) {
        Readings readings =
                Readings.of("A1", "plain", bench()).number(FORCE, reading).build();
        return Result.of(METHOD, readings).budgets().get(STRENGTH);
    }

    @Test
    void aReadingBeyondTheCalibrationIsTold() {
        Readings far = Readings.of("A1", "plain", bench()).number(FORCE, 520).build();
        assertThat(Result.of(METHOD, far).findings())
                .extracting(Finding::code)
                .containsExactly("beyond-calibration");
        assertThat(Result.of(METHOD, far).findings().get(0).text())
                .contains("Largest force goes to 508 N", "Cell A", "from 0 to 200 N");
        Readings near = Readings.of("A1", "plain", bench()).number(FORCE, 220).build();
        assertThat(Result.of(METHOD, near).findings()).isEmpty();
    }
}
