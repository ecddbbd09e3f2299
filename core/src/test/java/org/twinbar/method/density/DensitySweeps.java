package org.twinbar.method.density;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Parts of a known density, on a scale and a thermometer that are off. */
public final class DensitySweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.bench("scale", 0.002, "0 g", "0.01 g"), "thermometer", 0, "1 K", "0.1 K");
    private static final double AIR = 0.0012;

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                DensityForm.DENSITY,
                "a scale in steps of 0.01 g, its gain by 0.2 %; the water's thermometer by 1 °C",
                DensitySweeps::part));
    }

    private static Sweep.Drawn part(Random random) {
        Dial scale = Dial.drawn(random, 0.002, 0, 0.01);
        Dial thermometer = Dial.drawn(random, 0, 1, 0.1);
        double truth = 1.1 + 0.2 * random.nextDouble();
        double volume = 4 + 2 * random.nextDouble();
        double celsius = 20 + 5 * random.nextDouble();
        double inAir = volume * (truth - AIR);
        double inWater = volume * (truth - Water.density(celsius));
        return Sweep.Drawn.of(
                new Density(),
                Readings.of("D1", "plain", BENCH)
                        .number(DensityForm.IN_AIR, scale.reads(inAir))
                        .number(DensityForm.IN_LIQUID, scale.reads(inWater))
                        .number(DensityForm.TEMPERATURE, thermometer.reads(celsius)),
                truth);
    }
}
