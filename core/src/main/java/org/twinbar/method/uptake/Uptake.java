package org.twinbar.method.uptake;

import java.util.List;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Detection;
import org.twinbar.method.Input;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;

/** Weighed before and after immersion in water, in the manner of ISO 62. */
public final class Uptake implements TestMethod {

    static final Finding.Kind VOIDS = Finding.Kind.note(
            "voids-included",
            "Water that filled open voids counts as taken up; ISO 62 is not for bodies with voids,"
                    + " so call it uptake with voids included.");
    static final Finding.Kind LOST_MATTER = Finding.Kind.warning(
            "lost-matter",
            "Dried again it weighed %s g less than before: something dissolved, or it was not dry"
                    + " at first. The uptake counts from the mass dried again.");
    static final Finding.Kind LIGHTER = Finding.Kind.warning(
            "lighter-after-water",
            "It came out %s g lighter, more than weighing explains: it was not dry before, or lost"
                    + " something in the water. Dry it again and weigh.");
    static final Finding.Kind BELOW_DETECTION = Finding.Kind.note(
            "below-detection-limit",
            "It gained %s g, less than the %s g that two weighings can tell (three standard"
                    + " uncertainties); leave it in for longer, or weigh on a finer scale.");
    static final Finding.Kind NOT_DRIED = Finding.Kind.warning(
            "not-dried",
            "It was not dried before, so what it had taken up from the air is missing from the"
                    + " uptake.");
    static final Finding.Kind DRYING_UNKNOWN = Finding.Kind.note(
            "drying-not-noted",
            "Whether it was dried to constant mass before was not noted; ISO 62 asks for it.");

    private static final String UNDETECTED = "the gain is below what the two weighings can tell";

    private static final double SECONDS_PER_HOUR = 3600;

    @Override
    public Description description() {
        return UptakeForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return UptakeClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(UptakeForm.DESCRIPTION);
        if (!readings.has(UptakeForm.DRY) || !readings.has(UptakeForm.WET)) {
            return out.restMissing("it was not weighed dry and wet").build();
        }
        double dry = readings.number(UptakeForm.DRY);
        double gained = gained(readings, UptakeForm.WET);
        Detection detection = readings.once(
                "detection", Detection.class, () -> new Detection(ofDifference(readings)));
        double seen = readings.once("gained", Double.class, () -> gained);
        boolean detected = detection.detects(seen);
        out.put(
                UptakeForm.UPTAKE,
                detected
                        ? Yield.of(uptake(gained, dry))
                        : new Yield.Below(uptake(detection.below(seen), dry), UNDETECTED));
        if (readings.has(UptakeForm.SATURATED)) {
            double saturated = gained(readings, UptakeForm.SATURATED);
            out.value(UptakeForm.SATURATION, 100 * saturated / dry);
            out.put(
                    UptakeForm.DIFFUSION,
                    detected
                            ? diffusion(readings, gained / saturated)
                            : new Yield.Missing(UNDETECTED));
        } else {
            out.restMissing("it was not weighed when it gained no more");
        }
        if (readings.atRest()) {
            find(readings, gained, detection.limit(), out);
        }
        return out.build();
    }

    /**
     * Returns the uptake (%).
     *
     * <pre>c = (m_wet − m₀)/m_dry · 100 %</pre>
     *
     * <p>m₀ is the mass dried again where there is one, so that what dissolved is not taken off,
     * else m_dry. Source: ISO 62:2008, clause 7; the use of m₀ from memory.
     */
    private static double uptake(double gained, double dry) {
        return 100 * gained / dry;
    }

    private static double gained(Readings readings, Input wet) {
        return readings.number(wet) - readings.number(start(readings));
    }

    private static Input start(Readings readings) {
        return readings.has(UptakeForm.REDRIED) ? UptakeForm.REDRIED : UptakeForm.DRY;
    }

    /** Returns D (mm²/s) = x·d²/t, x from the share of saturation that was reached. */
    private static Yield diffusion(Readings readings, double share) {
        if (!readings.has(UptakeForm.IMMERSED) || !readings.has(UptakeForm.THICKNESS)) {
            return new Yield.Missing("time in the water and thickness were not noted");
        }
        boolean possible = share > 0 && share < 1;
        if (readings.atRest() && !possible) {
            return new Yield.Missing("the gain is not between nothing and the saturated one");
        }
        double thickness = readings.number(UptakeForm.THICKNESS);
        double seconds = SECONDS_PER_HOUR * readings.number(UptakeForm.IMMERSED);
        return Yield.of(Fick.at(share) * thickness * thickness / seconds);
    }

    private static double ofDifference(Readings readings) {
        double wet = readings.readingUncertainty(UptakeForm.WET);
        double start = readings.readingUncertainty(start(readings));
        return Math.sqrt(wet * wet + start * start);
    }

    private static void find(Readings readings, double gained, double limit, Outcome.Builder out) {
        out.found(VOIDS.with());
        if (gained < limit && -gained <= limit) {
            out.found(BELOW_DETECTION.with(Figures.two(gained), Figures.two(limit)));
        }
        if (-gained > limit) {
            out.found(LIGHTER.with(Figures.two(-gained)));
        }
        if (!readings.has(UptakeForm.DRIED)) {
            out.found(DRYING_UNKNOWN.with());
        } else if (readings.word(UptakeForm.DRIED).equals(UptakeForm.NO)) {
            out.found(NOT_DRIED.with());
        }
        if (readings.has(UptakeForm.REDRIED)) {
            double lost = readings.number(UptakeForm.DRY) - readings.number(UptakeForm.REDRIED);
            double before = readings.readingUncertainty(UptakeForm.DRY);
            double after = readings.readingUncertainty(UptakeForm.REDRIED);
            if (new Detection(Math.sqrt(before * before + after * after)).detects(lost)) {
                out.found(LOST_MATTER.with(Figures.two(lost)));
            }
        }
    }
}
