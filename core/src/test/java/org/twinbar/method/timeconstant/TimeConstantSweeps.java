package org.twinbar.method.timeconstant;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Dummies with a known time constant, in ovens that swing about what they are held at. */
public final class TimeConstantSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("thermometer", 0, "1 K", "0.1 K");
    private static final double SHARED_WITH_THE_LAST = 0.6;

    @Override
    public List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        TimeConstantForm.SECONDS,
                        "noise of 0.2 °C; the thermometer's zero by 1 °C, steps of 0.1 °C",
                        random -> warmed(random, 0)),
                new Sweep(
                        TimeConstantForm.SECONDS,
                        "the same, each reading sharing 60 % of its noise with the one before",
                        random -> warmed(random, SHARED_WITH_THE_LAST)));
    }

    private static Sweep.Drawn warmed(Random random, double shared) {
        Dial thermometer = Dial.drawn(random, 0, 1, 0.1);
        double truth = 200 + 300 * random.nextDouble();
        double[] noise = {0};
        return Sweep.Drawn.of(
                new TimeConstant(),
                Dummies.dummy(BENCH, 1600, 10, t -> {
                    noise[0] = shared * noise[0]
                            + 0.2 * Math.sqrt(1 - shared * shared) * random.nextGaussian();
                    return thermometer.reads(60 - 40 * StrictMath.exp(-t / truth) + noise[0]);
                }),
                truth);
    }
}
