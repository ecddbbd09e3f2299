package org.twinbar.method.tensile;

import java.util.Map;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

/** Readings of pulls for tests, and short ways to what came out. */
final class Pulled {

    private Pulled() {}

    static Readings.Builder bar(double width, double thickness) {
        return bar(width, thickness, Exactly.bench());
    }

    static Readings.Builder bar(double width, double thickness, Bench bench) {
        return Readings.of("A1", "plain", bench)
                .number(PullForm.WIDTH, width)
                .number(PullForm.THICKNESS, thickness);
    }

    static Result pull(Readings.Builder readings) {
        return Result.of(new Tensile(), readings.build());
    }

    static Map<Property, Yield> yields(Readings.Builder readings) {
        return pull(readings).yields();
    }
}
