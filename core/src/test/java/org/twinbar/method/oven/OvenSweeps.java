package org.twinbar.method.oven;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.BoundSweep;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweeps;

/** Bars that bend off at 57 °C, under a gauge with noise and a thermometer that is off. */
public final class OvenSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("thermometer", 0, "0.5 K", "0 K");
    private static final double TRUTH = 57;
    private static final double SECONDS = 300;

    @Override
    public List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        OvenForm.ONSET,
                        "noise of 0.05 mm; the thermometer's zero by 0.5 °C, in a dummy bar",
                        OvenSweeps::readInBar),
                new Sweep(
                        OvenForm.ONSET,
                        "the same, in the air; the time constant by 20 %",
                        OvenSweeps::readInAir));
    }

    private static Sweep.Drawn readInBar(Random random) {
        double zero = 0.5 * random.nextGaussian();
        return Sweep.Drawn.of(
                new Oven(),
                Ovens.sagging(Ovens.bar(BENCH, "plain"), TRUTH + zero, 0.05, 0.05, random),
                TRUTH);
    }

    /** The air is ahead of the bar by what its true time constant makes of 1 °C/min from 30 °C. */
    private static Sweep.Drawn readInAir(Random random) {
        double seconds = SECONDS * (1 + 0.2 * random.nextGaussian());
        double lag = seconds / 60 * (1 - StrictMath.exp(-(TRUTH - 30) * 60 / seconds));
        double air = TRUTH + lag + 0.5 * random.nextGaussian();
        return Sweep.Drawn.of(
                new Oven(),
                Ovens.sagging(Ovens.bar(BENCH, "plain"), air, 0.05, 0.05, random)
                        .word(OvenForm.THERMOMETER_IN, "air")
                        .number(OvenForm.TIME_CONSTANT, SECONDS),
                TRUTH);
    }

    @Override
    public List<BoundSweep> bounds() {
        return List.of(
                new BoundSweep(
                        OvenForm.ONSET,
                        "between two looks at the thermometer",
                        "looks 2 °C apart; the thermometer's zero by 0.5 °C; the time constant by 20 %",
                        OvenSweeps::lookedAt),
                new BoundSweep(
                        OvenForm.ONSET,
                        "at least, since it never sagged",
                        "the same; it was about to",
                        OvenSweeps::held));
    }

    private static Sweep.Drawn lookedAt(Random random) {
        double truth = TRUTH + 2 * random.nextDouble();
        double lag = lag(random);
        double zero = 0.5 * random.nextGaussian();
        double step = 2 * Math.floor((truth + lag) / 2);
        return Sweep.Drawn.of(
                new Oven(),
                inAir().number(OvenForm.ONSET_FROM, step + zero)
                        .number(OvenForm.ONSET_TO, step + 2 + zero),
                truth);
    }

    private static Sweep.Drawn held(Random random) {
        double air = TRUTH + lag(random) + 0.5 * random.nextGaussian();
        return Sweep.Drawn.of(new Oven(), inAir().number(OvenForm.HELD_UNTIL, air), TRUTH);
    }

    /** What a true time constant makes of half a degree per minute, long after it began. */
    private static double lag(Random random) {
        return 0.5 / 60 * SECONDS * (1 + 0.2 * random.nextGaussian());
    }

    private static Readings.Builder inAir() {
        return Ovens.bar(BENCH, "plain")
                .word(OvenForm.THERMOMETER_IN, "air")
                .number(OvenForm.TIME_CONSTANT, SECONDS)
                .number(OvenForm.RAMP, 0.5);
    }
}
