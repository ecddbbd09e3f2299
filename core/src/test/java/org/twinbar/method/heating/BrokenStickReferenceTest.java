package org.twinbar.method.heating;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

class BrokenStickReferenceTest {

    private static final Checks CHECKS = Checks.of(BrokenStickReferenceTest.class);

    /** Deflections of N.13 at 30 to 80 °C by 2.5. */
    private static final double[] NOISY = {
        0.3144, 0.1502, 0.1853, 0.2094, 0.1915, 0.2026, 0.2974, 0.2642, 0.2876, 0.3995, 0.3178,
        0.5158, 1.3791, 2.1662, 3.1298, 3.9434, 4.7603, 5.6746, 6.5748, 7.5094, 8.3870
    };

    private static final double[] WEAK = {
        0.3, -0.2, 0.1, 0.5, -0.4, 0.2, 0.0, -0.1, 0.3, 0.1, 0.2, 0.6, 0.3, 0.9, 0.5, 1.0, 0.8, 1.3,
        0.9, 1.6
    };

    private static double[] places(double first, double step, int count) {
        double[] places = new double[count];
        for (int i = 0; i < count; i++) {
            places[i] = first + step * i;
        }
        return places;
    }

    @Test
    void bendWithoutScatter() {
        double[] x = places(30, 2.5, 21);
        double[] y = new double[21];
        for (int i = 0; i < 21; i++) {
            y[i] = 0.20 + 0.004 * (x[i] - 30) + 0.35 * Math.max(0, x[i] - 57.3);
        }
        CHECKS.row("exact").expects(BrokenStick.through(x, y).orElseThrow().bend());
    }

    @Test
    void bendWithScatter() {
        BrokenStick stick = BrokenStick.through(places(30, 2.5, 21), NOISY).orElseThrow();
        CHECKS.row("bend").expects(stick.bend());
        CHECKS.row("bend-scipy").expects(stick.bend());
        CHECKS.row("bend-u").expects(stick.standardUncertainty());
        CHECKS.row("bend-u-numpy").expects(stick.standardUncertainty());
        CHECKS.row("lower").expects(stick.lower());
        CHECKS.row("upper").expects(stick.upper());
        CHECKS.row("lower-profile").expects(stick.lower());
        CHECKS.row("upper-profile").expects(stick.upper());
        CHECKS.row("slope-below").expects(stick.slopeBelow());
        CHECKS.row("slope-above").expects(stick.slopeAbove());
        CHECKS.row("squares").expects(stick.sumOfSquares());
        CHECKS.row("scatter").expects(stick.scatter());
        CHECKS.row("runs").expects(stick.runsScore());
    }

    @Test
    void chanceOfTheBendInAStraightLine() {
        BrokenStick stick = BrokenStick.through(places(0, 1, 20), WEAK).orElseThrow();
        CHECKS.row("straight").expects(stick.straightLineProbability(999, 5));
    }
}
