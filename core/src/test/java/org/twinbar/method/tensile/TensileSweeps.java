package org.twinbar.method.tensile;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.BoundSweep;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;
import org.twinbar.method.curve.Toe;

/** Bars of 30 MPa under a load cell and a caliper that are off, and curves with noise. */
public final class TensileSweeps implements Sweeps {

    private static final Bench FORCES = Exactly.with(
            Exactly.bench("load cell", 0.005, "2 N", "5 N"), "caliper", 0, "0.02 mm", "0.05 mm");
    private static final double STRENGTH = 30;
    private static final double MODULUS =
            Exactly.value(Pulled.pull(stretched(0, 0)), PullForm.MODULUS);

    @Override
    public List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        PullForm.STRENGTH,
                        "the load cell's gain by 0.5 %, its zero by 2 N, steps of 5 N; the caliper's"
                                + " zero by 0.02 mm, steps of 0.05 mm",
                        TensileSweeps::pulled),
                new Sweep(
                        PullForm.MODULUS,
                        "noise of 2 N on each row",
                        random -> Sweep.Drawn.of(
                                new Tensile(), stretched(2, random.nextLong()), MODULUS)));
    }

    private static Sweep.Drawn pulled(Random random) {
        return Sweep.Drawn.of(new Tensile(), bar(random), STRENGTH);
    }

    private static Readings.Builder bar(Random random) {
        Dial cell = Dial.drawn(random, 0.005, 2, 5);
        Dial caliper = Dial.drawn(random, 0, 0.02, 0.05);
        double width = 9.5 + random.nextDouble();
        double thickness = 3.5 + random.nextDouble();
        return Pulled.bar(caliper.reads(width), caliper.reads(thickness), FORCES)
                .number(PullForm.PEAK_FORCE, cell.reads(STRENGTH * width * thickness));
    }

    private static Readings.Builder stretched(double noiseN, long seed) {
        return SimulatedPull.brittle()
                .withToe(0)
                .withRows(900)
                .withNoise(noiseN, seed)
                .readings()
                .word(Toe.CHOICE, Toe.AS_RECORDED);
    }

    @Override
    public List<BoundSweep> bounds() {
        return List.of(new BoundSweep(
                PullForm.STRENGTH,
                "at least, since it broke at the shoulder",
                "as above; the gauge length was about to break",
                random -> Sweep.Drawn.of(
                        new Tensile(),
                        bar(random).word(PullForm.BROKE_AT, PullForm.BROKE_AT_SHOULDER),
                        STRENGTH)));
    }
}
