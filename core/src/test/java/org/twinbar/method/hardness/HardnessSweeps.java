package org.twinbar.method.hardness;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Plates of 72 HD, whose places scatter, under a durometer whose zero is off. */
public final class HardnessSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("durometer", 0, "1 HD", "0.5 HD");
    private static final double TRUTH = 72;

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                HardnessForm.MEAN,
                "five places that differ by 1.5 HD; the durometer's zero by 1 HD, steps of 0.5 HD",
                HardnessSweeps::plate));
    }

    private static Sweep.Drawn plate(Random random) {
        Dial durometer = Dial.drawn(random, 0, 1, 0.5);
        double[] places = new double[5];
        for (int i = 0; i < places.length; i++) {
            places[i] = durometer.reads(TRUTH + 1.5 * random.nextGaussian());
        }
        return Sweep.Drawn.of(
                new Hardness(),
                Readings.of("D1", "plain", BENCH).number(HardnessForm.HARDNESS, places),
                TRUTH);
    }
}
