package org.twinbar.method.density;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;

/** What a person should know about one weighing. */
final class DensityFindings {

    static final Finding.Kind BUBBLES_SEEN = Finding.Kind.warning(
            "bubbles-seen",
            "Bubbles hung on it: each cubic millimetre of air takes %s %% off its density. Brush"
                    + " them off and weigh again.");
    static final Finding.Kind BUBBLES_NOT_NOTED = Finding.Kind.note(
            "bubbles-not-noted",
            "Whether bubbles hung on it was not noted; each cubic millimetre of air takes %s %%"
                    + " off its density.");
    static final Finding.Kind WATER_ENTERED = Finding.Kind.warning(
            "liquid-entered",
            "It came out %s g heavier: the liquid entered open voids, which then don't count as"
                    + " part of it. With them its density is %s g/cm³.");
    static final Finding.Kind DENSER_THAN_SOLID = Finding.Kind.warning(
            "denser-than-solid",
            "It is denser, %s g/cm³, than the material without voids, %s g/cm³: the solid's"
                    + " density, the liquid's or a mass is wrong.");
    static final Finding.Kind FEW_STEPS = Finding.Kind.warning(
            "small-for-the-scale",
            "It pushed only %s g of liquid aside, which the scale knows to %s %%; weigh a larger"
                    + " part or on a finer scale.");
    static final Finding.Kind OFF_TEMPERATURE = Finding.Kind.note(
            "off-standard-temperature",
            "The water was at %s °C; ISO 291 has tests made at 23 °C, give or take 2.");

    /** What a step of the scale may do to the result before it is worth a sentence; our own. */
    private static final double COARSE = 0.01;

    private static final double STANDARD_TEMPERATURE = 23;
    private static final double TOLERANCE = 2;
    private static final double CUBIC_MILLIMETRE = 0.001;

    private final Readings readings;
    private final Weighing weighing;
    private final Outcome.Builder out;

    private DensityFindings(Readings readings, Weighing weighing, Outcome.Builder out) {
        this.readings = readings;
        this.weighing = weighing;
        this.out = out;
    }

    static void of(Readings readings, Weighing weighing, Outcome.Builder out) {
        DensityFindings findings = new DensityFindings(readings, weighing, out);
        findings.lookForBubbles();
        findings.lookAtMasses();
        findings.lookAtSolid();
        findings.lookAtTemperature();
    }

    private void lookForBubbles() {
        String each = Figures.two(100 * CUBIC_MILLIMETRE / weighing.volume());
        if (!readings.has(DensityForm.BUBBLES)) {
            out.found(BUBBLES_NOT_NOTED.with(each));
        } else if (readings.word(DensityForm.BUBBLES).equals(DensityForm.SOME_BUBBLES)) {
            out.found(BUBBLES_SEEN.with(each));
        }
    }

    private void lookAtMasses() {
        double air = readings.readingUncertainty(DensityForm.IN_AIR);
        double liquid = readings.readingUncertainty(DensityForm.IN_LIQUID);
        double share = Math.sqrt(air * air + liquid * liquid) / weighing.displaced();
        if (share > COARSE) {
            out.found(
                    FEW_STEPS.with(Figures.three(weighing.displaced()), Figures.two(100 * share)));
        }
        if (readings.has(DensityForm.WIPED)) {
            double entered = readings.number(DensityForm.WIPED) - weighing.inAir();
            double wiped = readings.readingUncertainty(DensityForm.WIPED);
            if (entered > 3 * Math.sqrt(air * air + wiped * wiped)) {
                Weighing withVoids = new Weighing(
                        weighing.inAir(),
                        weighing.displaced() + entered,
                        weighing.liquid(),
                        weighing.air());
                out.found(WATER_ENTERED.with(
                        Figures.two(entered), Figures.three(withVoids.density())));
            }
        }
    }

    private void lookAtSolid() {
        if (!readings.has(DensityForm.SOLID_DENSITY)) {
            return;
        }
        double solid = readings.number(DensityForm.SOLID_DENSITY);
        double air = readings.readingUncertainty(DensityForm.IN_AIR);
        double liquid = readings.readingUncertainty(DensityForm.IN_LIQUID);
        double masses = Math.sqrt(air * air + liquid * liquid) / weighing.displaced();
        double known = readings.readingUncertainty(DensityForm.SOLID_DENSITY) / solid;
        if (weighing.density() > solid * (1 + 3 * masses + 3 * known)) {
            out.found(DENSER_THAN_SOLID.with(
                    Figures.three(weighing.density()), Figures.three(solid)));
        }
    }

    private void lookAtTemperature() {
        if (readings.has(DensityForm.TEMPERATURE)) {
            double celsius = readings.number(DensityForm.TEMPERATURE);
            if (Math.abs(celsius - STANDARD_TEMPERATURE) > TOLERANCE) {
                out.found(OFF_TEMPERATURE.with(Figures.three(celsius)));
            }
        }
    }
}
