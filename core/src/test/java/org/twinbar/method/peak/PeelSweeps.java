package org.twinbar.method.peak;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Strips that peel at a known force per width. */
public final class PeelSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.bench("load cell", 0.01, "0.05 N", "0.01 N"),
            "caliper",
            0,
            "0.02 mm",
            "0.05 mm");

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                Peel.STRENGTH,
                "noise of 0.2 N on each row; the load cell's gain by 1 %, its zero by 0.05 N; the"
                        + " caliper's zero by 0.02 mm",
                PeelSweeps::peeled));
    }

    private static Sweep.Drawn peeled(Random random) {
        Dial cell = Dial.drawn(random, 0.01, 0.05, 0.01);
        Dial caliper = Dial.drawn(random, 0, 0.02, 0.05);
        double truth = 0.4 + 0.2 * random.nextDouble();
        double width = 9.5 + random.nextDouble();
        double[] force = new double[400];
        for (int row = 0; row < force.length; row++) {
            force[row] = cell.reads(truth * width + 0.2 * random.nextGaussian());
        }
        return Sweep.Drawn.of(
                new Peel(),
                Readings.of("P1", "plain", BENCH)
                        .channel(Peel.TRACE, force)
                        .number(Peel.WIDTH, caliper.reads(width)),
                truth);
    }
}
