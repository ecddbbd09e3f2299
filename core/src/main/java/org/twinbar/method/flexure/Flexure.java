package org.twinbar.method.flexure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Trace;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.CurveFindings;
import org.twinbar.method.section.Side;

/** A bar on two supports, in the manner of ISO 178 and ASTM D790. */
public final class Flexure implements TestMethod {

    private static final String OUTSIDE_THIRD =
            "it broke outside the middle third, where the stress was lower than in the middle";

    @Override
    public Description description() {
        return BendForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return FlexureClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(BendForm.DESCRIPTION);
        if (readings.has(BendForm.FORCE)) {
            curve(readings, out);
        } else if (readings.has(BendForm.PEAK_FORCE)) {
            strengths(readings, out, readings.number(BendForm.PEAK_FORCE), 0);
            BendFindings.ofBar(readings, out);
            out.restMissing("only the largest force was read, no curve");
        } else {
            out.restMissing("no force was read");
        }
        return out.build();
    }

    private static void curve(Readings readings, Outcome.Builder out) {
        Trace force = readings.trace(BendForm.FORCE);
        if (force.size() == 0) {
            out.restMissing("the curve has no rows");
            return;
        }
        if (CurveFindings.isUpsideDown(readings, BendForm.FORCE)) {
            out.found(CurveFindings.upsideDown(readings, BendForm.FORCE));
            out.restMissing(CurveFindings.wrongSign(BendForm.FORCE));
            return;
        }
        int peak = peak(readings);
        if (!(force.get(peak) > 0)) {
            out.restMissing("the force never rises above zero");
            return;
        }
        new Bend(readings, out, force, peak).calculate();
    }

    private static int peak(Readings readings) {
        return readings.mark(
                        BendForm.PEAK,
                        () -> OptionalInt.of(readings.trace(BendForm.FORCE).rowOfLargest()))
                .getAsInt();
    }

    /** Returns the bar as it was bent; empty where span or section are not known. */
    static Optional<Bending> bar(Readings readings) {
        return bar(readings, BendForm.WIDTH, BendForm.THICKNESS, Side.RIDGES);
    }

    /** Returns the bar as it was before treatment; empty where that is not known. */
    static Optional<Bending> barBefore(Readings readings) {
        return bar(readings, BendForm.WIDTH_BEFORE, BendForm.THICKNESS_BEFORE, Side.RIDGES_BEFORE);
    }

    private static Optional<Bending> bar(
            Readings readings, Input width, Input thickness, Input ridges) {
        return readings.has(BendForm.SPAN) && readings.has(width) && readings.has(thickness)
                ? Optional.of(new Bending(
                        readings.number(BendForm.SPAN),
                        Side.of(readings, width, ridges),
                        Side.of(readings, thickness, ridges)))
                : Optional.empty();
    }

    /**
     * Gives the largest force on each basis.
     *
     * @param deflectionMm at that force, 0 where it is not known or short against the span
     */
    static void strengths(
            Readings readings, Outcome.Builder out, double forceN, double deflectionMm) {
        BendForm.LARGEST_FORCE.give(readings, out, forceN, value -> asFound(readings, value));
        stress(readings, out, BendForm.STRENGTH, bar(readings), forceN, deflectionMm);
        stress(readings, out, BendForm.STRENGTH_BEFORE, barBefore(readings), forceN, deflectionMm);
    }

    private static void stress(
            Readings readings,
            Outcome.Builder out,
            Property property,
            Optional<Bending> bar,
            double forceN,
            double deflectionMm) {
        if (bar.isPresent()) {
            double factor = bar.get().longDeflectionFactor(deflectionMm);
            out.put(property, asFound(readings, bar.get().stress(forceN) * factor));
        } else {
            out.missing(property, "span, width and thickness are not all known");
        }
    }

    private static Yield asFound(Readings readings, double value) {
        Optional<String> bound = boundReason(readings);
        Yield found = Yield.of(value);
        return bound.isPresent() && found instanceof Yield.Value
                ? new Yield.AtLeast(value, bound.get())
                : found;
    }

    private static Optional<String> boundReason(Readings readings) {
        if (readings.has(BendForm.BROKE_AT)
                && readings.word(BendForm.BROKE_AT).equals(BendForm.OUTSIDE)) {
            return Optional.of(OUTSIDE_THIRD);
        }
        return readings.has(BendForm.FORCE)
                ? CurveFindings.bound(readings, BendForm.FORCE, peak(readings))
                : Optional.empty();
    }
}
