package org.twinbar.method.heatdeflection;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Bars that sag by a known law, under a thermometer and a gauge that are off. */
public final class HeatDeflectionSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.bench("thermometer", 0, "0.4 K", "0.5 K"),
            "deflection gauge",
            0.01,
            "0 mm",
            "0.01 mm");

    /** 64²·0.2 %/(6·4 mm) of deflection at 0.04 mm a degree behind 55 °C. */
    private static final double TRUTH = 55 + 64.0 * 64 * 0.2 / 2400 / 0.04;

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                HeatForm.TEMPERATURE,
                "the thermometer's zero by 0.4 °C, steps of 0.5 °C; the gauge's gain by 1 %, steps"
                        + " of 0.01 mm",
                HeatDeflectionSweeps::bar));
    }

    private static Sweep.Drawn bar(Random random) {
        double zero = 0.4 * random.nextGaussian();
        Dial gauge = Dial.drawn(random, 0.01, 0, 0.01);
        return Sweep.Drawn.of(
                new HeatDeflection(),
                HotBars.heated(
                        HotBars.bar(BENCH),
                        75,
                        0,
                        celsius -> gauge.reads(HotBars.sagging(celsius - zero))),
                TRUTH);
    }
}
