package org.twinbar.method.flexure;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Bars of a known strength and modulus on a span that a ruler measured. */
public final class FlexureSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.with(
                    Exactly.bench("load cell", 0.005, "0.3 N", "0.1 N"),
                    "caliper",
                    0,
                    "0.01 mm",
                    "0.01 mm"),
            "ruler",
            0,
            "0.3 mm",
            "1 mm");
    private static final double STRENGTH = 48;
    private static final double MODULUS = 2500;

    @Override
    public List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        BendForm.STRENGTH,
                        "the load cell's gain by 0.5 %, its zero by 0.3 N; the caliper's zero by"
                                + " 0.01 mm; the span by ruler",
                        FlexureSweeps::broken),
                new Sweep(
                        BendForm.MODULUS,
                        "the same, and noise of 0.05 N on each row",
                        FlexureSweeps::bent));
    }

    private record Bar(Readings.Builder readings, Bending truth) {

        static Bar drawn(Random random) {
            Dial caliper = Dial.drawn(random, 0, 0.01, 0.01);
            Dial ruler = Dial.drawn(random, 0, 0.3, 1);
            Bending truth = new Bending(
                    63 + 2 * random.nextDouble(),
                    9.5 + random.nextDouble(),
                    3.8 + 0.4 * random.nextDouble());
            return new Bar(
                    Readings.of("A1", "plain", BENCH)
                            .number(BendForm.SPAN, ruler.reads(truth.spanMm()))
                            .number(BendForm.WIDTH, caliper.reads(truth.widthMm()))
                            .number(BendForm.THICKNESS, caliper.reads(truth.thicknessMm())),
                    truth);
        }
    }

    private static Sweep.Drawn broken(Random random) {
        Bar bar = Bar.drawn(random);
        Dial cell = Dial.drawn(random, 0.005, 0.3, 0.1);
        double force = STRENGTH / bar.truth().stress(1);
        return Sweep.Drawn.of(
                new Flexure(),
                bar.readings().number(BendForm.PEAK_FORCE, cell.reads(force)),
                STRENGTH);
    }

    private static Sweep.Drawn bent(Random random) {
        Bar bar = Bar.drawn(random);
        Dial cell = Dial.drawn(random, 0.005, 0.3, 0);
        double slope = MODULUS / bar.truth().modulus(1);
        double[] force = new double[201];
        double[] deflection = new double[201];
        for (int row = 0; row < 201; row++) {
            deflection[row] = 0.01 * row;
            force[row] = cell.reads(slope * deflection[row]) + 0.05 * random.nextGaussian();
        }
        return Sweep.Drawn.of(
                new Flexure(),
                bar.readings()
                        .channel(BendForm.FORCE, force)
                        .channel(BendForm.DEFLECTION, deflection),
                MODULUS);
    }
}
