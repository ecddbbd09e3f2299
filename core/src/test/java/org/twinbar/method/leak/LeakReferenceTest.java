package org.twinbar.method.leak;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

class LeakReferenceTest {

    private static final Checks CHECKS = Checks.of(LeakReferenceTest.class);

    @Test
    void headsPress() {
        CHECKS.row("head-500").expects(Water.pressure(0.5));
        CHECKS.row("head-1000").expects(Water.pressure(1.0));
    }

    @Test
    void poresLetThroughAndHoldBack() {
        CHECKS.row("flow").expects(3600 * 1e6 * Water.flow(50e-6, 1e-3, 4900));
        CHECKS.row("barrier").expects(Water.barrier(50e-6, 110));
    }

    @Test
    void twoWeighingsResolveALoss() {
        var bench = org.twinbar.instrument.Bench.usual()
                .withResolution("scale", Quantity.parse("0.01 g"))
                .withGain("scale", 0);
        Result result = Held.result(Readings.of("V1", "plain", bench)
                .number(LeakForm.DRY_UNTIL, 24)
                .number(LeakForm.MASS_BEFORE, 200)
                .number(LeakForm.MASS_AFTER, 200));
        Yield.Below below = (Yield.Below) Held.yield(result, LeakForm.LEAK_RATE);
        CHECKS.row("detection").expects(1000 * below.bound() / 3);
    }
}
