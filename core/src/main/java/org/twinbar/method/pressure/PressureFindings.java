package org.twinbar.method.pressure;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.curve.CurveFindings;
import org.twinbar.method.curve.Line;

/** What a person should know about one vessel's record. */
final class PressureFindings {

    static final Finding.Kind TEMPERATURE_UNKNOWN = Finding.Kind.warning(
            "temperature-not-recorded",
            "The air's temperature was not recorded; each degree that it cools looks like a loss"
                    + " of %s kPa. Lay a thermometer beside the vessel.");
    static final Finding.Kind TEMPERATURE_MOVED = Finding.Kind.note(
            "temperature-moved",
            "The temperature went from %s to %s °C, worth %s kPa; that was taken out.");
    static final Finding.Kind AMBIENT_ASSUMED = Finding.Kind.note(
            "ambient-assumed", "The air pressure around it was not noted; 101.325 kPa was taken.");
    static final Finding.Kind GAUGE_ASSUMED = Finding.Kind.note(
            "gauge-assumed",
            "Whether the gauge shows pressure above the surroundings was not noted; it was taken"
                    + " to.");
    static final Finding.Kind NOT_ONE_LEAK = Finding.Kind.warning(
            "not-one-leak",
            "The pressure fell %s times as fast in the first half as in the second, unlike one"
                    + " leak: the air had not settled, the vessel gave way, or the leak changed.");
    static final Finding.Kind FEW_STEPS = Finding.Kind.warning(
            "few-steps",
            "The pressure fell by %s kPa, only %s steps of the gauge; wait longer or read finer.");
    static final Finding.Kind PRESSURE_HIGH = Finding.Kind.warning(
            "pressure-high",
            "The vessel stood at %s kPa above the surroundings; above 20 kPa compressed air in a"
                    + " print is a danger. Use water, or less.");

    private static final double HIGH_KPA = 20;
    private static final double FEWEST_STEPS = 10;

    /**
     * Halves that differ by more than this, and beyond their scatter, are not one leak; our own.
     */
    private static final double HALVES_FACTOR = 1.3;

    private static final double HALVES_SCATTER = 4;
    private static final double KELVIN_WORTH_SAYING = 0.1;

    private final Readings readings;
    private final Decay decay;
    private final int from;
    private final int to;
    private final Outcome.Builder out;

    private PressureFindings(
            Readings readings, Decay decay, int from, int to, Outcome.Builder out) {
        this.readings = readings;
        this.decay = decay;
        this.from = from;
        this.to = to;
        this.out = out;
    }

    static void of(
            Readings readings, Decay decay, int from, int to, boolean seen, Outcome.Builder out) {
        PressureFindings findings = new PressureFindings(readings, decay, from, to, out);
        findings.lookAtRecord();
        findings.lookAtTemperature();
        if (seen) {
            findings.lookAtFall();
        }
    }

    private void lookAtRecord() {
        CurveFindings.ofTime(readings.trace(PressureForm.TIME), to).forEach(out::found);
        if (!readings.has(PressureForm.AMBIENT)) {
            out.found(AMBIENT_ASSUMED.with());
        }
        if (!readings.has(PressureForm.PRESSURE_IS)) {
            out.found(GAUGE_ASSUMED.with());
        }
        double start = decay.above(from, from);
        if (start > HIGH_KPA) {
            out.found(PRESSURE_HIGH.with(Figures.three(start)));
        }
    }

    private void lookAtTemperature() {
        if (!readings.has(PressureForm.TEMPERATURE)) {
            double perKelvin = decay.absolute(from) / decay.kelvin(from);
            out.found(TEMPERATURE_UNKNOWN.with(Figures.two(perKelvin)));
            return;
        }
        double moved = decay.kelvin(to) - decay.kelvin(from);
        if (Math.abs(moved) > KELVIN_WORTH_SAYING) {
            double worth = decay.absolute(from) * moved / decay.kelvin(from);
            double first = readings.trace(PressureForm.TEMPERATURE).get(from);
            out.found(TEMPERATURE_MOVED.with(
                    Figures.three(first), Figures.three(first + moved), Figures.two(worth)));
        }
    }

    private void lookAtFall() {
        double fell = decay.above(from, from) - decay.above(to, from);
        double step = readings.step(PressureForm.PRESSURE);
        if (step > 0 && fell < FEWEST_STEPS * step) {
            out.found(FEW_STEPS.with(Figures.two(fell), Figures.two(fell / step)));
        }
        int middle = (from + to) / 2;
        Line first = decay.line(from, middle, from);
        Line second = decay.line(middle, to, from);
        double factor = first.slope() / second.slope();
        double apart = Math.abs(first.slope() - second.slope());
        double scatter = Math.sqrt(first.slopeUncertainty() * first.slopeUncertainty()
                + second.slopeUncertainty() * second.slopeUncertainty());
        boolean differ = factor > HALVES_FACTOR || factor < 1 / HALVES_FACTOR;
        if (Double.isFinite(factor) && differ && apart > HALVES_SCATTER * scatter) {
            out.found(NOT_ONE_LEAK.with(Figures.two(factor)));
        }
    }
}
