package org.twinbar.method.tensile;

import java.util.Map;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

/** Readings of pulls for tests, and short ways to what came out. */
final class Pulled {

    private Pulled() {}

    /** A bench whose instruments are without error, so that a test adds only what it is about. */
    static Bench exactBench() {
        Bench bench = Bench.usual();
        for (String name :
                new String[] {"load cell", "caliper", "ruler", "extensometer", "crosshead", "scale"
                }) {
            String unit = name.equals("load cell") ? "0 N" : name.equals("scale") ? "0 g" : "0 mm";
            bench = bench.withResolution(name, Quantity.parse(unit))
                    .withZero(name, Quantity.parse(unit))
                    .withGain(name, 0);
        }
        return bench.withResolution("strain extensometer", Quantity.parse("0 %"))
                .withGain("strain extensometer", 0);
    }

    static Readings.Builder bar(double width, double thickness) {
        return bar(width, thickness, exactBench());
    }

    static Readings.Builder bar(double width, double thickness, Bench bench) {
        return Readings.of("A1", "plain", bench)
                .number(PullForm.WIDTH, width)
                .number(PullForm.THICKNESS, thickness);
    }

    static Result pull(Readings.Builder readings) {
        return Result.of(new Tensile(), readings.build());
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

    static double u(Result result, Property property) {
        return result.budgets().get(property).u();
    }

    static Map<Property, Yield> yields(Readings.Builder readings) {
        return pull(readings).yields();
    }
}
