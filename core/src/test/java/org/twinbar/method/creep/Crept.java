package org.twinbar.method.creep;

import java.util.Arrays;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

/** Records of creep for tests, and short ways to what came out. */
final class Crept {

    private Crept() {}

    /** A bench whose instruments are without error, so that a test adds only what it is about. */
    static Bench exactBench() {
        Bench bench = Bench.usual();
        String[][] kinds = {
            {"caliper", "mm"},
            {"load cell", "N"},
            {"extensometer", "mm"},
            {"strain extensometer", "%"},
            {"thermometer", "K"}
        };
        for (String[] kind : kinds) {
            bench = bench.withResolution(kind[0], Quantity.parse("0 " + kind[1]))
                    .withZero(kind[0], Quantity.parse("0 " + kind[1]))
                    .withGain(kind[0], 0);
        }
        return bench;
    }

    /** A bar at 5 MPa in a room of 23 °C, with strains (%) at hours. */
    static Readings.Builder bar(double[] hours, double[] strains) {
        return bar(exactBench(), hours, strains);
    }

    static Readings.Builder bar(Bench bench, double[] hours, double[] strains) {
        double[] room = new double[hours.length];
        Arrays.fill(room, 23);
        return Readings.of("K1", "plain", bench)
                .number(CreepForm.STRESS, 5)
                .channel(CreepForm.TIME, hours)
                .channel(CreepForm.STRAIN, strains)
                .channel(CreepForm.TEMPERATURE, room);
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new Creep(), readings.build());
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
        return yield instanceof Yield.Missing missing ? missing.reason() : "a value: " + yield;
    }
}
