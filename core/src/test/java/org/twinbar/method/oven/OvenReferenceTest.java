package org.twinbar.method.oven;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Result;

class OvenReferenceTest {

    private static final Checks CHECKS = Checks.of(OvenReferenceTest.class);
    private static final Cantilever BAR = new Cantilever(60, 10, 4);
    private static final double FORCE = 200 * Cantilever.NEWTON_PER_GRAM;

    @Test
    void stressDeflectionAndStrain() {
        Result result = Ovens.result(Ovens.bar());
        CHECKS.row("stress").expects(Ovens.value(result, OvenForm.STRESS));
        CHECKS.row("deflection").expects(BAR.deflection(FORCE, 3200));
        CHECKS.row("strain").expects(100 * BAR.strain(BAR.deflection(FORCE, 3200)));
        CHECKS.row("sag").expects(BAR.deflectionFor(0.002));
    }

    @Test
    void ownWeight() {
        double tip = Ovens.value(Ovens.result(Ovens.bar()), OvenForm.STRESS);
        double both = Ovens.value(
                Ovens.result(Ovens.bar().number(OvenForm.DENSITY, 1.24)), OvenForm.STRESS);
        CHECKS.row("weight-stress").expects(both - tip);
        double weight = 1.24e-3 * 40 * Cantilever.NEWTON_PER_GRAM;
        CHECKS.row("weight-deflection").expects(BAR.deflectionOfWeight(weight, 3200));
    }

    @Test
    void tipMassForAStress() {
        CHECKS.row("mass-low").expects(BAR.tipMass(0.45));
        CHECKS.row("mass-high").expects(BAR.tipMass(1.80));
    }

    @Test
    void lagOfABarBehindARamp() {
        double still = Warming.timeConstant(10, 4, Warming.STILL_AIR);
        double fan = Warming.timeConstant(10, 4, Warming.FAN);
        CHECKS.row("bar-still").expects(still);
        CHECKS.row("bar-fan").expects(fan);
        CHECKS.row("lag-still").expects(new Lag(2.0 / 60, still, 1, 0).settled());
        CHECKS.row("lag-fan").expects(new Lag(2.0 / 60, fan, 1, 0).settled());
        CHECKS.row("lag-early").expects(new Lag(2.0 / 60, 318.86, 1, 0).at(30, 20));
    }
}
