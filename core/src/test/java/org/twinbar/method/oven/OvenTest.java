package org.twinbar.method.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.method.heating.Heated;
import org.twinbar.quantity.Quantity;
import org.twinbar.uncertainty.Source;

class OvenTest {

    private static final Random NONE = new Random(0);

    private static Readings.Builder sagging() {
        return Ovens.sagging(Ovens.bar(), 57.3, 0.2, 0, NONE);
    }

    /** The same record, read in the air, with a time constant of 300 s. */
    private static Readings.Builder inAir(String group) {
        return Ovens.sagging(Ovens.bar(Exactly.bench(), group), 57.3, 0.2, 0, NONE)
                .word(OvenForm.THERMOMETER_IN, "air")
                .number(OvenForm.TIME_CONSTANT, 300);
    }

    /**
     * The same record, read in air that stands still, of a bar whose time constant nobody knows.
     */
    private static Readings.Builder inStillAir(String group) {
        return Ovens.sagging(Ovens.bar(Exactly.bench(), group), 57.3, 0.2, 0, NONE)
                .word(OvenForm.THERMOMETER_IN, "air")
                .word(OvenForm.AIR, OvenForm.STILL);
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = Ovens.result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    private static Map<String, Double> shifts(Result result) {
        Map<Source, Double> shifts = result.budgets().get(OvenForm.ONSET).shifts();
        return shifts.entrySet().stream()
                .collect(Collectors.toMap(entry -> entry.getKey().identity(), Map.Entry::getValue));
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("oven")).get().isInstanceOf(Oven.class);
    }

    @Test
    void findsTheOnsetThatTheRecordWasMadeWith() {
        Result result = Ovens.result(sagging());
        assertThat(Exactly.value(result, OvenForm.ONSET)).isCloseTo(57.3, within(1e-6));
        // 1.2 mm since the start: 0.004·27.3 before the bend, 0.204 a degree behind it.
        double beyond = (1.2 - 0.004 * 27.3) / 0.204;
        assertThat(Exactly.value(result, OvenForm.AT_DEFLECTION))
                .isCloseTo(57.3 + beyond, within(1e-9));
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void theStrainToReadAtMayBeSet() {
        Result result = Ovens.result(sagging().setting(OvenForm.STRAIN, 0.1));
        double beyond = (0.6 - 0.004 * 27.3) / 0.204;
        assertThat(Exactly.value(result, OvenForm.AT_DEFLECTION))
                .isCloseTo(57.3 + beyond, within(1e-9));
    }

    @Test
    void gaugeAndZeroOfTheGaugeDoNotMoveTheOnsetButTheThermometerDoes() {
        Bench bench = Exactly.bench()
                .withGain("deflection gauge", 0.05)
                .withZero("deflection gauge", Quantity.parse("1 mm"))
                .withZero("thermometer", Quantity.parse("0.7 K"));
        Result result = Ovens.result(
                Ovens.sagging(Ovens.bar(bench, "plain"), 57.3, 0.2, 1e-6, new Random(1)));
        assertThat(result.budgets().get(OvenForm.ONSET).u()).isCloseTo(0.7, within(1e-6));
    }

    @Test
    void theLagOfTheBarIsTakenOff() {
        double lag = 1.0 / 60 * 300 * (1 - StrictMath.exp(-27.3 * 60 / 300));
        assertThat(Exactly.value(Ovens.result(inAir("coated")), OvenForm.ONSET))
                .isCloseTo(57.3 - lag, within(1e-6));
        assertThat(Exactly.value(
                        Ovens.result(inAir("coated").word(OvenForm.THERMOMETER_IN, "bar")),
                        OvenForm.ONSET))
                .isCloseTo(57.3, within(1e-6));
        assertThat(Exactly.value(
                        Ovens.result(inAir("coated").number(OvenForm.RAMP, 0)), OvenForm.ONSET))
                .isCloseTo(57.3, within(1e-6));
    }

    @Test
    void whatIsWrongWithTheLagIsAnErrorOfTheGroup() {
        Map<String, Double> coated = shifts(Ovens.result(inAir("coated")));
        Map<String, Double> plain = shifts(Ovens.result(inAir("plain")));
        assertThat(Math.abs(coated.get("thermal lag of coated"))).isCloseTo(0.2 * 5, within(0.02));
        assertThat(coated).doesNotContainKey("thermal lag of plain");
        assertThat(plain).containsKey("thermal lag of plain");
        Source source =
                Ovens.result(inAir("coated"))
                        .budgets()
                        .get(OvenForm.ONSET)
                        .shifts()
                        .keySet()
                        .stream()
                        .filter(one -> one.identity().startsWith("thermal lag"))
                        .findFirst()
                        .orElseThrow();
        assertThat(source.reach()).isEqualTo(Source.Reach.SHARED);
    }

    /** 318.86 s all round a bar of 10 by 4 mm, and 22.9 s within its 4 mm. */
    @Test
    void aLagMayBeReckonedFromTheSize() {
        double seconds = 318.857 + 4e-6 * 1240 * 1800 / 0.13 / 3;
        double lag = seconds / 60 * (1 - StrictMath.exp(-27.3 * 60 / seconds));
        Result result = Ovens.result(inStillAir("coated"));
        assertThat(Exactly.value(result, OvenForm.ONSET)).isCloseTo(57.3 - lag, within(1e-3));
        assertThat(Math.abs(shifts(result).get("heat transfer in the oven")))
                .isCloseTo(0.4 * lag, within(0.01));
        assertThat(Math.abs(shifts(result).get("thermal lag of coated")))
                .isCloseTo(0.2 * lag, within(0.01));
        double fanned = Exactly.value(
                Ovens.result(inStillAir("coated").word(OvenForm.AIR, "fan")), OvenForm.ONSET);
        assertThat(fanned).isBetween(57.3 - lag / 2, 57.3 - lag / 3);
    }

    /** What two groups of one oven share of it cancels; what a coat changes does not. */
    @Test
    void aLagThatIsNotTakenOffIsAnErrorOfTheGroup() {
        Result result =
                Ovens.result(Ovens.sagging(Ovens.bar(Exactly.bench(), "coated"), 57.3, 0.2, 0, NONE)
                        .word(OvenForm.THERMOMETER_IN, "air"));
        double largest = (318.857 + 22.892) / 60;
        assertThat(Exactly.value(result, OvenForm.ONSET)).isCloseTo(57.3, within(1e-6));
        assertThat(Math.abs(shifts(result).get("thermal lag of coated")))
                .isCloseTo(0.2 * largest, within(0.001));
        assertThat(Math.abs(shifts(result).get("thermal lag that was not taken off")))
                .isCloseTo(largest / Math.sqrt(3), within(0.001));
    }

    @Test
    void whatIsNotKnownAtAllIsTakenForTheUsualLag() {
        Result result = Ovens.result(
                Ovens.sagging(Readings.of("V1", "plain", Exactly.bench()), 57.3, 0.2, 0, NONE));
        assertThat(Math.abs(shifts(result).get("thermal lag of plain"))).isCloseTo(2, within(1e-9));
    }

    /** One dummy stands for a whole group: its fit's uncertainty moves the group together. */
    @Test
    void theUncertaintyOfAStepTestIsTheGroups() {
        Result result =
                Ovens.result(Ovens.sagging(Ovens.bar(Exactly.bench(), "coated"), 57.3, 0.2, 0, NONE)
                        .word(OvenForm.THERMOMETER_IN, "air")
                        .numberWithUncertainty(OvenForm.TIME_CONSTANT, 300, 30)
                        .setting(OvenForm.LAG_UNCERTAINTY, 0));
        assertThat(Math.abs(shifts(result).get("thermal lag of coated")))
                .isCloseTo(0.5, within(0.01));
        assertThat(shifts(result).keySet()).noneMatch(name -> name.contains("time constant"));
    }

    @Test
    void twoReadingsOfTheThermometerAreAnInterval() {
        Readings.Builder eyes =
                Ovens.bar().number(OvenForm.ONSET_FROM, 55).number(OvenForm.ONSET_TO, 58);
        assertThat(Ovens.result(eyes).yields().get(OvenForm.ONSET))
                .isEqualTo(new Yield.Between(
                        55, 58, "it was straight at one look and sagged at the next"));
        Readings.Builder inAir = eyes.word(OvenForm.THERMOMETER_IN, "air")
                .number(OvenForm.TIME_CONSTANT, 240)
                .number(OvenForm.RAMP, 0.5);
        // 2 °C of lag, and twice its 20 % at either end.
        assertThat(Ovens.result(inAir).yields().get(OvenForm.ONSET))
                .isEqualTo(new Yield.Between(
                        55 - 2 - 0.8,
                        58 - 2 + 0.8,
                        "it was straight at one look and sagged at the next"));
        Readings.Builder unknown = Ovens.bar()
                .number(OvenForm.ONSET_FROM, 55)
                .number(OvenForm.ONSET_TO, 58)
                .word(OvenForm.THERMOMETER_IN, "air")
                .number(OvenForm.RAMP, 0.5);
        // The bar was at most as warm as the air, and colder by up to what is reckoned.
        Yield.Between wide = (Yield.Between) Ovens.result(unknown).yields().get(OvenForm.ONSET);
        assertThat(wide.from()).isCloseTo(55 - 0.5 / 60 * 341.75, within(1e-3));
        assertThat(wide.to()).isEqualTo(58);
        assertThat(Exactly.reason(Ovens.result(inAir), OvenForm.AT_DEFLECTION))
                .isEqualTo("no deflection was recorded");
    }

    @Test
    void aBarThatHeldIsABound() {
        assertThat(Ovens.result(Ovens.bar().number(OvenForm.HELD_UNTIL, 80))
                        .yields()
                        .get(OvenForm.ONSET))
                .isEqualTo(new Yield.AtLeast(80, "it was straight to the end"));
        assertThat(Ovens.result(Ovens.bar().number(OvenForm.ONSET_FROM, 70))
                        .yields()
                        .get(OvenForm.ONSET))
                .isEqualTo(new Yield.AtLeast(70, "it was straight to the end"));
        Result straight = Ovens.result(Ovens.sagging(Ovens.bar(), 90, 0.2, 0.01, new Random(3)));
        assertThat(straight.yields().get(OvenForm.ONSET))
                .isEqualTo(new Yield.AtLeast(
                        70,
                        "one straight line fits as well as two: it had not begun to sag when heating"
                                + " ended"));
        assertThat(straight.yields().get(OvenForm.AT_DEFLECTION))
                .isEqualTo(new Yield.AtLeast(70, "it had not sagged that far when heating ended"));
    }

    @Test
    void badRecordsGetOneClearSentence() {
        Readings.Builder swapped =
                Ovens.bar().number(OvenForm.ONSET_FROM, 60).number(OvenForm.ONSET_TO, 58);
        assertThat(Exactly.reason(Ovens.result(swapped), OvenForm.ONSET))
                .isEqualTo("it sagged at a lower temperature than it was last straight at: the two"
                        + " readings are swapped");
        Readings.Builder falling = Ovens.bar()
                .channel(Heated.TEMPERATURE, new double[] {80, 70, 60})
                .channel(Heated.DEFLECTION, new double[] {1, 2, 3});
        assertThat(Exactly.reason(Ovens.result(falling), OvenForm.ONSET))
                .startsWith("the temperature falls from 80.0 °C to 60.0 °C");
        Readings.Builder few = Ovens.bar()
                .channel(Heated.TEMPERATURE, new double[] {30, 40, 50})
                .channel(Heated.DEFLECTION, new double[] {0, 0, 1});
        assertThat(Exactly.reason(Ovens.result(few), OvenForm.ONSET))
                .isEqualTo("the record has fewer than 8 rows to lay two lines through");
        Readings.Builder flattens = Ovens.sagging(Ovens.bar(), 50, -0.003, 0, NONE);
        assertThat(Exactly.reason(Ovens.result(flattens), OvenForm.ONSET))
                .startsWith("the record flattens at its bend");
        assertThat(Exactly.reason(Ovens.result(Ovens.bar()), OvenForm.ONSET))
                .isEqualTo("nothing says when it sagged");
        assertThat(Exactly.reason(
                        Ovens.result(Ovens.sagging(
                                Readings.of("V1", "plain", Exactly.bench()), 57, 0.2, 0, NONE)),
                        OvenForm.AT_DEFLECTION))
                .isEqualTo("arm, width and thickness are not all known");
    }

    @Test
    void aBendThatCannotBeBoundedIsNotGiven() {
        Readings.Builder late = Ovens.sagging(Ovens.bar(), 68.95, 0.2, 0.02, new Random(9));
        assertThat(Exactly.reason(Ovens.result(late), OvenForm.ONSET))
                .startsWith("the bend lies too near to an end of the record");
    }

    @Test
    void massAndLengthOfTheBarGiveItsWeightToo() {
        double byDensity = Exactly.value(
                Ovens.result(Ovens.bar().number(OvenForm.DENSITY, 1.25)), OvenForm.STRESS);
        double byMass = Exactly.value(
                Ovens.result(Ovens.bar()
                        .number(OvenForm.BAR_MASS, 1.25e-3 * 40 * 80)
                        .number(OvenForm.BAR_LENGTH, 80)),
                OvenForm.STRESS);
        assertThat(byMass).isCloseTo(byDensity, within(1e-12));
    }

    @Test
    void findings() {
        Readings.Builder uncorrected = Ovens.sagging(
                        Readings.of("V1", "plain", Exactly.bench()), 57.3, 0.2, 0, NONE)
                .number(OvenForm.ARM, 36)
                .number(OvenForm.WIDTH, 10)
                .number(OvenForm.THICKNESS, 4);
        assertThat(text(uncorrected, "air-temperature-uncorrected"))
                .contains("by up to 5.7 °C as reckoned from its size in still air;");
        assertThat(text(uncorrected, "oven-load-not-stated")).startsWith("Which oven load");
        assertThat(text(uncorrected, "short-arm")).startsWith("The arm is 9.0 thicknesses");
        assertThat(text(inAir("coated"), "thermal-lag"))
                .isEqualTo("The bar trailed the air by 5.0 °C, ramp times time constant, which was"
                        + " taken off; 20 % of it is an error that the whole group coated has.");
        assertThat(text(inStillAir("coated"), "thermal-lag-reckoned"))
                .isEqualTo("The bar trailed the air by 5.7 °C as reckoned from its size, which was"
                        + " taken off and is known to 45 %; part of that the whole group coated has"
                        + " alone. A step test of a dummy of each group would tell.");
        assertThat(text(inAir("coated").number(OvenForm.RAMP, 3), "thermal-lag-large"))
                .startsWith("The bar trailed the air by 14 °C; heat more slowly");
        Readings.Builder eyes = Readings.of("V1", "plain", Exactly.bench())
                .number(OvenForm.ONSET_FROM, 55)
                .number(OvenForm.ONSET_TO, 58);
        assertThat(text(eyes, "air-temperature-uncorrected"))
                .contains("by 4 to 15 °C at 2 °C per minute for 4 mm");
    }

    @Test
    void aCurvedBranchAndALongDeflectionAreSaid() {
        double[] temperature = new double[81];
        double[] deflection = new double[81];
        for (int row = 0; row < 81; row++) {
            temperature[row] = 30 + 0.5 * row;
            double beyond = Math.max(0, temperature[row] - 50);
            deflection[row] = 0.03 * beyond * beyond;
        }
        Readings.Builder curved = Ovens.bar()
                .channel(Heated.TEMPERATURE, temperature)
                .channel(Heated.DEFLECTION, deflection);
        assertThat(text(curved, "two-lines-do-not-fit")).startsWith("Behind the bend");
        // A tenth of the arm, 6 mm, is passed at 50 + √200 °C.
        assertThat(text(curved, "lines-end-early")).startsWith("The two lines end at 64.0 °C");
    }

    @Test
    void aClockThatRunsBackwardsIsSaid() {
        double[] time = new double[81];
        for (int row = 0; row < 81; row++) {
            time[row] = 30 * row - (row > 40 ? 600 : 0);
        }
        assertThat(text(sagging().channel(Heated.TIME, time), "time-falls"))
                .startsWith("Time runs backwards once in the record");
    }
}
