package org.twinbar.method.impact;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Blows between known angles on notched bars. */
public final class ImpactSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.bench("angle scale", 0, "0.3 °", "1 °"), "caliper", 0, "0 mm", "0.05 mm");

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                ImpactForm.STRENGTH,
                "angles in steps of 1°, their zero by 0.3°; the moment by 1 %; a caliper in steps of"
                        + " 0.05 mm",
                ImpactSweeps::blow));
    }

    private static Sweep.Drawn blow(Random random) {
        Dial scale = Dial.drawn(random, 0, 0.3, 1);
        Dial caliper = new Dial(0, 0, 0.05);
        double release = 138 + 4 * random.nextDouble();
        double rise = 90 + 20 * random.nextDouble();
        double thickness = 3.9 + 0.2 * random.nextDouble();
        double width = 7.9 + 0.2 * random.nextDouble();
        double joules = 4 * (Hammer.cos(rise) - Hammer.cos(release));
        return Sweep.Drawn.of(
                new Impact(),
                Readings.of("A1", "plain", BENCH)
                        .numberForAllWithUncertainty(
                                ImpactForm.MOMENT, 4 * (1 + 0.01 * random.nextGaussian()), 0.04)
                        .number(ImpactForm.RELEASE_ANGLE, scale.reads(release))
                        .number(ImpactForm.RISE_ANGLE, scale.reads(rise))
                        .number(ImpactForm.THICKNESS, caliper.reads(thickness))
                        .number(ImpactForm.WIDTH, caliper.reads(width)),
                1000 * joules / (thickness * width));
    }
}
