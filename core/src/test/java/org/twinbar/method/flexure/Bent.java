package org.twinbar.method.flexure;

import org.twinbar.instrument.Bench;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

/** Readings of bent bars for tests, and short ways to what came out. */
final class Bent {

    private Bent() {}

    /** A bench whose instruments are without error, so that a test adds only what it is about. */
    static Bench exactBench() {
        Bench bench = Bench.usual();
        String[][] kinds = {
            {"caliper", "mm"},
            {"ruler", "mm"},
            {"load cell", "N"},
            {"deflection gauge", "mm"},
            {"scale", "g"}
        };
        for (String[] kind : kinds) {
            bench = bench.withResolution(kind[0], Quantity.parse("0 " + kind[1]))
                    .withZero(kind[0], Quantity.parse("0 " + kind[1]))
                    .withGain(kind[0], 0);
        }
        return bench;
    }

    /** A bar of 10 by 4 mm on a span of 64 mm. */
    static Readings.Builder bar() {
        return bar(exactBench());
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

    static double value(Result result, Property property) {
        Yield yield = result.yields().get(property);
        if (yield instanceof Yield.Value value) {
            return value.value();
        }
        if (yield instanceof Yield.Fitted fitted) {
            return fitted.value();
        }
        throw new AssertionError(property.name() + " is " + yield);
    }

    static String reason(Result result, Property property) {
        Yield yield = result.yields().get(property);
        return yield instanceof Yield.Missing missing
                ? missing.reason()
                : yield instanceof Yield.AtLeast bound ? bound.reason() : "a value: " + yield;
    }

    static boolean found(Result result, String code) {
        return result.findings().stream().anyMatch(finding -> finding.code().equals(code));
    }
}
