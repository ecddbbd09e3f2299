package org.twinbar.method.uptake;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.BoundSweep;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Plates that take up 1 % of water by Fick's law, on a scale in steps of 1 mg. */
public final class UptakeSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.bench("scale", 0.001, "0 g", "0.001 g"), "caliper", 0, "0.02 mm", "0.01 mm");

    @Override
    public List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        UptakeForm.UPTAKE,
                        "a scale in steps of 1 mg, its gain by 0.1 %",
                        random -> soaked(random, Soaked.UPTAKE)),
                new Sweep(
                        UptakeForm.DIFFUSION,
                        "the same; a caliper whose zero is off by 0.02 mm",
                        random -> soaked(random, Soaked.DIFFUSION)));
    }

    private enum Soaked {
        UPTAKE,
        DIFFUSION
    }

    private static Sweep.Drawn soaked(Random random, Soaked what) {
        Dial scale = Dial.drawn(random, 0.001, 0, 0.001);
        Dial caliper = Dial.drawn(random, 0, 0.02, 0.01);
        double dry = 4 + random.nextDouble();
        double thickness = 2 + random.nextDouble();
        double diffusion = 1e-6 * (1 + random.nextDouble());
        double saturated = 0.01 * dry;
        double hours = 100;
        double share = Fick.share(diffusion * hours * 3600 / (thickness * thickness));
        Readings.Builder readings = Readings.of("U1", "plain", BENCH)
                .number(UptakeForm.DRY, scale.reads(dry))
                .number(UptakeForm.WET, scale.reads(dry + share * saturated))
                .number(UptakeForm.SATURATED, scale.reads(dry + saturated))
                .number(UptakeForm.IMMERSED, hours)
                .number(UptakeForm.THICKNESS, caliper.reads(thickness));
        return Sweep.Drawn.of(new Uptake(), readings, what == Soaked.UPTAKE ? share : diffusion);
    }

    @Override
    public List<BoundSweep> bounds() {
        return List.of(new BoundSweep(
                UptakeForm.UPTAKE,
                "below the limit of detection, which the truth is about",
                "a scale in steps of 1 mg, its gain by 0.1 %",
                UptakeSweeps::hardlySoaked));
    }

    /** Two weighings can tell 1.2 mg of 5 g, which is 0.024 %. */
    private static Sweep.Drawn hardlySoaked(Random random) {
        Dial scale = Dial.drawn(random, 0.001, 0, 0.001);
        double dry = 5 + 0.001 * random.nextDouble();
        double truth = 0.05 * random.nextDouble();
        return Sweep.Drawn.of(
                new Uptake(),
                Readings.of("U1", "plain", BENCH)
                        .number(UptakeForm.DRY, scale.reads(dry))
                        .number(UptakeForm.WET, scale.reads(dry * (1 + truth / 100))),
                truth);
    }
}
