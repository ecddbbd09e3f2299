package org.twinbar.method.flexure;

import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.conditioning.Conditioning;
import org.twinbar.method.curve.CurveFindings;
import org.twinbar.method.curve.Toe;
import org.twinbar.method.section.Side;

/** What a person should know about a bent bar, beside what any record of force may show. */
final class BendFindings {

    static final Finding.Kind SPAN = Finding.Kind.note(
            "span-outside-standard",
            "The span is %s thicknesses; ISO 178 wants 15 to 17. Shorter spans add shear and"
                    + " indentation, so compare only bars of one span.");
    static final Finding.Kind LONG_DEFLECTION = Finding.Kind.warning(
            "long-deflection",
            "At the largest force it had bent by %s %% of the span; beyond 10 %% (ASTM D790) the"
                    + " short formula is off, here by a factor of %s.");
    static final Finding.Kind BEYOND_STRAIN = Finding.Kind.warning(
            "beyond-five-percent",
            "The largest force came at %s %% strain; ASTM D790 gives no strength beyond 5 %%. Use"
                    + " the stress at the conventional deflection (ISO 178).");
    static final Finding.Kind APPARENT = Finding.Kind.warning(
            "apparent-modulus",
            "The deflection is the crosshead's with nothing taken off for machine and nose;"
                    + " ISO 178 calls that unsuitable for a modulus.");
    static final Finding.Kind OUTSIDE_THIRD = Finding.Kind.warning(
            "break-outside-third",
            "It broke outside the middle third of the span, which ISO 178 leaves out: its"
                    + " strength is a lower bound.");
    static final Finding.Kind FACE_UNKNOWN = Finding.Kind.note(
            "tension-face-not-stated",
            "Which face was in tension was not noted; for a coat, a bed side or a raster that"
                    + " decides the result.");
    static final Finding.Kind RATE = Finding.Kind.note(
            "rate-outside-standard",
            "The outer fibre was strained at %s %% per minute; ISO 178 and ASTM D790 (A) want"
                    + " about 1, here %s mm/min. Compare only what was bent at one speed.");
    static final Finding.Kind TOE = Finding.Kind.note(
            "toe-corrected",
            "Deflection counts from where the straight stretch meets zero force: a toe of %s mm"
                    + " was taken off (ASTM D790, annex A1).");

    private static final double LEAST_SPAN = 15;
    private static final double LARGEST_SPAN = 17;
    private static final double MOST_STRAIN = 0.05;
    private static final double LONG = 0.10;

    /** ISO 178 and D790 procedure A (1/min). */
    private static final double RATE_WANTED = 0.01;

    /** Twice or half of it is still called the same speed; our own. */
    private static final double RATE_FACTOR = 2;

    /** D790's other procedure, which is a speed of its own. */
    private static final double RATE_B = 0.10;

    private static final double TOE_WORTH_SAYING = 1e-4;

    private BendFindings() {}

    static void ofBar(Readings readings, Outcome.Builder out) {
        if (!readings.atRest()) {
            return;
        }
        Side.findings(readings, out);
        Conditioning.find(readings, out);
        Optional<Bending> bar = Flexure.bar(readings);
        if (bar.isPresent()) {
            double ratio = bar.get().spanMm() / bar.get().thicknessMm();
            if (ratio < LEAST_SPAN || ratio > LARGEST_SPAN) {
                out.found(SPAN.with(Figures.three(ratio)));
            }
        }
        if (readings.has(BendForm.BROKE_AT)
                && readings.word(BendForm.BROKE_AT).equals(BendForm.OUTSIDE)) {
            out.found(OUTSIDE_THIRD.with());
        }
        if (bar.isPresent() && !readings.has(BendForm.TENSION_FACE)) {
            out.found(FACE_UNKNOWN.with());
        }
    }

    static void ofCurve(
            Readings readings,
            Outcome.Builder out,
            Bending bar,
            double bent,
            double toe,
            int peak) {
        if (bent > LONG * bar.spanMm()) {
            out.found(LONG_DEFLECTION.with(
                    Figures.two(100 * bent / bar.spanMm()),
                    Figures.three(bar.longDeflectionFactor(bent))));
        }
        if (bar.strain(bent) > MOST_STRAIN) {
            out.found(BEYOND_STRAIN.with(Figures.two(100 * bar.strain(bent))));
        }
        boolean crosshead = readings.has(BendForm.DEFLECTION_BY)
                && readings.word(BendForm.DEFLECTION_BY).equals(BendForm.BY_CROSSHEAD);
        if (crosshead && !readings.has(BendForm.COMPLIANCE)) {
            out.found(APPARENT.with());
        }
        lookAtToe(readings, out, bar, toe);
        if (Toe.isCompensated(readings)) {
            Toe.large(toe, bent).ifPresent(out::found);
        }
        if (readings.has(BendForm.TIME)) {
            Trace time = readings.trace(BendForm.TIME);
            CurveFindings.ofTime(time, peak).forEach(out::found);
            lookAtRate(out, bar, bent, time.get(peak) - time.get(Toe.start(readings)));
        }
    }

    private static void lookAtToe(Readings readings, Outcome.Builder out, Bending bar, double toe) {
        if (Toe.isCompensated(readings) && Math.abs(bar.strain(toe)) >= TOE_WORTH_SAYING) {
            out.found(TOE.with(Figures.two(toe)));
        }
    }

    private static void lookAtRate(Outcome.Builder out, Bending bar, double bent, double seconds) {
        double perMinute = bar.strain(bent) / seconds * 60;
        boolean nearA = isNear(perMinute, RATE_WANTED);
        boolean nearB = isNear(perMinute, RATE_B);
        if (seconds > 0 && perMinute > 0 && !nearA && !nearB) {
            out.found(RATE.with(Figures.two(100 * perMinute), Figures.two(bar.speed(RATE_WANTED))));
        }
    }

    private static boolean isNear(double rate, double wanted) {
        return rate > wanted / RATE_FACTOR && rate < wanted * RATE_FACTOR;
    }
}
