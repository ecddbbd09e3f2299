package org.twinbar.method.oven;

import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.heating.Heated;

/** Records of cantilevers for tests, and short ways to what came out. */
final class Ovens {

    private Ovens() {}

    /** A bar of 10 by 4 mm on an arm of 60 mm, with a dummy's thermometer. */
    static Readings.Builder bar(Bench bench, String group) {
        return Readings.of("V1", group, bench)
                .number(OvenForm.ARM, 60)
                .number(OvenForm.WIDTH, 10)
                .number(OvenForm.THICKNESS, 4)
                .number(OvenForm.TIP_MASS, 200)
                .word(OvenForm.OVEN_LOAD, "1")
                .word(OvenForm.THERMOMETER_IN, OvenForm.IN_BAR);
    }

    static Readings.Builder bar() {
        return bar(Exactly.bench(), "plain");
    }

    /**
     * Heated from 30 to 70 °C at 1 °C/min, a row each half degree, straight and then bent, with
     * noise (mm).
     */
    static Readings.Builder sagging(
            Readings.Builder bar, double onsetC, double mmPerDegree, double noise, Random random) {
        double[] time = new double[81];
        double[] temperature = new double[81];
        double[] deflection = new double[81];
        for (int row = 0; row < 81; row++) {
            time[row] = 30 * row;
            temperature[row] = 30 + 0.5 * row;
            deflection[row] = 2
                    + 0.004 * (temperature[row] - 30)
                    + mmPerDegree * Math.max(0, temperature[row] - onsetC)
                    + noise * random.nextGaussian();
        }
        return bar.channel(Heated.TIME, time)
                .channel(Heated.TEMPERATURE, temperature)
                .channel(Heated.DEFLECTION, deflection);
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new Oven(), readings.build());
    }
}
