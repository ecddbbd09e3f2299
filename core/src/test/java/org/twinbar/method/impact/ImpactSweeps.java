package org.twinbar.method.impact;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.BoundSweep;
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
                ImpactSweeps::broken));
    }

    private record Blow(Readings.Builder readings, double truth) {}

    private static Sweep.Drawn broken(Random random) {
        Blow blow = blow(random);
        return Sweep.Drawn.of(new Impact(), blow.readings(), blow.truth());
    }

    private static Blow blow(Random random) {
        Dial scale = Dial.drawn(random, 0, 0.3, 1);
        Dial caliper = new Dial(0, 0, 0.05);
        double release = 138 + 4 * random.nextDouble();
        double rise = 90 + 20 * random.nextDouble();
        double thickness = 3.9 + 0.2 * random.nextDouble();
        double width = 7.9 + 0.2 * random.nextDouble();
        double joules = 4 * (Hammer.cos(rise) - Hammer.cos(release));
        return new Blow(
                Readings.of("A1", "plain", BENCH)
                        .numberForAllWithUncertainty(
                                ImpactForm.MOMENT, 4 * (1 + 0.01 * random.nextGaussian()), 0.04)
                        .number(ImpactForm.RELEASE_ANGLE, scale.reads(release))
                        .number(ImpactForm.RISE_ANGLE, scale.reads(rise))
                        .number(ImpactForm.THICKNESS, caliper.reads(thickness))
                        .number(ImpactForm.WIDTH, caliper.reads(width)),
                1000 * joules / (thickness * width));
    }

    @Override
    public List<BoundSweep> bounds() {
        return List.of(new BoundSweep(
                ImpactForm.STRENGTH,
                "at least, since it did not break",
                "as above; one more blow would have broken it",
                ImpactSweeps::unbroken));
    }

    private static Sweep.Drawn unbroken(Random random) {
        Blow blow = blow(random);
        return Sweep.Drawn.of(
                new Impact(),
                blow.readings().word(ImpactForm.BREAK_TYPE, ImpactForm.NOT_BROKEN),
                blow.truth());
    }
}
