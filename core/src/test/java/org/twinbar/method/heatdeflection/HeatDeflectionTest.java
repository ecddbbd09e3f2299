package org.twinbar.method.heatdeflection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.method.heating.Heated;
import org.twinbar.method.section.Side;
import org.twinbar.quantity.Quantity;

class HeatDeflectionTest {

    /** Where {@link HotBars#sagging} reaches the deflection of a bar 4 mm thick. */
    private static final double TRUTH = 55 + 64.0 * 64 * 0.2 / 2400 / 0.04;

    private static Readings.Builder heated() {
        return heated(Exactly.bench());
    }

    private static Readings.Builder heated(Bench bench) {
        return HotBars.heated(HotBars.bar(bench), 75, 0, HotBars::sagging);
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = HotBars.result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("heat-deflection"))
                .get()
                .isInstanceOf(HeatDeflection.class);
    }

    @Test
    void readsStraightBetweenTwoRows() {
        Result result = HotBars.result(heated());
        assertThat(Exactly.value(result, HeatForm.TEMPERATURE)).isCloseTo(TRUTH, within(1e-9));
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void aGaugeThatDoesNotBeginAtZeroChangesNothing() {
        Readings.Builder shifted =
                HotBars.heated(HotBars.bar(Exactly.bench()), 75, 3.27, HotBars::sagging);
        assertThat(Exactly.value(HotBars.result(shifted), HeatForm.TEMPERATURE))
                .isCloseTo(TRUTH, within(1e-9));
    }

    @Test
    void readsAtAQuarterMillimetreWhereAskedTo() {
        Result result = HotBars.result(heated().word(HeatForm.READ_AT, HeatForm.QUARTER_MM));
        assertThat(Exactly.value(result, HeatForm.TEMPERATURE))
                .isCloseTo(55 + 0.25 / 0.04, within(1e-9));
        assertThat(Exactly.value(result, HeatForm.DEFLECTION)).isEqualTo(0.25);
    }

    @Test
    void aThermometersZeroMovesTheTemperatureInFull() {
        Bench bench = Exactly.bench().withZero("thermometer", Quantity.parse("0.5 K"));
        Result result = HotBars.result(heated(bench));
        assertThat(result.budgets().get(HeatForm.TEMPERATURE).u()).isCloseTo(0.5, within(1e-9));
    }

    /** METHODS D.1: u(T) = u(Δs)/(ds/dT), here 1 % of 0.3413 mm on 0.04 mm/°C. */
    @Test
    void anErrorOfTheGaugeIsWorthDegreesByTheSlope() {
        Bench bench = Exactly.bench().withGain("deflection gauge", 0.01);
        Result result = HotBars.result(heated(bench));
        assertThat(result.budgets().get(HeatForm.TEMPERATURE).u())
                .isCloseTo(0.01 * 0.341333 / 0.04, within(1e-4));
    }

    @Test
    void aCoarseGaugeDoesNotMakeTheTemperatureExact() {
        Bench bench = Exactly.bench().withResolution("deflection gauge", Quantity.parse("0.05 mm"));
        Readings.Builder stepped = HotBars.heated(
                HotBars.bar(bench), 75, 0, t -> 0.05 * Math.rint(HotBars.sagging(t) / 0.05));
        Result result = HotBars.result(stepped);
        double u = result.budgets().get(HeatForm.TEMPERATURE).u();
        // Two readings of ±0.025 mm on 0.04 mm per degree.
        assertThat(u).isBetween(0.3, 0.8);
        assertThat(Math.abs(Exactly.value(result, HeatForm.TEMPERATURE) - TRUTH))
                .isLessThan(3 * u);
    }

    @Test
    void aBarThatStaysStraightIsABound() {
        Result result = HotBars.result(
                HotBars.heated(HotBars.bar(Exactly.bench()), 60, 0, t -> 0.001 * (t - 25)));
        assertThat(result.yields().get(HeatForm.TEMPERATURE))
                .isEqualTo(new Yield.AtLeast(
                        60, "it had not sagged by the standard deflection when heating ended"));
    }

    @Test
    void whatSagsOnlyAsItCoolsIsNotReadAtTheColderRow() {
        double[] temperature = {25, 40, 60, 50, 40};
        double[] deflection = {0, 0, 0.1, 0.3, 0.5};
        Result result = HotBars.result(HotBars.bar(Exactly.bench())
                .channel(Heated.TEMPERATURE, temperature)
                .channel(Heated.DEFLECTION, deflection));
        assertThat(result.yields().get(HeatForm.TEMPERATURE)).isInstanceOf(Yield.AtLeast.class);
    }

    @Test
    void badRecordsGetOneClearSentence() {
        Readings.Builder falling = HotBars.bar(Exactly.bench())
                .channel(Heated.TEMPERATURE, new double[] {80, 60, 40, 25})
                .channel(Heated.DEFLECTION, new double[] {0, 0.1, 0.2, 0.4});
        assertThat(Exactly.reason(HotBars.result(falling), HeatForm.TEMPERATURE))
                .isEqualTo("the temperature falls from 80.0 °C to 25.0 °C over the record, where a"
                        + " heating run has to rise");
        Readings.Builder turned =
                HotBars.heated(HotBars.bar(Exactly.bench()), 75, 0, t -> -HotBars.sagging(t));
        assertThat(Exactly.reason(HotBars.result(turned), HeatForm.TEMPERATURE))
                .isEqualTo("the deflection runs to -0.80 mm, against the load: the gauge's sign is"
                        + " turned round");
        Readings.Builder still = HotBars.bar(Exactly.bench())
                .channel(Heated.TEMPERATURE, new double[] {25, 25, 25})
                .channel(Heated.DEFLECTION, new double[] {0, 0, 0});
        assertThat(Exactly.reason(HotBars.result(still), HeatForm.TEMPERATURE))
                .isEqualTo("the temperature does not rise in the record");
        Readings.Builder holes = HotBars.bar(Exactly.bench())
                .channel(Heated.TEMPERATURE, new double[] {Double.NaN, 25})
                .channel(Heated.DEFLECTION, new double[] {0, Double.NaN});
        assertThat(Exactly.reason(HotBars.result(holes), HeatForm.TEMPERATURE))
                .isEqualTo("no row holds a temperature and a deflection");
    }

    @Test
    void aRodThatIsTooHeavyIsSaid() {
        Readings.Builder heavy = HotBars.bar(Exactly.bench()).number(HeatForm.ROD_MASS, 80);
        assertThat(Exactly.reason(HotBars.result(heavy), HeatForm.ADDED_MASS))
                .isEqualTo("rod and gauge press with more than the stress asks for:"
                        + " counterbalance them");
    }

    @Test
    void withoutAStressThereIsNoTemperature() {
        Readings.Builder bare = Readings.of("H1", "plain", Exactly.bench())
                .number(HeatForm.SPAN, 64)
                .number(HeatForm.WIDTH, 10)
                .number(HeatForm.THICKNESS, 4);
        assertThat(Exactly.reason(HotBars.result(bare), HeatForm.TEMPERATURE))
                .startsWith("the stress is not known");
    }

    @Test
    void findingsOfTheBar() {
        Readings.Builder odd = HotBars.bar(Exactly.bench())
                .number(HeatForm.STRESS, 1.0)
                .number(HeatForm.THICKNESS, 3.5)
                .number(Side.RIDGES, 0);
        assertThat(text(odd, "stress-not-standard")).startsWith("The stress is 1.00 MPa");
        assertThat(text(odd, "bar-not-standard"))
                .startsWith("The bar is 3.50 mm thick on a span of 64.0 mm");
        Readings.Builder onEdge = HotBars.bar(Exactly.bench())
                .number(HeatForm.SPAN, 100)
                .number(HeatForm.THICKNESS, 10);
        assertThat(text(onEdge, "old-table")).contains("taken here, 0.333 mm");
        assertThat(text(onEdge.word(HeatForm.READ_AT, HeatForm.QUARTER_MM), "read-at-quarter-mm"))
                .contains("0.15 % strain");
        Readings.Builder noGauge = Readings.of("H1", "plain", Exactly.bench())
                .number(HeatForm.SPAN, 64)
                .number(HeatForm.WIDTH, 10)
                .number(HeatForm.THICKNESS, 4)
                .number(HeatForm.STRESS, 0.45)
                .number(HeatForm.ROD_MASS, 30);
        assertThat(text(noGauge, "gauge-force-not-stated")).contains("taken as none");
    }

    @Test
    void findingsOfTheHeating() {
        Readings.Builder fast = HotBars.bar(Exactly.bench())
                .word(HeatForm.MEDIUM, "air")
                .channel(Heated.TIME, new double[] {0, 60, 120, 180})
                .channel(Heated.TEMPERATURE, new double[] {31, 36, 34, 46})
                .channel(Heated.DEFLECTION, new double[] {0, 0.1, 0.2, 0.5});
        assertThat(text(fast, "heating-rate")).startsWith("The temperature rose by 4.3 °C");
        assertThat(text(fast, "start-warm")).startsWith("Heating began at 31.0 °C");
        assertThat(text(fast, "temperature-fell"))
                .startsWith("The temperature fell by 2.0 °C within the run, from 36.0 °C");
        assertThat(text(fast, "coarse-rows")).contains("rose by 12 °C");
        assertThat(text(fast, "air-temperature")).contains("4 to 15 °C");
        Readings.Builder noClock = HotBars.bar(Exactly.bench())
                .channel(Heated.TEMPERATURE, new double[] {25, Double.NaN, 27, 28})
                .channel(Heated.DEFLECTION, new double[] {0, 0.1, 0.2, 0.5});
        assertThat(text(noClock, "heating-rate-unknown")).startsWith("No clock");
        assertThat(text(noClock, "rows-without-number")).startsWith("1 row of the record");
    }
}
