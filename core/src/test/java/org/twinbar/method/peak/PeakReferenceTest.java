package org.twinbar.method.peak;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class PeakReferenceTest {

    private static final Checks CHECKS = Checks.of(PeakReferenceTest.class);

    private static Readings.Builder part() {
        return Readings.of("T1", "plain", Bench.usual());
    }

    @Test
    void aWallCarriesAMeanStress() {
        Result result = Result.of(
                new InsertPullout(),
                part().number(InsertPullout.FORCE, 850)
                        .number(InsertPullout.DIAMETER, 5.6)
                        .number(InsertPullout.DEPTH, 8.1)
                        .build());
        CHECKS.row("stress")
                .expects(((Yield.Value) result.yields().get(InsertPullout.STRESS)).value());
    }

    @Test
    void aPlateauHasAMean() {
        Result result = Result.of(
                new Peel(),
                part().channel(Peel.TRACE, new double[] {9, 2, 3, 2, 3, 2, 3, 2})
                        .number(Peel.WIDTH, 20)
                        .build());
        CHECKS.row("plateau").expects(((Yield.Value) result.yields().get(Peel.STRENGTH)).value());
    }
}
