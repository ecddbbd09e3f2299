package org.twinbar.method.peak;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Threads that strip at a known torque, turned by a wrench that is off. */
public final class ThreadStripSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("torque sensor", 0.02, "0.02 N·m", "0.1 N·m");

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                ThreadStrip.STRIP_TORQUE,
                "the wrench's gain by 2 %, its zero by 0.02 N·m, steps of 0.1 N·m",
                ThreadStripSweeps::stripped));
    }

    private static Sweep.Drawn stripped(Random random) {
        Dial wrench = Dial.drawn(random, 0.02, 0.02, 0.1);
        double truth = 2 + 2 * random.nextDouble();
        return Sweep.Drawn.of(
                new ThreadStrip(),
                Readings.of("T1", "plain", BENCH).number(ThreadStrip.TORQUE, wrench.reads(truth)),
                truth);
    }
}
