package org.twinbar.method.pressure;

import java.util.List;
import java.util.OptionalInt;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Detection;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.Line;

/** How fast a closed vessel loses its pressure. */
public final class PressureDecay implements TestMethod {

    private static final double LN_2 = 0.6931471805599453;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final int FEWEST_ROWS = 5;

    /** Steps of the display are rectangles: METHODS J.1. */
    private static final double STEP_TO_STANDARD = 1 / Math.sqrt(12);

    @Override
    public Description description() {
        return PressureForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return PressureDecayClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(PressureForm.DESCRIPTION);
        if (!readings.has(PressureForm.TIME) || !readings.has(PressureForm.PRESSURE)) {
            return out.restMissing("time and pressure were not recorded").build();
        }
        Decay decay = new Decay(readings);
        if (decay.rows() == 0) {
            return out.restMissing("the curve has no rows").build();
        }
        int from = readings.mark(PressureForm.FIT_FROM, () -> OptionalInt.of(decay.settled()))
                .getAsInt();
        if (from >= decay.rows()) {
            return out.restMissing("the record ends before the air has settled").build();
        }
        if (!readings.once("above", Boolean.class, () -> decay.above(from, from) > 0)) {
            return out.restMissing("the pressure is not above that of the surroundings")
                    .build();
        }
        int to = readings.mark(PressureForm.FIT_TO, () -> OptionalInt.of(decay.lastAbove(from)))
                .getAsInt();
        boolean enough = readings.once(
                "enough",
                Boolean.class,
                () -> to - from + 1 >= FEWEST_ROWS
                        && Double.isFinite(decay.line(from, to, from).slope()));
        if (!enough) {
            return out.restMissing(
                            "fewer than 5 rows lie between settling and the end of the pressure")
                    .build();
        }
        give(readings, out, decay, from, to);
        return out.build();
    }

    /**
     * Gives the properties of a line of ln Δp = a − λt.
     *
     * <pre>q = V·λ·Δp₀/p_ambient,  loss = λ·Δp₀,  half = ln 2/λ</pre>
     */
    private static void give(
            Readings readings, Outcome.Builder out, Decay decay, int from, int to) {
        Line line = decay.line(from, to, from);
        double rate = -line.slope();
        double start = StrictMath.exp(line.intercept());
        Detection detection = readings.once(
                "detection",
                Detection.class,
                () -> detection(readings, decay, line, start, from, to));
        double atRest = readings.once("rate", Double.class, () -> rate);
        Found found = new Found(line, detection.below(atRest), atRest > detection.limit());
        out.put(PressureForm.PRESSURE_LOSS, found.times(start * SECONDS_PER_HOUR));
        if (readings.has(PressureForm.VOLUME)) {
            double volume = readings.number(PressureForm.VOLUME);
            out.put(
                    PressureForm.LEAK_RATE,
                    found.times(volume * start / decay.ambient() * SECONDS_PER_MINUTE));
        } else {
            out.missing(PressureForm.LEAK_RATE, "the volume of air is not known");
        }
        out.put(PressureForm.HALF_TIME, found.halfTime());
        if (readings.atRest()) {
            PressureFindings.of(readings, decay, from, to, found.seen(), out);
        }
    }

    /** Returns which rates (1/s) scatter and the display's step let be seen. */
    private static Detection detection(
            Readings readings, Decay decay, Line line, double start, int from, int to) {
        double step = readings.step(PressureForm.PRESSURE) * STEP_TO_STANDARD;
        double byStep = Math.sqrt(2) * step / start / (decay.seconds(to) - decay.seconds(from));
        return new Detection(Math.max(line.slopeUncertainty(), byStep));
    }

    /** The rate that was fitted, or that none could be told from zero. */
    private record Found(Line line, double below, boolean seen) {

        private static final String NOT_SEEN =
                "the pressure fell by less than scatter and the gauge's step can show";

        Yield times(double factor) {
            double value = -line.slope() * factor;
            double u = line.slopeUncertainty() * factor;
            if (!seen) {
                double bound = below * factor;
                return Double.isFinite(bound)
                        ? new Yield.Below(bound, NOT_SEEN)
                        : Yield.of(Double.NaN);
            }
            return Double.isFinite(value) && Double.isFinite(u)
                    ? new Yield.Fitted(value, u, line.degreesOfFreedom())
                    : Yield.of(Double.NaN);
        }

        Yield halfTime() {
            if (!seen) {
                double bound = LN_2 / below / SECONDS_PER_HOUR;
                return Double.isFinite(bound)
                        ? new Yield.AtLeast(bound, NOT_SEEN)
                        : new Yield.Missing(NOT_SEEN);
            }
            double hours = LN_2 / -line.slope() / SECONDS_PER_HOUR;
            double u = hours * line.slopeUncertainty() / -line.slope();
            return hours > 0 && Double.isFinite(hours) && Double.isFinite(u)
                    ? new Yield.Fitted(hours, u, line.degreesOfFreedom())
                    : Yield.of(Double.NaN);
        }
    }
}
