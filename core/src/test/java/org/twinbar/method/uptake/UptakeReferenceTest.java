package org.twinbar.method.uptake;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

class UptakeReferenceTest {

    private static final Checks CHECKS = Checks.of(UptakeReferenceTest.class);

    @Test
    void twoWeighingsGiveTheUptake() {
        Bench bench = Bench.usual().withResolution("scale", Quantity.parse("0.1 mg"));
        Result result = Result.of(
                new Uptake(),
                Readings.of("U1", "plain", bench)
                        .number(UptakeForm.DRY, 10.0021)
                        .number(UptakeForm.WET, 10.0523)
                        .build());
        CHECKS.row("uptake")
                .expects(((Yield.Value) result.yields().get(UptakeForm.UPTAKE)).value());
    }

    @Test
    void waterComesInAsFickSays() {
        CHECKS.row("half").expects(Fick.at(0.5));
        CHECKS.row("seventy").expects(Fick.at(0.7));
        double secondsPerSquareMillimetre = Fick.at(0.7) / 1e-6;
        CHECKS.row("hours").expects(secondsPerSquareMillimetre / 3600);
        CHECKS.row("days").expects(16 * secondsPerSquareMillimetre / 86400);
    }
}
