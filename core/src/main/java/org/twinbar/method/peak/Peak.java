package org.twinbar.method.peak;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Mark;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.Words;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.CurveFindings;

/**
 * A largest value: read by itself, or the peak of a curve.
 *
 * @param reading the value where an instrument held it
 * @param channel the recorded curve of it
 * @param mark the peak's place on the curve
 */
record Peak(Input reading, Channel channel, Mark mark) {

    static final Finding.Kind AT_LAST_ROW = Finding.Kind.warning(
            "largest-at-last-row",
            "The largest value, %s %s, is the last row of the record, so it may have gone on to"
                    + " rise; record until it has dropped.");
    static final Finding.Kind FEW_STEPS = Finding.Kind.warning(
            "few-steps-of-the-display",
            "The largest value, %s %s, is only %s steps of the display; read it on a finer one.");

    /** A value of fewer steps is known to no better than 2 %; our own. */
    private static final double FEWEST_STEPS = 15;

    private static final double STEP_OF_READING = Math.sqrt(12);

    /** Returns the value in the readings' world; empty where it was not read. */
    OptionalDouble of(Readings readings) {
        if (readings.has(channel) && readings.trace(channel).size() > 0) {
            double value = readings.trace(channel).get(row(readings))
                    + readings.resolutionAt(channel, "peak");
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        }
        return readings.has(reading)
                ? OptionalDouble.of(readings.number(reading))
                : OptionalDouble.empty();
    }

    private int row(Readings readings) {
        return readings.mark(mark, () -> OptionalInt.of(readings.trace(channel).rowOfLargest()))
                .orElseThrow();
    }

    void find(Readings readings, double value, Outcome.Builder out) {
        String unit = channel.unit().symbol();
        double step;
        if (readings.has(channel)) {
            Trace trace = readings.trace(channel);
            step = readings.step(channel);
            if (row(readings) == trace.size() - 1) {
                out.found(AT_LAST_ROW.with(Figures.three(value), unit));
            }
        } else {
            step = STEP_OF_READING * readings.readingUncertainty(reading);
        }
        if (step > 0 && value < FEWEST_STEPS * step) {
            out.found(FEW_STEPS.with(Figures.three(value), unit, Figures.two(value / step)));
        }
    }

    /**
     * Returns the value, or a lower bound where something else gave way, or where the record is too
     * short to prove a peak.
     *
     * @param gave the word for what gave way
     * @param tested the one for which the value is that of what is tested
     */
    Yield asGiven(Readings readings, Words gave, String tested, double value) {
        Yield found = Yield.of(value);
        if (!(found instanceof Yield.Value)) {
            return found;
        }
        if (readings.has(gave) && !readings.word(gave).equals(tested)) {
            return new Yield.AtLeast(
                    value, "%s: what is tested held at least this".formatted(readings.word(gave)));
        }
        return readings.has(channel) && CurveFindings.provesNoPeak(readings, channel)
                ? new Yield.AtLeast(value, CurveFindings.NO_PEAK)
                : found;
    }
}
