package org.twinbar.method.gloss;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Result;

class GlossReferenceTest {

    private static final Checks CHECKS = Checks.of(GlossReferenceTest.class);

    @Test
    void blackGlass() {
        for (int degrees : new int[] {20, 60, 85}) {
            CHECKS.row("black-" + degrees)
                    .expects(Fresnel.reflectance(Fresnel.BLACK_GLASS, degrees));
        }
    }

    @Test
    void smoothSurfaces() {
        for (int degrees : new int[] {20, 60, 85}) {
            CHECKS.row("resin-" + degrees).expects(Fresnel.gloss(1.50, degrees));
        }
        CHECKS.row("epoxy-60").expects(Fresnel.gloss(1.54, 60));
    }

    @Test
    void endsOfFresnelsEquations() {
        CHECKS.row("upright").expects(Fresnel.reflectance(1.5, 0));
        CHECKS.row("grazing").expects(Fresnel.reflectance(1.5, 90));
    }

    @Test
    void meanOfReadings() {
        Result result = GlossTest.of(GlossTest.plate(Exactly.bench())
                .number(Geometry.AT_60.along(), 71.2, 70.4, 72.0, 69.8, 71.5, 70.9));
        CHECKS.row("mean").expects(Exactly.value(result, Geometry.AT_60.alongYielded()));
        CHECKS.row("mean-u").expects(Exactly.u(result, Geometry.AT_60.alongYielded()));
    }
}
