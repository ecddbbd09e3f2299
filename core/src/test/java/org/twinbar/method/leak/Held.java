package org.twinbar.method.leak;

import org.twinbar.instrument.Bench;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

/** Vessels for tests, and short ways to what came out. */
final class Held {

    private Held() {}

    static Readings.Builder vessel() {
        return Readings.of("V1", "plain", Bench.usual());
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new Leak(), readings.build());
    }

    static Yield yield(Result result, Property property) {
        return result.yields().get(property);
    }
}
