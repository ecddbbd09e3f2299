package org.twinbar.method.density;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

class DensityReferenceTest {

    private static final Checks CHECKS = Checks.of(DensityReferenceTest.class);

    @Test
    void waterIsAsDenseAsTanakaSays() {
        for (int celsius : new int[] {20, 21, 22, 23, 25}) {
            CHECKS.row("water-" + celsius).expects(Water.density(celsius));
        }
    }

    @Test
    void twoWeighingsGiveTheDensity() {
        CHECKS.row("vacuum").expects(new Weighing(5, 4, 0.99754, 0).density());
        CHECKS.row("buoyancy").expects(new Weighing(5, 4, 0.99754, 0.0012).density());
    }

    @Test
    void massesGiveTheBudget() {
        Bench exact = Weighed.fineScale();
        Result result = Weighed.result(Readings.of("D1", "plain", exact)
                .numberWithUncertainty(DensityForm.IN_AIR, 5, 0.0003)
                .numberWithUncertainty(DensityForm.IN_LIQUID, 1, 0.0003)
                .number(DensityForm.LIQUID_DENSITY, 0.99754)
                .setting(DensityForm.AIR_DENSITY, 0));
        var budget = result.budgets().get(DensityForm.DENSITY);
        CHECKS.row("u").expects(100 * budget.u() / budget.value());
    }
}
