package org.twinbar.method.hardness;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class HardnessReferenceTest {

    private static final Checks CHECKS = Checks.of(HardnessReferenceTest.class);

    @Test
    void endsOfTheScale() {
        CHECKS.row("deepest").expects(Hardness.depth(0));
        CHECKS.row("none").expects(Hardness.depth(100));
    }

    @Test
    void meanOfPlaces() {
        Result result = Result.of(new Hardness(), HardnessTest.places().build());
        Yield.Value mean = (Yield.Value) result.yields().get(HardnessForm.MEAN);
        CHECKS.row("mean").expects(mean.value());
        CHECKS.row("mean-u").expects(result.budgets().get(HardnessForm.MEAN).u());
    }
}
