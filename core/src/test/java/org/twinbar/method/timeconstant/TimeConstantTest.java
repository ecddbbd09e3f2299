package org.twinbar.method.timeconstant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

class TimeConstantTest {

    private static String text(Readings.Builder readings, String code) {
        Result result = Dummies.result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    private static String reason(Readings.Builder readings) {
        return Exactly.reason(Dummies.result(readings), TimeConstantForm.SECONDS);
    }

    private static Readings.Builder recorded(double... degrees) {
        double[] time = new double[degrees.length];
        Arrays.setAll(time, i -> 30.0 * i);
        return Dummies.of(Exactly.bench(), time, degrees);
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("time-constant")).get().isInstanceOf(TimeConstant.class);
        assertThat(TimeConstantForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .containsExactly("time_constant_s", "held_temperature_C");
    }

    @Test
    void aSoundStepHasNothingToSay() {
        assertThat(Dummies.result(Dummies.noisy(300, 1500, 0.1, new Random(1))
                                .number(TimeConstantForm.OVEN, 61))
                        .findings())
                .isEmpty();
    }

    @Test
    void readingsBeforeTheDoorShutAreLeftOut() {
        Readings.Builder late = Dummies.dummy(
                Exactly.bench(),
                1800,
                10,
                t -> t < 200 ? 20 : 60 - 40 * StrictMath.exp(-(t - 200) / 300));
        assertThat(Dummies.seconds(late)).isCloseTo(300, within(1e-6));
    }

    @Test
    void theDoorThatOpensAtTheEndIsLeftOut() {
        Readings.Builder opened = Dummies.dummy(
                Exactly.bench(), 1500, 10, t -> t > 1400 ? 55 : 60 - 40 * StrictMath.exp(-t / 300));
        assertThat(Dummies.seconds(opened)).isCloseTo(300, within(1e-6));
        assertThat(text(opened, "temperature-fell"))
                .startsWith("At its end the temperature fell by 4.6 °C, as when the door opens");
    }

    @Test
    void aPersonMayMoveTheMarks() {
        Readings.Builder twoOvens = Dummies.dummy(
                Exactly.bench(),
                1500,
                10,
                t -> t > 1200 ? 60 + (t - 1200) / 100 : 60 - 40 * StrictMath.exp(-t / 300));
        assertThat(Dummies.seconds(twoOvens)).isGreaterThan(310);
        assertThat(Dummies.seconds(twoOvens.mark(TimeConstantForm.TO, 120)))
                .isCloseTo(300, within(1e-6));
    }

    @Test
    void aRecordMayBeTooShort() {
        assertThat(text(Dummies.warming(300, 600), "step-too-short"))
                .startsWith("The record ends when 86 % of the warming is done")
                .contains("three time constants, 900 s");
        assertThat(reason(Dummies.warming(300, 200)))
                .startsWith("the record ends when 49 % of the warming is done, and before 63 %");
        assertThat(reason(recorded(20, 30, 40, 45)))
                .isEqualTo("an exponential needs 8 rows or more behind the start of the rise");
    }

    /** The oven itself was still warming: two exponentials, one after the other. */
    @Test
    void anOvenThatWasNotHotGivesNoExponential() {
        Readings.Builder slow = Dummies.dummy(
                Exactly.bench(),
                3000,
                10,
                t -> 60 - 80 * StrictMath.exp(-t / 600) + 40 * StrictMath.exp(-t / 300));
        assertThat(text(slow, "not-exponential")).contains("many in a row on one side");
    }

    @Test
    void anOvenThatWasRampedGivesNoTimeConstant() {
        Readings.Builder ramped = Dummies.dummy(Exactly.bench(), 1500, 10, t -> 20 + t / 30);
        assertThat(reason(ramped))
                .matches("no exponential settles on these readings|the record ends when .* is a"
                        + " guess: leave the dummy in for longer");
    }

    @Test
    void anOvenThatReadsOtherwiseIsSaid() {
        assertThat(text(
                        Dummies.warming(300, 1500).number(TimeConstantForm.OVEN, 70),
                        "oven-not-held"))
                .startsWith("The dummy goes to 60.0 °C, but the oven was held at 70.0 °C");
    }

    @Test
    void badRecordsGetOneSentence() {
        assertThat(reason(Readings.of("D1", "plain", Exactly.bench())))
                .isEqualTo("time and temperature were not both recorded");
        assertThat(reason(recorded(60, 55, 50, 45, 40, 35, 30, 28, 26)))
                .isEqualTo("the temperature falls from 60.0 °C to 26.0 °C, where a dummy that is"
                        + " put into a hot oven has to warm");
        assertThat(reason(recorded(20, 20.5, 21, 21, 21, 21, 21, 21, 21, 21)))
                .isEqualTo("the temperature rises by 1.0 °C, and less than 3 °C is no step");
        assertThat(reason(recorded(Double.NaN, Double.NaN))).isEqualTo("no row holds a number");
        double[] stands = new double[20];
        double[] degrees = new double[20];
        Arrays.setAll(degrees, i -> 20 + i);
        assertThat(reason(Dummies.of(Exactly.bench(), stands, degrees)))
                .isEqualTo("its clock stands still or runs backwards");
    }
}
