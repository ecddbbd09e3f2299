package org.twinbar.method.leak;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.BoundSweep;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Vessels that lose 10 to 20 mg an hour, weighed a day apart. */
public final class LeakSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("scale", 0.002, "0 g", "0.01 g");
    private static final double HOURS = 24;

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                LeakForm.LEAK_RATE,
                "a scale in steps of 0.01 g, its gain by 0.2 %",
                LeakSweeps::vessel));
    }

    private static Sweep.Drawn vessel(Random random) {
        Dial scale = Dial.drawn(random, 0.002, 0, 0.01);
        double truth = 0.01 * (1 + random.nextDouble());
        double control = 0.004;
        double before = 200 + 50 * random.nextDouble();
        double after = before - (truth + control) * HOURS;
        return Sweep.Drawn.of(
                new Leak(),
                Readings.of("V1", "plain", BENCH)
                        .number(LeakForm.MASS_BEFORE, scale.reads(before))
                        .number(LeakForm.MASS_AFTER, scale.reads(after))
                        .number(LeakForm.WEIGHED_AFTER, HOURS)
                        .number(LeakForm.CONTROL_LOSS, control),
                truth);
    }

    @Override
    public List<BoundSweep> bounds() {
        return List.of(
                new BoundSweep(
                        LeakForm.TIME_TO_LEAK,
                        "between two looks",
                        "a look every two hours, its time noted to 0.1 h",
                        LeakSweeps::lookedAt),
                new BoundSweep(
                        LeakForm.LEAK_RATE,
                        "below the limit of detection, which the truth is about",
                        "a scale in steps of 0.01 g, its gain by 0.2 %",
                        LeakSweeps::hardlyLeaking));
    }

    private static Sweep.Drawn lookedAt(Random random) {
        double truth = HOURS * random.nextDouble();
        double late = 0.5 * random.nextDouble();
        double dry = Math.max(0, 2 * Math.floor((truth - late) / 2) + late);
        Dial clock = new Dial(0, 0, 0.1);
        return Sweep.Drawn.of(
                new Leak(),
                Readings.of("V1", "plain", Exactly.bench("timer", 0, "0 s", "6 min"))
                        .number(LeakForm.DRY_UNTIL, clock.reads(dry))
                        .number(LeakForm.WET_AT, clock.reads(dry + 2)),
                truth);
    }

    /** Two weighings a day apart can tell 0.5 mg an hour. */
    private static Sweep.Drawn hardlyLeaking(Random random) {
        Dial scale = Dial.drawn(random, 0.002, 0, 0.01);
        double truth = 0.001 * random.nextDouble();
        double before = 200 + random.nextDouble();
        return Sweep.Drawn.of(
                new Leak(),
                Readings.of("V1", "plain", BENCH)
                        .number(LeakForm.MASS_BEFORE, scale.reads(before))
                        .number(LeakForm.MASS_AFTER, scale.reads(before - truth * HOURS))
                        .number(LeakForm.WEIGHED_AFTER, HOURS),
                truth);
    }
}
