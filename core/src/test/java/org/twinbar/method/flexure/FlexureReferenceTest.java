package org.twinbar.method.flexure;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Property;
import org.twinbar.method.Result;

class FlexureReferenceTest {

    private static final Checks CHECKS = Checks.of(FlexureReferenceTest.class);
    private static final Bending BAR = new Bending(64, 10, 4);

    @Test
    void stressFromLargestForce() {
        Result result = Bent.bend(Bent.bar().number(BendForm.PEAK_FORCE, 80));
        CHECKS.row("stress").expects(Exactly.value(result, BendForm.STRENGTH));
    }

    @Test
    void strainsAndDeflections() {
        CHECKS.row("strain").expects(BAR.strain(0.5));
        CHECKS.row("deflection-from").expects(BAR.deflection(0.0005));
        CHECKS.row("deflection-to").expects(BAR.deflection(0.0025));
        CHECKS.row("accuracy").expects(1000 * 0.01 * BAR.deflection(0.0020));
        CHECKS.row("conventional").expects(100 * BAR.strain(BAR.conventionalDeflection()));
        CHECKS.row("speed").expects(BAR.speed(0.01));
    }

    @Test
    void longDeflections() {
        CHECKS.row("long-factor").expects(BAR.longDeflectionFactor(8));
        Result result = Bent.bend(Bent.straight(Bent.bar(), 10, 8));
        CHECKS.row("long-stress").expects(Exactly.value(result, BendForm.STRENGTH));
    }

    @Test
    void modulusFromASlope() {
        Result result = Bent.bend(Bent.straight(Bent.bar(), 40, 4));
        CHECKS.row("modulus").expects(Exactly.value(result, BendForm.MODULUS));
    }

    @Test
    void budgets() {
        Bench bench = Exactly.bench().withGain("load cell", 0.0025);
        Result result = Bent.bend(Bent.straight(
                Bent.bar(bench)
                        .numberWithUncertainty(BendForm.SPAN, 64, 0.1)
                        .numberWithUncertainty(BendForm.WIDTH, 10, 0.02)
                        .numberWithUncertainty(BendForm.THICKNESS, 4, 0.02),
                40,
                4));
        CHECKS.row("budget-stress").expects(relative(result, BendForm.STRENGTH));
        CHECKS.row("budget-modulus").expects(relative(result, BendForm.MODULUS));
    }

    private static double relative(Result result, Property property) {
        return 100 * result.budgets().get(property).u() / Exactly.value(result, property);
    }
}
