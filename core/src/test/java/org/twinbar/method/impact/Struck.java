package org.twinbar.method.impact;

import org.twinbar.instrument.Bench;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

/** Readings of blows for tests, and short ways to what came out. */
final class Struck {

    private Struck() {}

    /** A bench whose instruments are without error, so that a test adds only what it is about. */
    static Bench exactBench() {
        Bench bench = Bench.usual();
        String[][] kinds = {
            {"caliper", "mm"},
            {"ruler", "mm"},
            {"scale", "g"},
            {"timer", "s"},
            {"angle scale", "deg"}
        };
        for (String[] kind : kinds) {
            bench = bench.withResolution(kind[0], Quantity.parse("0 " + kind[1]))
                    .withZero(kind[0], Quantity.parse("0 " + kind[1]))
                    .withGain(kind[0], 0);
        }
        return bench;
    }

    /** A notched bar of 4 by 8 mm. */
    static Readings.Builder bar(Bench bench) {
        return Readings.of("A1", "plain", bench)
                .number(ImpactForm.THICKNESS, 4)
                .number(ImpactForm.WIDTH, 8);
    }

    /** The same, struck by a hammer of a known moment between two angles. */
    static Readings.Builder blow(double momentNm, double release, double rise) {
        return bar(exactBench())
                .number(ImpactForm.MOMENT, momentNm)
                .number(ImpactForm.RELEASE_ANGLE, release)
                .number(ImpactForm.RISE_ANGLE, rise);
    }

    static Result strike(Readings.Builder readings) {
        return Result.of(new Impact(), readings.build());
    }

    static double value(Result result, Property property) {
        Yield yield = result.yields().get(property);
        if (yield instanceof Yield.Value value) {
            return value.value();
        }
        throw new AssertionError(property.name() + " is " + yield);
    }

    static String reason(Result result, Property property) {
        Yield yield = result.yields().get(property);
        return yield instanceof Yield.Missing missing ? missing.reason() : "a value: " + yield;
    }

    static boolean found(Result result, String code) {
        return result.findings().stream().anyMatch(finding -> finding.code().equals(code));
    }

    static double u(Result result, Property property) {
        return result.budgets().get(property).u();
    }
}
