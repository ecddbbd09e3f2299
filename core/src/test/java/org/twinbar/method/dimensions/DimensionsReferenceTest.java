package org.twinbar.method.dimensions;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;

class DimensionsReferenceTest {

    private static final Checks CHECKS = Checks.of(DimensionsReferenceTest.class);

    @Test
    void massOverAnAreaIsAFilm() {
        CHECKS.row("film")
                .expects(Dimensions.filmByMass(Readings.of("C1", "coated", Bench.usual())
                        .number(Axis.MASS.before(), 30)
                        .number(Axis.MASS.after(), 30.9)
                        .number(DimensionsForm.AREA, 120)
                        .number(DimensionsForm.FILM_DENSITY, 1.1)
                        .build()));
    }
}
