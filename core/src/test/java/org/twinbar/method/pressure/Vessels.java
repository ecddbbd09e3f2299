package org.twinbar.method.pressure;

import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

/** Records of vessels for tests, and short ways to what came out. */
final class Vessels {

    private Vessels() {}

    /** A bench whose instruments are without error, so that a test adds only what it is about. */
    static Bench exactBench() {
        return Bench.usual()
                .withResolution("pressure gauge", Quantity.parse("0 kPa"))
                .withZero("pressure gauge", Quantity.parse("0 kPa"))
                .withGain("pressure gauge", 0)
                .withResolution("thermometer", Quantity.parse("0 K"))
                .withZero("thermometer", Quantity.parse("0 K"));
    }

    /**
     * Ten minutes of 15 kPa above 100 kPa that fall at a rate (1/s), read every 5 s, with noise
     * (kPa).
     */
    static Readings.Builder falling(double rate, double noise, Random random) {
        return falling(rate, noise, random, exactBench());
    }

    static Readings.Builder falling(double rate, double noise, Random random, Bench bench) {
        double[] time = new double[121];
        double[] pressure = new double[121];
        double[] temperature = new double[121];
        for (int row = 0; row < 121; row++) {
            time[row] = 5 * row;
            pressure[row] = 15 * StrictMath.exp(-rate * time[row]) + noise * random.nextGaussian();
            temperature[row] = 21;
        }
        return Readings.of("T1", "plain", bench)
                .number(PressureForm.VOLUME, 250)
                .number(PressureForm.AMBIENT, 100)
                .word(PressureForm.PRESSURE_IS, "gauge")
                .channel(PressureForm.TIME, time)
                .channel(PressureForm.PRESSURE, pressure)
                .channel(PressureForm.TEMPERATURE, temperature);
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new PressureDecay(), readings.build());
    }

    static double value(Result result, Property property) {
        if (result.yields().get(property) instanceof Yield.Fitted fitted) {
            return fitted.value();
        }
        throw new AssertionError(property.name() + " is " + result.yields().get(property));
    }

    static String reason(Result result, Property property) {
        Yield yield = result.yields().get(property);
        return yield instanceof Yield.Missing missing ? missing.reason() : "a value: " + yield;
    }

    static boolean found(Result result, String code) {
        return result.findings().stream().anyMatch(finding -> finding.code().equals(code));
    }
}
