package org.twinbar.method.flexure;

import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Readings of bent bars for tests, and short ways to what came out. */
final class Bent {

    private Bent() {}

    /** A bar of 10 by 4 mm on a span of 64 mm. */
    static Readings.Builder bar() {
        return bar(Exactly.bench());
    }

    static Readings.Builder bar(Bench bench) {
        return Readings.of("A1", "plain", bench)
                .number(BendForm.SPAN, 64)
                .number(BendForm.WIDTH, 10)
                .number(BendForm.THICKNESS, 4)
                .word(BendForm.TENSION_FACE, "bed");
    }

    /** A straight rise of so many N/mm in 200 rows to a deflection, and a collapse. */
    static Readings.Builder straight(Readings.Builder bar, double slope, double toDeflection) {
        double[] force = new double[206];
        double[] deflection = new double[206];
        for (int row = 0; row < 206; row++) {
            deflection[row] = toDeflection * Math.min(row, 200) / 200;
            force[row] = row <= 200 ? slope * deflection[row] : 0;
        }
        return bar.channel(BendForm.FORCE, force).channel(BendForm.DEFLECTION, deflection);
    }

    static Result bend(Readings.Builder readings) {
        return Result.of(new Flexure(), readings.build());
    }
}
