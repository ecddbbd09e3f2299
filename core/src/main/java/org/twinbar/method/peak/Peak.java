package org.twinbar.method.peak;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Mark;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
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

    static final Finding.Kind FEW_STEPS = Finding.Kind.warning(
            "few-steps-of-the-display",
            "The largest value, %s %s, is only %s steps of the display; read it on a finer one.");

    /** A value of fewer steps is known to no better than 2 %; our own. */
    private static final double FEWEST_STEPS = 15;

    private static final double STEP_OF_READING = Math.sqrt(12);

    /**
     * Returns the value in the readings' world; empty where there is none, and then the outcome is
     * told why.
     */
    OptionalDouble of(Readings readings, Outcome.Builder out) {
        boolean recorded = isRecorded(readings);
        if (!recorded && !readings.has(reading)) {
            out.restMissing("no %s was read".formatted(channel.label().toLowerCase(Locale.ROOT)));
            return OptionalDouble.empty();
        }
        if (!recorded) {
            return OptionalDouble.of(readings.number(reading));
        }
        if (CurveFindings.isUpsideDown(readings, channel)) {
            out.found(CurveFindings.upsideDown(readings, channel));
            out.restMissing(CurveFindings.wrongSign(channel));
            return OptionalDouble.empty();
        }
        double value =
                readings.trace(channel).get(row(readings)) + readings.resolutionAt(channel, "peak");
        if (!Double.isFinite(value)) {
            out.restMissing("no row of the record holds a number");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private boolean isRecorded(Readings readings) {
        return readings.has(channel) && readings.trace(channel).size() > 0;
    }

    private int row(Readings readings) {
        return readings.mark(mark, () -> OptionalInt.of(readings.trace(channel).rowOfLargest()))
                .orElseThrow();
    }

    /** Says what was seen of a value that rises to one peak. */
    void find(Readings readings, double value, Outcome.Builder out) {
        if (isRecorded(readings)) {
            CurveFindings.of(readings, channel, row(readings)).forEach(out::found);
        }
        findFewSteps(readings, value, out);
    }

    /** Says what was seen of a value that goes up and down for as long as it lasts. */
    void findInJerks(Readings readings, double value, Outcome.Builder out) {
        if (isRecorded(readings)) {
            CurveFindings.ofJerks(readings, channel, row(readings)).forEach(out::found);
        }
        findFewSteps(readings, value, out);
    }

    private void findFewSteps(Readings readings, double value, Outcome.Builder out) {
        double step = isRecorded(readings)
                ? readings.step(channel)
                : STEP_OF_READING * readings.readingUncertainty(reading);
        if (step > 0 && value < FEWEST_STEPS * step) {
            out.found(FEW_STEPS.with(
                    Figures.three(value), channel.unit().symbol(), Figures.two(value / step)));
        }
    }

    /**
     * Returns the value, or a lower bound where something else gave way, where the instrument was
     * at its end, or where the record is too short to prove a peak.
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
        Optional<String> bound = isRecorded(readings)
                ? CurveFindings.bound(readings, channel, row(readings))
                : Optional.empty();
        return bound.isPresent() ? new Yield.AtLeast(value, bound.get()) : found;
    }
}
