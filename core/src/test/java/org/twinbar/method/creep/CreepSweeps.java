package org.twinbar.method.creep;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweeps;

/** Bars that creep by Findley's law, read twelve times in 50 hours. */
public final class CreepSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.bench("strain extensometer", 0.01, "0 %", "0 %");

    @Override
    public List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        CreepForm.FORECAST_STRAIN,
                        "noise of 0.003 % strain on each reading; the extensometer's gain by 1 %",
                        random -> loaded(random, CreepTest.AT_100)),
                new Sweep(
                        CreepForm.EXPONENT,
                        "the same",
                        random -> loaded(random, CreepTest.EXPONENT)));
    }

    private static Sweep.Drawn loaded(Random random, double truth) {
        double gain = 1 + 0.01 * random.nextGaussian();
        double[] strains = CreepTest.law(0.003, random);
        for (int i = 0; i < strains.length; i++) {
            strains[i] *= gain;
        }
        return Sweep.Drawn.of(new Creep(), Crept.bar(BENCH, CreepTest.HOURS, strains), truth);
    }
}
