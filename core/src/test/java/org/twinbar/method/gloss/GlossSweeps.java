package org.twinbar.method.gloss;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Plates of 45 GU, whose places scatter, under a meter that is off in gain and zero. */
public final class GlossSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("gloss meter", 0.01, "0.5 GU", "0.1 GU");
    private static final double TRUTH = 45;

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                Geometry.AT_60.alongYielded(),
                "six places that differ by 1.5 GU; the meter's gain by 1 %, its zero by 0.5 GU",
                GlossSweeps::plate));
    }

    private static Sweep.Drawn plate(Random random) {
        Dial meter = Dial.drawn(random, 0.01, 0.5, 0.1);
        double[] places = new double[6];
        for (int i = 0; i < places.length; i++) {
            places[i] = meter.reads(TRUTH + 1.5 * random.nextGaussian());
        }
        return Sweep.Drawn.of(
                new Gloss(), GlossTest.plate(BENCH).number(Geometry.AT_60.along(), places), TRUTH);
    }
}
