package org.twinbar.method.dimensions;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweep.Dial;
import org.twinbar.method.Sweeps;

/** Parts that were coated or shrank by a known amount, measured by one caliper and one scale. */
public final class DimensionsSweeps implements Sweeps {

    private static final Bench BENCH = Exactly.with(
            Exactly.bench("caliper", 0, "0.02 mm", "0.01 mm"), "scale", 0.002, "0 g", "0.01 g");

    @Override
    public List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        DimensionsForm.FILM,
                        "one caliper for both, its zero by 0.02 mm, steps of 0.01 mm",
                        DimensionsSweeps::coatedByThickness),
                new Sweep(
                        DimensionsForm.FILM_BY_MASS,
                        "one scale for both, its gain by 0.2 %, steps of 0.01 g",
                        DimensionsSweeps::coatedByMass),
                new Sweep(
                        Axis.LENGTH.change(),
                        "one caliper for both, its zero by 0.02 mm, steps of 0.01 mm",
                        DimensionsSweeps::shrunk));
    }

    private static Sweep.Drawn coatedByThickness(Random random) {
        Dial caliper = Dial.drawn(random, 0, 0.02, 0.01);
        double film = 0.05 + 0.1 * random.nextDouble();
        double before = 4 + 0.2 * random.nextDouble();
        return drawn(
                Readings.of("F1", "coated", BENCH)
                        .number(Axis.THICKNESS.before(), caliper.reads(before))
                        .number(Axis.THICKNESS.after(), caliper.reads(before + 2 * film)),
                1000 * film);
    }

    private static Sweep.Drawn coatedByMass(Random random) {
        Dial scale = Dial.drawn(random, 0.002, 0, 0.01);
        double film = 0.05 + 0.1 * random.nextDouble();
        double before = 5 + random.nextDouble();
        double gained = 1.1 * 30 * film / 10;
        return drawn(
                Readings.of("F1", "coated", BENCH)
                        .number(Axis.MASS.before(), scale.reads(before))
                        .number(Axis.MASS.after(), scale.reads(before + gained))
                        .number(DimensionsForm.AREA, 30)
                        .number(DimensionsForm.FILM_DENSITY, 1.1),
                1000 * film);
    }

    private static Sweep.Drawn shrunk(Random random) {
        Dial caliper = Dial.drawn(random, 0, 0.02, 0.01);
        double change = -0.5 - random.nextDouble();
        double before = 80 + 0.2 * random.nextDouble();
        return drawn(
                Readings.of("F1", "annealed", BENCH)
                        .number(Axis.LENGTH.before(), caliper.reads(before))
                        .number(Axis.LENGTH.after(), caliper.reads(before * (1 + change / 100))),
                change);
    }

    private static Sweep.Drawn drawn(Readings.Builder readings, double truth) {
        return Sweep.Drawn.of(new Dimensions(), readings, truth);
    }
}
