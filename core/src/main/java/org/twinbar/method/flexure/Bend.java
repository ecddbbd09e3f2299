package org.twinbar.method.flexure;

import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.CurveFindings;
import org.twinbar.method.curve.Line;
import org.twinbar.method.curve.LoadCurve;
import org.twinbar.method.curve.SlopeWindow;
import org.twinbar.method.curve.Toe;

/** One bar's curve in one world, from the force that it reached to where it broke. */
final class Bend {

    /** Beyond this share of the span the supports pull inwards (ASTM D790). */
    private static final double LONG_DEFLECTION = 0.10;

    private static final int FEWEST_ROWS = 3;

    private final Readings readings;
    private final Outcome.Builder out;
    private final Trace force;
    private final int peak;

    Bend(Readings readings, Outcome.Builder out, Trace force, int peak) {
        this.readings = readings;
        this.out = out;
        this.force = force;
        this.peak = peak;
    }

    void calculate() {
        if (readings.atRest()) {
            CurveFindings.of(readings, BendForm.FORCE, peak).forEach(out::found);
            BendFindings.ofBar(readings, out);
        }
        OptionalInt collapse =
                readings.mark(BendForm.BREAK, () -> LoadCurve.of(force).lastBeforeCollapse(peak));
        double largest = force.get(peak) + readings.resolutionAt(BendForm.FORCE, "peak");
        if (!readings.has(BendForm.DEFLECTION) || peak < FEWEST_ROWS) {
            Flexure.strengths(readings, out, largest, 0);
            out.restMissing(
                    readings.has(BendForm.DEFLECTION)
                            ? "the curve has too few rows before its peak"
                            : "no deflection was recorded");
            return;
        }
        double compliance =
                readings.has(BendForm.COMPLIANCE) ? readings.number(BendForm.COMPLIANCE) : 0;
        LoadCurve curve = LoadCurve.of(force, readings.trace(BendForm.DEFLECTION), compliance);
        double zero = Toe.zero(readings, curve, peak);
        double bent = curve.way(peak) - zero + readings.resolutionAt(BendForm.DEFLECTION, "peak");
        Flexure.strengths(readings, out, largest, correctedAt(bent));
        Optional<Bending> bar = Flexure.bar(readings);
        if (bar.isEmpty()) {
            out.restMissing("span, width and thickness are not all known");
            return;
        }
        out.value(BendForm.STRAIN, 100 * bar.get().strain(bent));
        moduli(curve, bar.get(), zero);
        conventional(curve, bar.get(), zero, collapse.orElse(force.size() - 1));
        if (readings.atRest()) {
            double toe = zero - curve.way(Toe.start(readings));
            BendFindings.ofCurve(readings, out, bar.get(), bent, toe, peak);
        }
    }

    /** Returns the deflection that the stress is corrected for: 0 where it is short. */
    private double correctedAt(double deflectionMm) {
        boolean isLong =
                readings.once("long deflection", Boolean.class, () -> isLong(deflectionMm));
        return isLong && readings.choice(BendForm.LONG_DEFLECTION).equals(BendForm.CORRECT)
                ? deflectionMm
                : 0;
    }

    private boolean isLong(double deflectionMm) {
        return readings.has(BendForm.SPAN)
                && deflectionMm > LONG_DEFLECTION * readings.number(BendForm.SPAN);
    }

    private void moduli(LoadCurve curve, Bending bar, double zero) {
        SlopeWindow window = SlopeWindow.of(
                readings,
                curve,
                new SlopeWindow.Channels(BendForm.FORCE, BendForm.DEFLECTION),
                zero,
                bar.deflection(1),
                peak);
        Optional<String> missing = window.missing();
        Optional<Bending> before = Flexure.barBefore(readings);
        if (missing.isPresent()) {
            out.missing(BendForm.MODULUS, missing.get());
            out.missing(BendForm.MODULUS_BEFORE, missing.get());
            out.missing(BendForm.STIFFNESS, missing.get());
            return;
        }
        if (readings.atRest()) {
            window.coarseSteps("ISO 178").ifPresent(out::found);
        }
        slope(BendForm.STIFFNESS, window, 1);
        slope(BendForm.MODULUS, window, bar.modulus(1));
        if (before.isPresent()) {
            slope(BendForm.MODULUS_BEFORE, window, before.get().modulus(1));
        } else {
            out.missing(BendForm.MODULUS_BEFORE, "the section before treatment is not known");
        }
    }

    private void slope(Property property, SlopeWindow window, double factor) {
        if (window.byChord()) {
            out.value(property, window.slope() * factor);
        } else {
            Line line = window.line();
            out.put(
                    property,
                    new Yield.Fitted(
                            line.slope() * factor,
                            line.slopeUncertainty() * factor,
                            line.degreesOfFreedom()));
        }
    }

    private void conventional(LoadCurve curve, Bending bar, double zero, int end) {
        double way = zero + bar.conventionalDeflection();
        OptionalInt row =
                readings.mark(BendForm.CONVENTIONAL, () -> curve.firstReaching(way, 1, end));
        if (row.isEmpty()) {
            out.missing(
                    BendForm.CONVENTIONAL_STRESS,
                    "it broke, or the record ends, before a deflection of 1.5 thicknesses");
        } else {
            double there = curve.forceAt(way, row.getAsInt())
                    + readings.resolutionAt(BendForm.FORCE, "conventional deflection");
            out.value(BendForm.CONVENTIONAL_STRESS, bar.stress(there));
        }
    }
}
