package org.twinbar.method.pressure;

import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Records of vessels for tests, and short ways to what came out. */
final class Vessels {

    private Vessels() {}

    /**
     * Ten minutes of 15 kPa above 100 kPa that fall at a rate (1/s), read every 5 s, with noise
     * (kPa).
     */
    static Readings.Builder falling(double rate, double noise, Random random) {
        return falling(rate, noise, random, Exactly.bench());
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
}
