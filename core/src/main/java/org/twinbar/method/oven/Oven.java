package org.twinbar.method.oven;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.method.heating.Heated;
import org.twinbar.method.section.Side;

/** A cantilever with a mass at its tip in an oven. */
public final class Oven implements TestMethod {

    private static final double MM3_PER_CM3 = 1000;

    @Override
    public Description description() {
        return OvenForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return OvenClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(OvenForm.DESCRIPTION);
        Optional<Cantilever> bar = bar(readings);
        stress(readings, out, bar);
        if (Heated.isIn(readings)) {
            curve(readings, out, bar);
        } else {
            byEye(readings, out, bar);
        }
        if (readings.atRest()) {
            OvenFindings.ofBar(readings, bar, out);
        }
        return out.build();
    }

    private static Optional<Cantilever> bar(Readings readings) {
        return readings.has(OvenForm.ARM)
                        && readings.has(OvenForm.WIDTH)
                        && readings.has(OvenForm.THICKNESS)
                ? Optional.of(new Cantilever(
                                readings.number(OvenForm.ARM),
                                Side.of(readings, OvenForm.WIDTH, Side.RIDGES),
                                Side.of(readings, OvenForm.THICKNESS, Side.RIDGES)))
                        .filter(Cantilever::isThere)
                : Optional.empty();
    }

    private static void stress(Readings readings, Outcome.Builder out, Optional<Cantilever> found) {
        if (found.isEmpty() || !readings.has(OvenForm.TIP_MASS)) {
            out.missing(OvenForm.STRESS, "arm, section and tip mass are not all known");
            return;
        }
        Cantilever bar = found.get();
        double force = readings.number(OvenForm.TIP_MASS) * Cantilever.NEWTON_PER_GRAM;
        double weight = gramPerMm(readings, bar) * Cantilever.NEWTON_PER_GRAM;
        out.value(OvenForm.STRESS, bar.stress(force) + bar.stressOfWeight(weight));
    }

    /** Returns the bar's own mass per length (g/mm), 0 where nothing is known of it. */
    private static double gramPerMm(Readings readings, Cantilever bar) {
        if (readings.has(OvenForm.BAR_MASS) && readings.has(OvenForm.BAR_LENGTH)) {
            return readings.number(OvenForm.BAR_MASS) / readings.number(OvenForm.BAR_LENGTH);
        }
        return readings.has(OvenForm.DENSITY)
                ? readings.number(OvenForm.DENSITY)
                        * bar.widthMm()
                        * bar.thicknessMm()
                        / MM3_PER_CM3
                : 0;
    }

    private static void curve(Readings readings, Outcome.Builder out, Optional<Cantilever> bar) {
        Optional<Heated> heated = Heated.of(readings);
        if (heated.isEmpty()) {
            out.restMissing("no row holds a temperature and a deflection");
            return;
        }
        Optional<String> unusable = heated.get().unusable();
        if (unusable.isPresent()) {
            out.restMissing(unusable.get());
            return;
        }
        new Sagging(readings, out, heated.get(), bar).calculate();
    }

    /** Gives what two readings of a thermometer, or one, say of a bar that somebody looked at. */
    private static void byEye(Readings readings, Outcome.Builder out, Optional<Cantilever> bar) {
        out.missing(OvenForm.AT_DEFLECTION, "no deflection was recorded");
        Lag lag = Lag.of(readings, bar, OptionalDouble.empty());
        if (readings.has(OvenForm.ONSET_FROM) && readings.has(OvenForm.ONSET_TO)) {
            out.put(OvenForm.ONSET, between(readings, lag));
        } else if (readings.has(OvenForm.ONSET_FROM)) {
            atLeast(readings.number(OvenForm.ONSET_FROM), lag, out);
        } else if (readings.has(OvenForm.HELD_UNTIL)) {
            atLeast(readings.number(OvenForm.HELD_UNTIL), lag, out);
        } else {
            out.missing(OvenForm.ONSET, "nothing says when it sagged");
            return;
        }
        if (readings.atRest()) {
            OvenFindings.ofLag(readings, lag, lag.settled(), out);
        }
    }

    private static Yield between(Readings readings, Lag lag) {
        double from = readings.number(OvenForm.ONSET_FROM);
        double to = readings.number(OvenForm.ONSET_TO);
        boolean upwards = readings.once("upwards", Boolean.class, () -> from <= to);
        if (!upwards) {
            return new Yield.Missing("it sagged at a lower temperature than it was last straight"
                    + " at: the two readings are swapped");
        }
        double low = lag.lowest(Math.min(from, to));
        double high = lag.highest(Math.max(from, to));
        return Double.isFinite(low) && Double.isFinite(high)
                ? new Yield.Between(low, high, "it was straight at one look and sagged at the next")
                : Yield.of(Double.NaN);
    }

    private static void atLeast(double heldC, Lag lag, Outcome.Builder out) {
        double bound = lag.lowest(heldC);
        out.put(
                OvenForm.ONSET,
                Double.isFinite(bound)
                        ? new Yield.AtLeast(bound, "it was straight to the end")
                        : Yield.of(Double.NaN));
    }
}
