package org.twinbar.method.creep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.quantity.Quantity;

class CreepTest {

    /** The reading times of ISO 899-1, from memory, in h. */
    static final double[] HOURS = {1 / 60.0, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 50};

    static final double EXPONENT = 0.3;
    static final double AT_100 = 0.6 + 0.1 * StrictMath.pow(100, 0.3);

    static double[] law(double noise, Random random) {
        return Arrays.stream(HOURS)
                .map(t -> 0.6 + 0.1 * StrictMath.pow(t, 0.3) + noise * random.nextGaussian())
                .toArray();
    }

    private static Readings.Builder crept() {
        return Crept.bar(HOURS, law(0, new Random(0)));
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = Crept.result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("creep")).get().isInstanceOf(Creep.class);
    }

    @Test
    void findsTheLawThatTheReadingsWereMadeWith() {
        Result result = Crept.result(crept());
        assertThat(Exactly.value(result, CreepForm.EXPONENT)).isCloseTo(0.3, within(1e-6));
        assertThat(Exactly.value(result, CreepForm.FORECAST_STRAIN))
                .isCloseTo(AT_100, within(1e-6));
        assertThat(Exactly.value(result, CreepForm.MODULUS_EARLY))
                .isCloseTo(100 * 5 / 0.7, within(1e-9));
        double before = StrictMath.log(24 / 20.0) / StrictMath.log(1.5);
        double at20 = 0.6 + 0.1 * StrictMath.pow(20, 0.3);
        double at30 = 0.6 + 0.1 * StrictMath.pow(30, 0.3);
        assertThat(Exactly.value(result, CreepForm.MODULUS_LATE))
                .isCloseTo(500 / (at20 + before * (at30 - at20)), within(1e-9));
    }

    @Test
    void aStretchOverALengthIsAStrain() {
        double[] mm =
                Arrays.stream(law(0, new Random(0))).map(s -> s / 100 * 50).toArray();
        Readings.Builder byLength = Readings.of("K1", "plain", Exactly.bench())
                .number(CreepForm.FORCE, 200)
                .number(CreepForm.WIDTH, 10)
                .number(CreepForm.THICKNESS, 4)
                .number(CreepForm.GAUGE_LENGTH, 50)
                .channel(CreepForm.TIME, HOURS)
                .channel(CreepForm.EXTENSION, mm);
        assertThat(Exactly.value(Crept.result(byLength), CreepForm.FORECAST_STRAIN))
                .isCloseTo(AT_100, within(1e-6));
        assertThat(Exactly.value(Crept.result(byLength), CreepForm.MODULUS_EARLY))
                .isCloseTo(100 * 5 / 0.7, within(1e-9));
    }

    @Test
    void aGaugesGainMovesStrainsAndNotTheExponent() {
        Bench bench = Exactly.bench().withGain("strain extensometer", 0.02);
        Result result = Crept.result(Crept.bar(bench, HOURS, law(1e-9, new Random(2))));
        assertThat(result.budgets().get(CreepForm.FORECAST_STRAIN).u())
                .isCloseTo(0.02 * AT_100, within(1e-6));
        assertThat(result.budgets().get(CreepForm.EXPONENT).u()).isLessThan(1e-6);
    }

    @Test
    void aGaugesZeroMovesTheStartAlone() {
        Bench bench = Exactly.bench().withZero("strain extensometer", Quantity.parse("0.01 %"));
        Result result = Crept.result(Crept.bar(bench, HOURS, law(1e-9, new Random(2))));
        assertThat(result.budgets().get(CreepForm.START).u()).isCloseTo(0.01, within(1e-6));
        assertThat(result.budgets().get(CreepForm.GROWTH).u()).isLessThan(1e-6);
    }

    @Test
    void nothingIsForecastBeyondADecade() {
        assertThat(Exactly.reason(
                        Crept.result(crept().setting(CreepForm.FORECAST, 501)),
                        CreepForm.FORECAST_STRAIN))
                .isEqualTo("that time is more than ten times the last reading's, too far to"
                        + " forecast");
    }

    @Test
    void saysWhyThereIsNoValue() {
        Result shortRun = Crept.result(Crept.bar(new double[] {2, 5}, new double[] {0.5, 0.6}));
        assertThat(Exactly.reason(shortRun, CreepForm.MODULUS_EARLY))
                .isEqualTo("the readings begin after that time");
        assertThat(Exactly.reason(shortRun, CreepForm.MODULUS_LATE))
                .isEqualTo("the readings end before that time");
        assertThat(Exactly.reason(shortRun, CreepForm.EXPONENT))
                .isEqualTo("Findley's law needs 6 readings or more");
        double[] shrinks = Arrays.stream(law(0, new Random(0))).map(s -> -s).toArray();
        Result turned = Crept.result(Crept.bar(HOURS, shrinks));
        assertThat(Exactly.reason(turned, CreepForm.MODULUS_EARLY))
                .startsWith("it was not stretched at that time: the sign of the gauge");
        assertThat(Exactly.reason(turned, CreepForm.EXPONENT))
                .isEqualTo("the strain does not grow as Findley's law has it");
        Readings.Builder noStress = Readings.of("K1", "plain", Exactly.bench())
                .channel(CreepForm.TIME, HOURS)
                .channel(CreepForm.STRAIN, law(0, new Random(0)));
        assertThat(Exactly.reason(Crept.result(noStress), CreepForm.MODULUS_EARLY))
                .isEqualTo("the stress is not known");
    }

    @Test
    void findings() {
        assertThat(text(crept(), "forecast-beyond-readings")).contains("for 2.0 times");
        Readings.Builder warm = crept().channel(
                        CreepForm.TEMPERATURE,
                        new double[] {20, 21, 22, 23, 24, 25, 26, 25, 24, 23, 22, 21});
        assertThat(text(warm, "temperature-moved")).contains("ranged over 6.0 °C");
        Readings.Builder odd = Readings.of("K1", "plain", Exactly.bench())
                .channel(CreepForm.TIME, new double[] {0, 1, 3, 2, 4})
                .channel(CreepForm.STRAIN, new double[] {0.1, 0.2, 0.3, 0.4, Double.NaN});
        assertThat(text(odd, "rows-passed-over")).startsWith("3 rows were passed over");
        assertThat(text(odd, "temperature-not-recorded")).contains("per cent for each degree");
        double[] hours = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
        double[] quickens = {1, 1.1, 1.15, 1.2, 1.25, 1.3, 1.35, 1.5, 1.8, 2.4};
        assertThat(text(Crept.bar(hours, quickens), "creep-quickens"))
                .contains("7.0 times as fast");
    }
}
