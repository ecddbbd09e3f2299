package org.twinbar.method.timeconstant;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.curve.CurveFindings;

/** What a person should know about a dummy that was put into a held oven. */
final class TimeConstantFindings {

    static final Finding.Kind TOO_SHORT = Finding.Kind.warning(
            "step-too-short",
            "The record ends when %s %% of the warming is done, so that the temperature it goes to"
                    + " was fitted with little to go by; leave the dummy in for three time constants,"
                    + " %s s, when 95 %% is done.");
    static final Finding.Kind NOT_EXPONENTIAL = Finding.Kind.warning(
            "not-exponential",
            "The warming is not one exponential: readings lie beside it by %s °C (standard"
                    + " deviation), many in a row on one side. The oven was not at its temperature,"
                    + " the door stood open, or the thermometer is not well in the dummy.");
    static final Finding.Kind NOT_HELD = Finding.Kind.warning(
            "oven-not-held",
            "The dummy goes to %s °C, but the oven was held at %s °C: they were read on unlike"
                    + " thermometers, or the oven was still warming.");
    static final Finding.Kind FELL = Finding.Kind.note(
            "temperature-fell",
            "At its end the temperature fell by %s °C, as when the door opens; the exponential"
                    + " ends before that.");

    /** After three time constants (METHODS D.4). */
    private static final double DONE = 0.95;

    private static final double CONSTANTS = 3;

    /** Chance has neighbours go together so much one time in a hundred. */
    private static final double IN_A_ROW = 2.326;

    /** Scatter below this share of the rise does not move the time constant; our own. */
    private static final double VISIBLE_SHARE = 0.005;

    /** Thermometers and places in an oven differ by this much (K); our own. */
    private static final double LIKE_THERMOMETERS = 3;

    private TimeConstantFindings() {}

    static void of(Readings readings, Warmed warmed, Outcome.Builder out) {
        CurveFindings.timeFalls(readings.trace(TimeConstantForm.TIME)).ifPresent(out::found);
        CurveFindings.lostRows(warmed.lost()).ifPresent(out::found);
        if (warmed.fellK() > 0) {
            out.found(FELL.with(Figures.two(warmed.fellK())));
        }
        warmed.approach().ifPresent(approach -> {
            double reached = warmed.reached();
            if (reached < DONE) {
                out.found(TOO_SHORT.with(
                        Figures.two(100 * reached), Figures.two(CONSTANTS * approach.seconds())));
            }
            double rise = approach.held() - warmed.startC();
            double visible =
                    Math.max(readings.step(TimeConstantForm.TEMPERATURE), VISIBLE_SHARE * rise);
            double readingsCounted = approach.fit().degreesOfFreedom();
            if (approach.serial() > IN_A_ROW / Math.sqrt(readingsCounted)
                    && approach.scatter() > visible) {
                out.found(NOT_EXPONENTIAL.with(Figures.two(approach.scatter())));
            }
            if (readings.has(TimeConstantForm.OVEN)) {
                double oven = readings.number(TimeConstantForm.OVEN);
                double off = Math.abs(approach.held() - oven);
                if (off > LIKE_THERMOMETERS + 2 * approach.heldUncertainty()) {
                    out.found(NOT_HELD.with(Figures.three(approach.held()), Figures.three(oven)));
                }
            }
        });
    }
}
