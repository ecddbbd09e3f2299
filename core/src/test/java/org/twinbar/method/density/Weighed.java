package org.twinbar.method.density;

import org.twinbar.instrument.Bench;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

/** Weighings for tests, and short ways to what came out. */
final class Weighed {

    private Weighed() {}

    static Bench fineScale() {
        return Bench.usual()
                .withResolution("scale", Quantity.parse("0.001 g"))
                .withGain("scale", 0);
    }

    /** A part of 5 g that pushes 4 g of water aside at 23 °C. */
    static Readings.Builder sound() {
        return Readings.of("D1", "plain", fineScale())
                .number(DensityForm.IN_AIR, 5)
                .number(DensityForm.IN_LIQUID, 1)
                .number(DensityForm.TEMPERATURE, 23)
                .word(DensityForm.BUBBLES, "none");
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new Density(), readings.build());
    }

    static double value(Readings.Builder readings, Property property) {
        Yield yield = result(readings).yields().get(property);
        if (yield instanceof Yield.Value value) {
            return value.value();
        }
        throw new AssertionError(property.name() + " is " + yield);
    }
}
