package org.twinbar.method.gloss;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweeps;
import org.twinbar.quantity.Quantity;

/** Plates of 45 GU, whose places scatter, under a meter that is off in gain and zero. */
public final class GlossSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench()
            .withResolution("gloss meter", Quantity.parse("0.1 GU"))
            .withGain("gloss meter", 0.01)
            .withZero("gloss meter", Quantity.parse("0.5 GU"));

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                Geometry.AT_60.alongYielded(),
                "six places that differ by 1.5 GU; the meter's gain by 1 %, its zero by 0.5 GU",
                GlossSweeps::plate));
    }

    private static Sweep.Drawn plate(Random random) {
        double truth = 45;
        double gain = 1 + 0.01 * random.nextGaussian();
        double zero = 0.5 * random.nextGaussian();
        double[] places = new double[6];
        for (int i = 0; i < places.length; i++) {
            double here = truth + 1.5 * random.nextGaussian();
            places[i] = Sweep.shown((here - zero) / gain, 0.1);
        }
        return Sweep.Drawn.of(
                new Gloss(), GlossTest.plate(BENCH).number(Geometry.AT_60.along(), places), truth);
    }
}
