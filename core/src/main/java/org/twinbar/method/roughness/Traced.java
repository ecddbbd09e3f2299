package org.twinbar.method.roughness;

import java.util.Arrays;
import org.twinbar.finding.Figures;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;

/**
 * The rows of a trace that hold both numbers, as recorded.
 *
 * @param places mm
 * @param heights µm
 * @param lost rows without a number
 */
record Traced(double[] places, double[] heights, int lost) {

    private static final int FEWEST_ROWS = 20;

    /** Fewer rows than these in a cut-off draw no mean line; our own. */
    private static final double FEWEST_IN_CUTOFF = 10;

    private static final double HALF = 0.5;

    /** A length that misses a sampling length by this share of it holds it. */
    private static final double ROUNDING = 1e-6;

    private static final double MICROMETRE = 1e-3;

    static Traced of(Readings readings) {
        Trace position = readings.trace(RoughnessForm.POSITION);
        Trace height = readings.trace(RoughnessForm.HEIGHT);
        double[] places = new double[position.size()];
        double[] heights = new double[position.size()];
        int kept = 0;
        for (int row = 0; row < position.size(); row++) {
            if (Double.isFinite(position.get(row)) && Double.isFinite(height.get(row))) {
                places[kept] = position.get(row);
                heights[kept++] = height.get(row);
            }
        }
        return new Traced(
                Arrays.copyOf(places, kept), Arrays.copyOf(heights, kept), position.size() - kept);
    }

    int rows() {
        return places.length;
    }

    double length() {
        return rows() > 1 ? places[rows() - 1] - places[0] : 0;
    }

    /** Returns the largest distance of two rows (mm). */
    double largestStep() {
        double largest = 0;
        for (int row = 1; row < rows(); row++) {
            largest = Math.max(largest, places[row] - places[row - 1]);
        }
        return largest;
    }

    /** Returns Ra, Rq, Rz and Rt by the settings, or why there are none. */
    Parameters parameters(Readings readings) {
        double cutoff = readings.setting(RoughnessForm.CUTOFF);
        boolean leftOut = readings.choice(RoughnessForm.ENDS).equals(RoughnessForm.LEFT_OUT);
        double margin = leftOut ? HALF * cutoff : 0;
        String unusable = unusable(cutoff, margin);
        if (!unusable.isEmpty()) {
            return Parameters.missing(unusable);
        }
        int fits = (int) Math.floor((length() - 2 * margin) / cutoff + ROUNDING);
        int sections = Math.min(fits, (int) readings.setting(RoughnessForm.SECTIONS));
        double from = places[0] + (length() - sections * cutoff) / 2;
        FormRemoval form = FormRemoval.of(readings.choice(RoughnessForm.FORM));
        Profile profile = Profile.of(places, form.without(places, heights), cutoff)
                // What lies farther off moves neither mean line.
                .between(from - 2 * cutoff, from + (sections + 2) * cutoff)
                .longerThan(readings.setting(RoughnessForm.SHORT_CUTOFF) * MICROMETRE)
                .shorterThan(cutoff);
        return Parameters.of(profile, from, cutoff, sections);
    }

    private String unusable(double cutoff, double margin) {
        if (rows() < FEWEST_ROWS) {
            return "the profile has %s rows with a number, it needs %s"
                    .formatted(rows(), FEWEST_ROWS);
        }
        for (int row = 1; row < rows(); row++) {
            if (!(places[row] > places[row - 1])) {
                return "the place along the trace does not rise from row to row, first behind"
                        + " %s mm".formatted(Figures.three(places[row - 1]));
            }
        }
        double needed = cutoff + 2 * margin;
        if (length() < needed * (1 - ROUNDING)) {
            return "the profile is %s mm long; one sampling length of %s mm needs %s mm"
                    .formatted(Figures.three(length()), Figures.two(cutoff), Figures.three(needed));
        }
        return largestStep() > cutoff / FEWEST_IN_CUTOFF
                ? "rows lie up to %s mm apart, too far for a cut-off of %s mm"
                        .formatted(Figures.two(largestStep()), Figures.two(cutoff))
                : "";
    }
}
