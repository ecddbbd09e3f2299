package org.twinbar.method.oven;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Result;

class OvenReferenceTest {

    private static final Checks CHECKS = Checks.of(OvenReferenceTest.class);
    private static final Cantilever BAR = new Cantilever(60, 10, 4);
    private static final double FORCE = 200 * Cantilever.NEWTON_PER_GRAM;

    @Test
    void stressDeflectionAndStrain() {
        Result result = Ovens.result(Ovens.bar());
        CHECKS.row("stress").expects(Exactly.value(result, OvenForm.STRESS));
        CHECKS.row("deflection").expects(BAR.deflection(FORCE, 3200));
        CHECKS.row("strain").expects(100 * BAR.strain(BAR.deflection(FORCE, 3200)));
        CHECKS.row("sag").expects(BAR.deflectionFor(0.002));
    }

    @Test
    void ownWeight() {
        double tip = Exactly.value(Ovens.result(Ovens.bar()), OvenForm.STRESS);
        double both = Exactly.value(
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
        CHECKS.row("lag-still").expects(Lag.exactly(2.0 / 60, still).settled());
        CHECKS.row("lag-fan").expects(Lag.exactly(2.0 / 60, fan).settled());
        CHECKS.row("lag-early").expects(Lag.exactly(2.0 / 60, 318.86).at(30, 20));
    }

    @Test
    void lagOfASlabBehindARamp() {
        CHECKS.row("slab-faces").expects(Warming.slabFaces(2.0 / 60, 4, Warming.STILL_AIR));
        CHECKS.row("slab-centre").expects(Warming.slabCentre(2.0 / 60, 4, Warming.STILL_AIR));
        CHECKS.row("slab-fan").expects(Warming.slabFaces(2.0 / 60, 4, Warming.FAN));
        double mean = Warming.slabFaces(2.0 / 60, 4, Warming.STILL_AIR)
                + 2.0 / 60 * Warming.behindFaces(4);
        CHECKS.row("slab-mean").expects(mean);
    }
}
