package org.twinbar.method.pressure;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.BoundSweep;
import org.twinbar.method.Exactly;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweeps;

/** Vessels whose gauge pressure halves in a known time. */
public final class PressureDecaySweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("pressure gauge", 0.01, "0 kPa", "0 kPa");
    private static final double RATE = 3e-4;
    private static final double HALF_TIME_H = StrictMath.log(2) / RATE / 3600;

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                PressureForm.HALF_TIME,
                "noise of 0.05 kPa on each row; the gauge's gain by 1 %",
                PressureDecaySweeps::vessel));
    }

    private static Sweep.Drawn vessel(Random random) {
        return Sweep.Drawn.of(
                new PressureDecay(), Vessels.falling(RATE, 0.05, random, BENCH), HALF_TIME_H);
    }

    @Override
    public List<BoundSweep> bounds() {
        return List.of(new BoundSweep(
                PressureForm.HALF_TIME,
                "at least, since hardly any fall was seen",
                "noise of 0.05 kPa on each row; the truth is about what that lets be seen",
                PressureDecaySweeps::tightVessel));
    }

    private static Sweep.Drawn tightVessel(Random random) {
        double rate = 8e-6 * random.nextDouble();
        return Sweep.Drawn.of(
                new PressureDecay(),
                Vessels.falling(rate, 0.05, random, BENCH),
                StrictMath.log(2) / rate / 3600);
    }
}
