package org.twinbar.method.rating;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class RatingReferenceTest {

    private static final Checks CHECKS = Checks.of(RatingReferenceTest.class);

    @Test
    void medianAndQuarters() {
        Readings readings = Readings.of("R1", "plain", Bench.usual())
                .number(Rating.RATING, 1, 2, 2, 4, 5, 5, 5, 3)
                .build();
        Yield.Value median =
                (Yield.Value) Result.of(new Rating(), readings).yields().get(Rating.MEDIAN);
        CHECKS.row("median").expects(median.value());
        double[] sorted = {1, 2, 2, 3, 4, 5, 5, 5};
        CHECKS.row("quarter").expects(Rating.quantile(sorted, 0.25));
        CHECKS.row("three-quarters").expects(Rating.quantile(sorted, 0.75));
    }
}
