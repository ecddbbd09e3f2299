package org.twinbar.method.peak;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.BoundSweep;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Inserts that come out at a known stress on their wall. */
public final class InsertPulloutSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.bench("load cell", 0.01, "3 N", "5 N"), "caliper", 0, "0.02 mm", "0.05 mm");

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                InsertPullout.STRESS,
                "the load cell's gain by 1 %, its zero by 3 N, steps of 5 N; the caliper's zero by"
                        + " 0.02 mm, steps of 0.05 mm",
                InsertPulloutSweeps::pulled));
    }

    private record Insert(Readings.Builder readings, double truth) {}

    private static Sweep.Drawn pulled(Random random) {
        Insert insert = insert(random);
        return Sweep.Drawn.of(new InsertPullout(), insert.readings(), insert.truth());
    }

    private static Insert insert(Random random) {
        Dial cell = Dial.drawn(random, 0.01, 3, 5);
        Dial caliper = Dial.drawn(random, 0, 0.02, 0.05);
        double truth = 8 + 4 * random.nextDouble();
        double depth = 5 + random.nextDouble();
        double diameter = 4 + random.nextDouble();
        return new Insert(
                Readings.of("I1", "plain", BENCH)
                        .number(InsertPullout.FORCE, cell.reads(truth * Math.PI * diameter * depth))
                        .number(InsertPullout.DEPTH, caliper.reads(depth))
                        .number(InsertPullout.DIAMETER, caliper.reads(diameter)),
                truth);
    }

    @Override
    public List<BoundSweep> bounds() {
        return List.of(new BoundSweep(
                InsertPullout.STRESS,
                "at least, since the screw broke",
                "as above; the insert was about to come out",
                InsertPulloutSweeps::heldByTheScrew));
    }

    private static Sweep.Drawn heldByTheScrew(Random random) {
        Insert insert = insert(random);
        return Sweep.Drawn.of(
                new InsertPullout(),
                insert.readings().word(InsertPullout.GAVE, "screw broke"),
                insert.truth());
    }
}
