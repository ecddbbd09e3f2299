package org.twinbar.method.timeconstant;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Records of dummies for tests, and short ways to what came out. */
final class Dummies {

    private Dummies() {}

    /** A dummy whose temperature (°C) was read at every so many seconds. */
    static Readings.Builder dummy(
            Bench bench, double until, double every, DoubleUnaryOperator temperature) {
        double[] time = IntStream.rangeClosed(0, (int) Math.rint(until / every))
                .mapToDouble(i -> i * every)
                .toArray();
        double[] degrees = new double[time.length];
        for (int i = 0; i < time.length; i++) {
            degrees[i] = temperature.applyAsDouble(time[i]);
        }
        return of(bench, time, degrees);
    }

    static Readings.Builder of(Bench bench, double[] time, double[] degrees) {
        return Readings.of("D1", "plain", bench)
                .channel(TimeConstantForm.TIME, time)
                .channel(TimeConstantForm.TEMPERATURE, degrees);
    }

    /** A dummy that goes from 20 to 60 °C, read every ten seconds. */
    static Readings.Builder warming(double tau, double until) {
        return dummy(Exactly.bench(), until, 10, t -> 60 - 40 * StrictMath.exp(-t / tau));
    }

    /** The same with noise (K). */
    static Readings.Builder noisy(double tau, double until, double noise, Random random) {
        return dummy(
                Exactly.bench(),
                until,
                10,
                t -> 60 - 40 * StrictMath.exp(-t / tau) + noise * random.nextGaussian());
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new TimeConstant(), readings.build());
    }

    static double seconds(Readings.Builder readings) {
        return Exactly.value(result(readings), TimeConstantForm.SECONDS);
    }
}
