package org.twinbar.method.heatdeflection;

import java.util.function.DoubleUnaryOperator;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.heating.Heated;

/** Records of bars for tests, and short ways to what came out. */
final class HotBars {

    private HotBars() {}

    /** The standard's flat bar at 0.45 MPa, with its rod and gauge. */
    static Readings.Builder bar(Bench bench) {
        return Readings.of("H1", "plain", bench)
                .number(HeatForm.SPAN, 64)
                .number(HeatForm.WIDTH, 10)
                .number(HeatForm.THICKNESS, 4)
                .number(HeatForm.STRESS, 0.45)
                .number(HeatForm.ROD_MASS, 30)
                .number(HeatForm.SPRING_FORCE, 0.05);
    }

    /** Heated from 25 °C at 2 °C/min, a row every 15 s, sagging as a function of temperature. */
    static Readings.Builder heated(
            Readings.Builder bar, double toC, double gaugeAtStart, DoubleUnaryOperator sag) {
        int rows = (int) Math.round((toC - 25) * 2) + 1;
        double[] time = new double[rows];
        double[] temperature = new double[rows];
        double[] deflection = new double[rows];
        for (int row = 0; row < rows; row++) {
            time[row] = 15 * row;
            temperature[row] = 25 + 0.5 * row;
            deflection[row] = gaugeAtStart + sag.applyAsDouble(temperature[row]);
        }
        return bar.channel(Heated.TIME, time)
                .channel(Heated.TEMPERATURE, temperature)
                .channel(Heated.DEFLECTION, deflection);
    }

    /** Flat up to 55 °C, then 0.04 mm per degree: reaches 1.3653/4 mm at 63.533 °C. */
    static double sagging(double temperatureC) {
        return 0.04 * Math.max(0, temperatureC - 55);
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new HeatDeflection(), readings.build());
    }
}
