package org.twinbar.method.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

class PressureTest {

    private static final Random NONE = new Random(0);

    private static Readings.Builder falling(double rate) {
        return Vessels.falling(rate, 0, NONE);
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = Vessels.result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    /** Rows of a vessel without a leak whose air goes from 21 to a temperature. */
    private static Readings.Builder tight(double endC, boolean thermometer) {
        double[] time = new double[121];
        double[] pressure = new double[121];
        double[] temperature = new double[121];
        for (int row = 0; row < 121; row++) {
            time[row] = 5 * row;
            temperature[row] = 21 + (endC - 21) * row / 120;
            pressure[row] = 115 * (temperature[row] + 273.15) / 294.15 - 100;
        }
        Readings.Builder readings = Readings.of("T1", "plain", Exactly.bench())
                .number(PressureForm.VOLUME, 250)
                .number(PressureForm.AMBIENT, 100)
                .channel(PressureForm.TIME, time)
                .channel(PressureForm.PRESSURE, pressure);
        return thermometer ? readings.channel(PressureForm.TEMPERATURE, temperature) : readings;
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("pressure")).get().isInstanceOf(PressureDecay.class);
    }

    @Test
    void findsTheRateThatTheRecordWasMadeWith() {
        Result result = Vessels.result(falling(3e-4));
        double start = 15 * StrictMath.exp(-3e-4 * 60);
        assertThat(Exactly.value(result, PressureForm.PRESSURE_LOSS))
                .isCloseTo(3e-4 * 3600 * start, within(1e-9));
        assertThat(Exactly.value(result, PressureForm.LEAK_RATE))
                .isCloseTo(250 * 3e-4 * start / 100 * 60, within(1e-9));
        assertThat(Exactly.value(result, PressureForm.HALF_TIME))
                .isCloseTo(StrictMath.log(2) / 3e-4 / 3600, within(1e-9));
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void coolingAirIsNotALeak() {
        assertThat(Vessels.result(tight(19, true)).yields().get(PressureForm.PRESSURE_LOSS))
                .isNotInstanceOf(Yield.Fitted.class);
        assertThat(Exactly.value(Vessels.result(tight(19, false)), PressureForm.PRESSURE_LOSS))
                .isGreaterThan(3);
    }

    @Test
    void aTightVesselHasOnlyALimit() {
        var bench = Exactly.bench().withResolution("pressure gauge", Quantity.parse("0.1 kPa"));
        Result result = Vessels.result(Vessels.falling(0, 0, NONE, bench));
        Yield.Below below = (Yield.Below) result.yields().get(PressureForm.PRESSURE_LOSS);
        // Three times the difference of two readings on steps of 0.1 kPa, in 540 s.
        assertThat(below.bound())
                .isCloseTo(3 * Math.sqrt(2.0 / 12) * 0.1 / 540 * 3600, within(1e-9));
        assertThat(result.yields().get(PressureForm.HALF_TIME)).isInstanceOf(Yield.AtLeast.class);
    }

    @Test
    void absoluteAndGaugePressureGiveTheSame() {
        double[] time = new double[50];
        double[] absolute = new double[50];
        double[] gauge = new double[50];
        for (int row = 0; row < 50; row++) {
            time[row] = 10 * row;
            gauge[row] = 12 * StrictMath.exp(-2e-4 * time[row]);
            absolute[row] = 100 + gauge[row];
        }
        Readings.Builder one = Readings.of("T1", "plain", Exactly.bench())
                .number(PressureForm.AMBIENT, 100)
                .channel(PressureForm.TIME, time)
                .channel(PressureForm.PRESSURE, gauge);
        Readings.Builder other = Readings.of("T1", "plain", Exactly.bench())
                .number(PressureForm.AMBIENT, 100)
                .word(PressureForm.PRESSURE_IS, "absolute")
                .channel(PressureForm.TIME, time)
                .channel(PressureForm.PRESSURE, absolute);
        assertThat(Exactly.value(Vessels.result(other), PressureForm.PRESSURE_LOSS))
                .isCloseTo(
                        Exactly.value(Vessels.result(one), PressureForm.PRESSURE_LOSS),
                        within(1e-9));
        assertThat(Exactly.reason(Vessels.result(one), PressureForm.LEAK_RATE))
                .isEqualTo("the volume of air is not known");
    }

    @Test
    void theLeakGrowsWithTheVolumeAndTheLossDoesNot() {
        Result small = Vessels.result(falling(3e-4));
        Result large = Vessels.result(falling(3e-4).number(PressureForm.VOLUME, 500));
        assertThat(Exactly.value(large, PressureForm.LEAK_RATE))
                .isCloseTo(
                        2 * Exactly.value(small, PressureForm.LEAK_RATE),
                        Percentage.withPercentage(1e-9));
        assertThat(Exactly.value(large, PressureForm.PRESSURE_LOSS))
                .isEqualTo(Exactly.value(small, PressureForm.PRESSURE_LOSS));
    }

    @Test
    void aGaugesGainCancelsInTheTimeToHalfAndItsZeroDoesNot() {
        var bench = Exactly.bench()
                .withGain("pressure gauge", 0.02)
                .withZero("pressure gauge", Quantity.parse("0.2 kPa"));
        var shifts = Vessels.result(Vessels.falling(3e-4, 0, NONE, bench))
                .budgets()
                .get(PressureForm.HALF_TIME)
                .shifts();
        double gain = 0;
        double zero = 0;
        for (var entry : shifts.entrySet()) {
            gain += entry.getKey().identity().endsWith("gain") ? Math.abs(entry.getValue()) : 0;
            zero += entry.getKey().identity().endsWith("zero") ? Math.abs(entry.getValue()) : 0;
        }
        assertThat(gain).isCloseTo(0, within(1e-9));
        assertThat(zero).isGreaterThan(0.005);
    }

    @Test
    void findings() {
        assertThat(text(tight(19, false), "temperature-not-recorded"))
                .contains("a loss of 0.39 kPa");
        assertThat(text(tight(19, true), "temperature-moved"))
                .isEqualTo(
                        "The temperature went from 20.8 to 19.0 °C, worth -0.70 kPa; that was taken out.");
        assertThat(text(tight(19, true), "gauge-assumed")).startsWith("Whether the gauge");
        Readings.Builder noBarometer = Readings.of("T1", "plain", Exactly.bench())
                .channel(PressureForm.TIME, new double[] {0, 60, 120, 180, 240, 300, 360})
                .channel(PressureForm.PRESSURE, new double[] {40, 39, 38, 37, 36, 35, 34});
        assertThat(text(noBarometer, "ambient-assumed")).contains("101.325 kPa");
        assertThat(text(noBarometer, "pressure-high")).startsWith("The vessel stood at 39.0 kPa");
        var coarse = Exactly.bench().withResolution("pressure", Quantity.parse("0.5 kPa"));
        assertThat(text(Vessels.falling(3e-4, 0.01, new Random(3), coarse), "few-steps"))
                .startsWith("The pressure fell by 2.2 kPa, only 4.4 steps");
    }

    @Test
    void aLeakThatChangesIsFound() {
        double[] time = new double[121];
        double[] pressure = new double[121];
        for (int row = 0; row < 121; row++) {
            time[row] = 5 * row;
            pressure[row] = 12 + 3 * StrictMath.exp(-time[row] / 150);
        }
        Readings.Builder readings = falling(3e-4)
                .channel(PressureForm.TIME, time)
                .channel(PressureForm.PRESSURE, pressure);
        assertThat(text(readings, "not-one-leak")).contains("times as fast in the first half");
    }

    @Test
    void saysWhyThereIsNoValue() {
        Readings.Builder short1 = Readings.of("T1", "plain", Exactly.bench())
                .channel(PressureForm.TIME, new double[] {0, 10, 20})
                .channel(PressureForm.PRESSURE, new double[] {10, 9, 8});
        assertThat(Exactly.reason(Vessels.result(short1), PressureForm.HALF_TIME))
                .isEqualTo("the record ends before the air has settled");
        assertThat(Exactly.reason(
                        Vessels.result(short1.setting(PressureForm.SETTLE, 0)),
                        PressureForm.HALF_TIME))
                .isEqualTo("fewer than 5 rows lie between settling and the end of the pressure");
        Readings.Builder below = Readings.of("T1", "plain", Exactly.bench())
                .channel(PressureForm.TIME, new double[] {0, 60, 120})
                .channel(PressureForm.PRESSURE, new double[] {-10, -9, -8});
        assertThat(Exactly.reason(Vessels.result(below), PressureForm.HALF_TIME))
                .isEqualTo("the pressure is not above that of the surroundings");
        Readings.Builder nothing = Readings.of("T1", "plain", Exactly.bench());
        assertThat(Exactly.reason(Vessels.result(nothing), PressureForm.LEAK_RATE))
                .isEqualTo("time and pressure were not recorded");
    }
}
