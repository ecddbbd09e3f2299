package org.twinbar.method.impact;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.quantity.Quantity;
import org.twinbar.uncertainty.MonteCarlo;

class ImpactReferenceTest {

    private static final Checks CHECKS = Checks.of(ImpactReferenceTest.class);

    @Test
    void energiesOfAHammerByMassAndCentreOfMass() {
        Hammer hammer = new Hammer(Hammer.G * 1.2 * 0.35, 0.4);
        CHECKS.row("available").expects(hammer.availableJ(140));
        Result result = Struck.strike(Struck.bar(Exactly.bench())
                .number(ImpactForm.MASS, 1.2)
                .number(ImpactForm.CENTRE_OF_MASS, 350)
                .number(ImpactForm.RELEASE_ANGLE, 140)
                .number(ImpactForm.RISE_ANGLE, 110));
        CHECKS.row("absorbed").expects(Exactly.value(result, ImpactForm.ENERGY));
    }

    @Test
    void lengthFromSwings() {
        CHECKS.row("reduced-length").expects(Hammer.reducedLength(1.2686, 0));
        CHECKS.row("amplitude-5").expects(Hammer.amplitudeFactor(5));
        CHECKS.row("amplitude-10").expects(Hammer.amplitudeFactor(10));
        CHECKS.row("amplitude-15").expects(Hammer.amplitudeFactor(15));
    }

    @Test
    void hammerOfRodAndBob() {
        Hammer hammer = Hammer.ofRodAndBob(0.2, 0.4, 1, 0.38);
        CHECKS.row("compound-inertia").expects(hammer.inertia());
        CHECKS.row("compound-length").expects(hammer.reducedLengthM());
        CHECKS.row("compound-period").expects(hammer.periodS());
        CHECKS.row("compound-moment").expects(hammer.momentNm());
        CHECKS.row("compound-speed").expects(hammer.speed(140, hammer.reducedLengthM()));
    }

    @Test
    void fallHeights() {
        for (double speed : new double[] {2.9, 3.46, 3.5, 3.8}) {
            CHECKS.row("fall-" + speed).expects(Hammer.fallHeight(speed));
        }
    }

    @Test
    void frictionByThreeReadings() {
        CHECKS.row("pointer").expects(Friction.pointer(Hammer.G * 0.6, 147.9, 148.4));
        CHECKS.row("air").expects(Friction.airAndBearing(Hammer.G * 0.6, 148.4, 143.5));
        CHECKS.row("loss")
                .expects(Friction.byThreeReadings(Hammer.G * 0.6, 150, 120, 147.9, 148.4, 143.5));
        Result result = Struck.strike(Struck.blow(Hammer.G * 0.6, 150, 120)
                .number(ImpactForm.FREE_FIRST, 147.9)
                .number(ImpactForm.FREE_SECOND, 148.4)
                .number(ImpactForm.FREE_THIRD, 143.5));
        CHECKS.row("corrected").expects(Exactly.value(result, ImpactForm.ENERGY));
    }

    /**
     * C-4 is given in energies of a dial; a height of 0.610 m and an arm of 0.400 m make angles of
     * them.
     */
    @Test
    void frictionByTwoReadings() {
        double moment = 2.710 / (0.610 / 0.400);
        double release = angle(0);
        double rise = angle(0.500 / 2.710);
        double first = angle(0.025 / 2.710);
        double second = angle(0.010 / 2.710);
        CHECKS.row("d256-loss")
                .expects(Friction.byTwoReadings(moment, release, rise, first, second));
        Result result = Struck.strike(Struck.blow(moment, release, rise)
                .number(ImpactForm.THICKNESS, 12.7)
                .number(ImpactForm.FREE_FIRST, first)
                .number(ImpactForm.FREE_SECOND, second));
        CHECKS.row("d256-strength").expects(Exactly.value(result, ImpactForm.RESISTANCE));
    }

    private static double angle(double shareOfEnergy) {
        return Math.toDegrees(StrictMath.acos(1 - 0.610 / 0.400 * (1 - shareOfEnergy)));
    }

    @Test
    void strengthsOfAnEnergy() {
        Result notched = Struck.strike(hanging(0.35));
        CHECKS.row("notched").expects(Exactly.value(notched, ImpactForm.STRENGTH));
        CHECKS.row("per-metre").expects(Exactly.value(notched, ImpactForm.RESISTANCE));
        Result whole = Struck.strike(hanging(2.1).number(ImpactForm.WIDTH, 10));
        CHECKS.row("unnotched").expects(Exactly.value(whole, ImpactForm.STRENGTH));
    }

    /** A hammer that falls from 90° and stops at the bottom gives just its moment. */
    private static Readings.Builder hanging(double energy) {
        double moment = energy / (1 - Hammer.cos(90));
        return Struck.blow(moment, 90, 0);
    }

    @Test
    void resolutionOfTwoHeights() {
        CHECKS.row("resolution").expects(1000 * Exactly.u(drop(5), ImpactForm.ENERGY));
        CHECKS.row("resolution-5").expects(relative(drop(5)));
        CHECKS.row("resolution-18.8").expects(relative(drop(18.8)));
    }

    private static double relative(Result result) {
        return 100
                * Exactly.u(result, ImpactForm.ENERGY)
                / Exactly.value(result, ImpactForm.ENERGY);
    }

    /** An effective mass of 1 kg falls 428.8 mm and comes up again by all but a little. */
    private static Result drop(double lostMm) {
        var bench = Exactly.bench()
                .withResolution("release_height", Quantity.parse("1 mm"))
                .withResolution("rise_height", Quantity.parse("1 mm"));
        return Struck.strike(Struck.bar(bench)
                .number(ImpactForm.MOMENT, Hammer.G * 0.3)
                .number(ImpactForm.RELEASE_HEIGHT, 428.8)
                .number(ImpactForm.RISE_HEIGHT, 428.8 - lostMm)
                .number(ImpactForm.HEIGHT_RADIUS, 300));
    }

    private static Readings.Builder workedExample() {
        return Struck.bar(Exactly.bench())
                .numberWithUncertainty(ImpactForm.MOMENT, 4.1188, 0.012)
                .numberWithUncertainty(ImpactForm.RELEASE_ANGLE, 140, 0.2)
                .numberWithUncertainty(ImpactForm.RISE_ANGLE, 110, 0.3)
                .numberWithUncertainty(ImpactForm.FRICTION, 0.040, 0.008)
                .numberWithUncertainty(ImpactForm.WIDTH, 8.00, 0.05)
                .numberWithUncertainty(ImpactForm.THICKNESS, 4.00, 0.02);
    }

    @Test
    void workedBudget() {
        Result result = Struck.strike(workedExample());
        CHECKS.row("budget-energy").expects(Exactly.value(result, ImpactForm.ENERGY));
        CHECKS.row("budget-u").expects(Exactly.u(result, ImpactForm.ENERGY));
        CHECKS.row("budget-strength").expects(Exactly.value(result, ImpactForm.STRENGTH));
        CHECKS.row("budget-strength-u").expects(Exactly.u(result, ImpactForm.STRENGTH));
    }

    @Test
    void workedBudgetDrawnAtRandom() {
        MonteCarlo.Drawn drawn = Result.drawn(
                        new Impact(), workedExample().build(), MonteCarlo.of(29).withBlocks(20, 20))
                .get(ImpactForm.STRENGTH);
        CHECKS.row("drawn-strength").expects(drawn.mean());
        CHECKS.row("drawn-strength-u").expects(drawn.u());
        CHECKS.row("drawn-low").expects(drawn.low());
        CHECKS.row("drawn-high").expects(drawn.high());
    }

    @Test
    void usableRange() {
        CHECKS.row("window-least").expects(StandardHammers.LEAST_SHARE * 4);
        CHECKS.row("window-most").expects(StandardHammers.LARGEST_SHARE * 4);
    }
}
