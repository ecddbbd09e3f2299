package org.twinbar.method.roughness;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;

/** What a person should know about a profile that was traced. */
final class RoughnessFindings {

    static final Finding.Kind FEW_SECTIONS = Finding.Kind.warning(
            "few-sampling-lengths",
            "The profile holds %s of %s mm; ISO 21920-3 takes 5, and fewer tell little of the next"
                    + " place. Trace farther, or over several places.");
    static final Finding.Kind OTHER_CUTOFF = Finding.Kind.note(
            "cutoff-for-other-roughness",
            "Ra is %s µm, for which ISO 21920-3 takes a cut-off of %s mm, not %s mm; compare only"
                    + " what was filtered alike, both groups at the cut-off of the rougher one.");
    static final Finding.Kind NEAR_RIDGES = Finding.Kind.warning(
            "cutoff-near-layer-height",
            "The cut-off of %s mm is less than 5 layers of %s mm: the filter takes part of the layer"
                    + " lines off with the waviness.");
    static final Finding.Kind ALONG = Finding.Kind.warning(
            "traced-along-layers",
            "The trace ran along the layer lines, whose height is not in it; trace across them.");
    static final Finding.Kind DIRECTION_UNKNOWN = Finding.Kind.note(
            "trace-direction-not-stated",
            "Whether the trace ran across the layer lines was not noted; along and across are two"
                    + " roughnesses.");
    static final Finding.Kind COARSE_ROWS = Finding.Kind.warning(
            "rows-far-apart",
            "Rows lie up to %s mm apart, more than a hundredth of the cut-off: peaks and valleys"
                    + " between them are missed.");
    static final Finding.Kind COARSE_STEPS = Finding.Kind.warning(
            "height-steps-coarse",
            "Ra is %s µm, only %s steps of the display; what is shown is partly the display's"
                    + " rounding.");
    static final Finding.Kind SATURATED = Finding.Kind.serious(
            "gauge-at-its-end",
            "The height stands at %s µm, its %s, for %s rows: the gauge was at its end, and what"
                    + " lay beyond is missing. Level the part, or take a wider range.");
    static final Finding.Kind NOT_A_NUMBER = Finding.Kind.warning(
            "rows-without-number",
            "%s of the profile without a number %s passed over, with a straight line across the"
                    + " gap; light that a glossy flank threw aside leaves such gaps.");
    static final Finding.Kind ENDS_KEPT = Finding.Kind.note(
            "ends-kept",
            "The ends of the profile were kept, where the mean line has the profile on one side"
                    + " alone and bends after it.");

    private static final int ENOUGH_SECTIONS = 5;

    /** "Several times the pitch" (METHODS F), in figures our own. */
    private static final double LAYERS_IN_CUTOFF = 5;

    /** At 100 points per period closed forms agree to 10⁻⁴ (METHODS F). */
    private static final double ROWS_IN_CUTOFF = 100;

    /** Fewer steps than this in Ra show rounding; our own. */
    private static final double STEPS_IN_RA = 5;

    /** A peak that stays for so many rows is a stop; our own. */
    private static final int FLAT_ROWS = 10;

    /** And it is no peak where the row before lies more steps of the display away; our own. */
    private static final double STEEP_STEPS = 3;

    private RoughnessFindings() {}

    static void of(Readings readings, Traced traced, Parameters found, Outcome.Builder out) {
        if (traced.lost() > 0 && traced.rows() > 0) {
            out.found(NOT_A_NUMBER.with(
                    traced.lost() == 1 ? "1 row" : traced.lost() + " rows",
                    traced.lost() == 1 ? "was" : "were"));
        }
        if (!found.missing().isEmpty()) {
            return;
        }
        ofFilter(readings, traced, found, out);
        ofDirection(readings, out);
        lookForStop(readings, traced, out);
        double step = readings.step(RoughnessForm.HEIGHT);
        if (found.ra().value() < STEPS_IN_RA * step) {
            out.found(COARSE_STEPS.with(
                    Figures.two(found.ra().value()), Figures.two(found.ra().value() / step)));
        }
    }

    private static void ofFilter(
            Readings readings, Traced traced, Parameters found, Outcome.Builder out) {
        double cutoff = readings.setting(RoughnessForm.CUTOFF);
        if (found.sections() < ENOUGH_SECTIONS) {
            String held = found.sections() == 1
                    ? "1 sampling length"
                    : found.sections() + " sampling lengths";
            out.found(FEW_SECTIONS.with(held, Figures.two(cutoff)));
        }
        double usual = Cutoffs.forRoughness(found.ra().value());
        if (usual != cutoff) {
            out.found(OTHER_CUTOFF.with(
                    Figures.two(found.ra().value()), Figures.two(usual), Figures.two(cutoff)));
        }
        if (traced.largestStep() > cutoff / ROWS_IN_CUTOFF * (1 + 1e-9)) {
            out.found(COARSE_ROWS.with(Figures.two(traced.largestStep())));
        }
        if (readings.choice(RoughnessForm.ENDS).equals(RoughnessForm.KEPT)) {
            out.found(ENDS_KEPT.with());
        }
        if (readings.has(RoughnessForm.LAYER_HEIGHT)) {
            double layer = readings.number(RoughnessForm.LAYER_HEIGHT);
            if (cutoff < LAYERS_IN_CUTOFF * layer) {
                out.found(NEAR_RIDGES.with(Figures.two(cutoff), Figures.two(layer)));
            }
        }
    }

    private static void ofDirection(Readings readings, Outcome.Builder out) {
        if (!readings.has(RoughnessForm.TRACED)) {
            out.found(DIRECTION_UNKNOWN.with());
        } else if (readings.word(RoughnessForm.TRACED).equals(RoughnessForm.ALONG)) {
            out.found(ALONG.with());
        }
    }

    /** Looks for rows one after the other at the very highest or lowest height. */
    private static void lookForStop(Readings readings, Traced traced, Outcome.Builder out) {
        double highest = Double.NEGATIVE_INFINITY;
        double lowest = Double.POSITIVE_INFINITY;
        for (double height : traced.heights()) {
            highest = Math.max(highest, height);
            lowest = Math.min(lowest, height);
        }
        double step = readings.step(RoughnessForm.HEIGHT);
        if (highest - lowest <= FLAT_ROWS * step) {
            return;
        }
        int top = longestStand(traced.heights(), highest, STEEP_STEPS * step);
        int bottom = longestStand(traced.heights(), lowest, STEEP_STEPS * step);
        if (top >= FLAT_ROWS) {
            out.found(SATURATED.with(Figures.three(highest), "highest", top));
        } else if (bottom >= FLAT_ROWS) {
            out.found(SATURATED.with(Figures.three(lowest), "lowest", bottom));
        }
    }

    /** Returns the longest run of rows at a height that is reached by a jump, not by a slope. */
    private static int longestStand(double[] heights, double stop, double jump) {
        int longest = 0;
        int run = 0;
        double before = stop;
        for (double height : heights) {
            if (height == stop) {
                run++;
                if (Math.abs(before - stop) > jump) {
                    longest = Math.max(longest, run);
                }
            } else {
                run = 0;
                before = height;
            }
        }
        return longest;
    }
}
