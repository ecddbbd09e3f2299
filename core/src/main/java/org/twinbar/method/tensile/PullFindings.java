package org.twinbar.method.tensile;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.conditioning.Conditioning;
import org.twinbar.method.curve.CurveFindings;
import org.twinbar.method.curve.LoadCurve;
import org.twinbar.method.curve.SlopeWindow;
import org.twinbar.method.curve.Toe;
import org.twinbar.method.section.Side;

/** What a person should know about a pull, beside what any record of force may show. */
final class PullFindings {

    static final Finding.Kind BREAK_OUTSIDE_GAUGE = Finding.Kind.warning(
            "break-outside-gauge",
            "It broke at the %s, outside the gauge length, so its strength is a lower bound;"
                    + " ISO 527-1, clause 7, replaces such a specimen and keeps both on record.");
    static final Finding.Kind RATE = Finding.Kind.note(
            "rate-outside-standard",
            "It broke after %s s; ASTM D638, clause 9, wants the slowest speed that breaks it"
                    + " within 30 to 300 s. Plastics look stronger when pulled faster: compare"
                    + " only what was pulled at one speed.");
    static final Finding.Kind APPARENT = Finding.Kind.note(
            "apparent-modulus",
            "Modulus and strains are apparent: they come from the crosshead%s, not from an"
                    + " extensometer as ISO 527-1, 5.1.5, and ASTM D638, clause 5, want.");
    static final Finding.Kind OVER_GAUGE = Finding.Kind.warning(
            "crosshead-over-gauge",
            "The crosshead's travel was divided by the gauge length for want of the distance"
                    + " between the grips, so strains are too large and the modulus too low.");
    static final Finding.Kind COMPLIANCE_LARGE = Finding.Kind.warning(
            "compliance-large",
            "The machine gives %s %% of the travel at the end of the modulus window; above"
                    + " 20 %% the modulus is mostly the machine's.");
    static final Finding.Kind TOE = Finding.Kind.note(
            "toe-corrected",
            "Strain counts from where the straight stretch meets zero force: a toe of %s %%"
                    + " strain was taken off (ASTM D638, annex A1).");

    static final Finding.Kind TWO_MAXIMA = Finding.Kind.note(
            "two-maxima",
            "The force came to a first maximum of %s N and later to %s N; strength is taken at the"
                    + " %s. ASTM D638 takes the largest, ISO 527-1 since 2012 the first: compare"
                    + " only what was taken alike.");
    static final Finding.Kind NOMINAL = Finding.Kind.note(
            "nominal-strain-method",
            "The nominal strain is that of method %s of ISO 527-1: A counts the crosshead's travel"
                    + " from the start, B from the yield on and the extensometer before it.");

    /** Time to break, in s: ASTM D638-22, clause 9. */
    private static final double SHORTEST = 30;

    private static final double LONGEST = 300;

    /** METHODS A.2, common practice. */
    private static final double COMPLIANCE_SHARE = 0.20;

    /** A toe below this strain (mm/mm) is not worth a sentence: a fifth of the window's start. */
    private static final double TOE_WORTH_SAYING = 1e-4;

    private PullFindings() {}

    static void ofBreak(Readings readings, Outcome.Builder out) {
        Side.findings(readings, out);
        Conditioning.find(readings, out);
        if (readings.atRest() && !Bound.ofBreak(readings).reason().isEmpty()) {
            out.found(BREAK_OUTSIDE_GAUGE.with(readings.word(PullForm.BROKE_AT)));
        }
    }

    static void ofTime(Readings readings, Outcome.Builder out, int peak, int end) {
        if (!readings.has(PullForm.TIME)) {
            return;
        }
        Trace time = readings.trace(PullForm.TIME);
        CurveFindings.ofTime(time, peak).forEach(out::found);
        double seconds = time.get(end) - time.get(0);
        if (seconds > 0 && (seconds < SHORTEST || seconds > LONGEST)) {
            out.found(RATE.with(Figures.two(seconds)));
        }
    }

    static void ofStretching(
            Readings readings,
            Outcome.Builder out,
            LoadCurve curve,
            Stretching stretching,
            double zero,
            int strongest) {
        if (stretching.byCrosshead()) {
            boolean corrected = readings.has(PullForm.COMPLIANCE);
            out.found(APPARENT.with(corrected ? " less the machine's compliance" : ""));
            if (stretching.over() == Stretching.Over.CROSSHEAD_OVER_GAUGE) {
                out.found(OVER_GAUGE.with());
            }
            if (corrected) {
                lookAtCompliance(readings, out, curve, zero);
            }
        }
        if (stretching.strainPerWay().isPresent() && Toe.isCompensated(readings)) {
            int start = Toe.start(readings);
            double toe = zero - curve.way(start);
            double strain = toe * stretching.strainPerWay().getAsDouble();
            if (Math.abs(strain) >= TOE_WORTH_SAYING) {
                out.found(TOE.with(percent(strain)));
            }
            Toe.large(toe, curve.way(strongest) - zero).ifPresent(out::found);
        }
    }

    static void ofMaxima(
            Outcome.Builder out, Trace force, int first, int largest, boolean atFirst) {
        if (first != largest) {
            out.found(TWO_MAXIMA.with(
                    Figures.three(force.get(first)),
                    Figures.three(force.get(largest)),
                    atFirst ? "first" : "largest"));
        }
    }

    private static void lookAtCompliance(
            Readings readings, Outcome.Builder out, LoadCurve curve, double zero) {
        var to = readings.marks().get(SlopeWindow.ROW_TO);
        if (to == null || to.isEmpty()) {
            return;
        }
        double given = readings.number(PullForm.COMPLIANCE) * curve.force(to.getAsInt());
        double share = given / (given + curve.way(to.getAsInt()) - zero);
        if (share > COMPLIANCE_SHARE) {
            out.found(COMPLIANCE_LARGE.with(percent(share)));
        }
    }

    private static String percent(double share) {
        return Figures.two(100 * share);
    }
}
