package org.twinbar.method.oven;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
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
}
