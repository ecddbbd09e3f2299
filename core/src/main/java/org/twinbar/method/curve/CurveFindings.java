package org.twinbar.method.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;

/** What a person should know about a record of force, whatever was loaded. */
public final class CurveFindings {

    static final Finding.Kind PEAK_AT_LAST_POINT = Finding.Kind.warning(
            "peak-at-last-point",
            "The largest force, %s, is the last row of the record, so the specimen may have"
                    + " carried more; record until the force has dropped.");
    static final Finding.Kind SATURATED = Finding.Kind.serious(
            "saturated",
            "The force rises steeply to %s and stands there for %s rows: the load cell or its"
                    + " amplifier is at its end, so the specimen carried at least that.");
    static final Finding.Kind GRIP_SLIP = Finding.Kind.warning(
            "grip-slip",
            "Before the peak the force dropped and came back %s, by up to %s: the grips"
                    + " slipped, something cracked, or the machine paused; what was recorded"
                    + " as stretch since is not all the specimen's.");
    static final Finding.Kind COARSE_AT_PEAK = Finding.Kind.warning(
            "coarse-at-peak",
            "Next to the peak the force changes by %s from one row to the next, so the true"
                    + " peak may lie above the recorded one by some of that; sample faster.");
    static final Finding.Kind NOISY = Finding.Kind.warning(
            "noisy-force",
            "The force jumps by %s (standard deviation) from row to row, and a peak picked"
                    + " from noise is too high; shield the cable or average in the logger.");
    static final Finding.Kind GAP = Finding.Kind.warning(
            "gap-in-record",
            "The record has a gap of %s before or next to its peak, where its rows are %s apart"
                    + " otherwise; what happened there is not known.");
    static final Finding.Kind TIME_FALLS = Finding.Kind.warning(
            "time-falls",
            "Time runs backwards %s in the record; two runs may have been joined, or"
                    + " the clock was set.");
    static final Finding.Kind NOT_A_NUMBER = Finding.Kind.warning(
            "rows-without-number", "%s of the record without a number %s passed over.");
    static final Finding.Kind UPSIDE_DOWN = Finding.Kind.serious(
            "force-negative",
            "The force runs to %s, further below zero than above: the sign of the load cell is"
                    + " turned round. Nothing was calculated; turn the sign and read it again.");
    static final Finding.Kind ZERO_AFTER_BREAK = Finding.Kind.warning(
            "zero-after-break",
            "Behind the break the force stands at %s instead of zero: tare the load cell"
                    + " before each pull, or give its zero as a source of error.");

    private static final double COARSE_SHARE = 0.01;
    private static final double NOISE_SHARE = 0.01;
    private static final double SLIP_SHARE = 0.02;
    private static final double ZERO_SHARE = 0.01;
    private static final double GAP_INTERVALS = 10;
    private static final int FEWEST_ROWS_OF_A_PEAK = 3;
    private static final int FLAT_ROWS = 5;
    private static final double FLAT_QUANTA = 25;
    private static final int ROWS_AFTER_BREAK = 10;
    private static final int PLACES = 401;

    private final LoadCurve curve;
    private final Trace force;
    private final int peak;
    private final double noise;
    private final List<Finding> found = new ArrayList<>();

    private CurveFindings(Trace force, int peak, double noise) {
        this.curve = LoadCurve.of(force);
        this.force = force;
        this.peak = peak;
        this.noise = noise;
    }

    /** Why a record that {@link #provesNoPeak} gives a lower bound. */
    public static final String NO_PEAK = "a record of one or two rows proves no peak";

    /** Returns whether a record is too short to have a row on either side of its largest force. */
    public static boolean provesNoPeak(Readings readings, Channel force) {
        return readings.trace(force).size() < FEWEST_ROWS_OF_A_PEAK;
    }

    /** Returns what is to be said of a record of force (N) with its peak on a row. */
    public static List<Finding> of(Trace force, int peak, double noise) {
        CurveFindings findings = new CurveFindings(force, peak, noise);
        findings.lookForLostRows();
        findings.lookAtPeak();
        findings.lookForSlips();
        findings.lookBehindBreak();
        return List.copyOf(findings.found);
    }

    /** Returns what is to be said of the clock of a record, in s, up to the row behind its peak. */
    public static List<Finding> ofTime(Trace time, int peak) {
        List<Finding> found = new ArrayList<>();
        timeFalls(time).ifPresent(found::add);
        double longest = 0;
        for (int row = 1; row < time.size() && row <= peak + 1; row++) {
            longest = Math.max(longest, time.get(row) - time.get(row - 1));
        }
        double usual = usualStep(time);
        if (usual > 0 && longest > GAP_INTERVALS * usual) {
            found.add(GAP.with(Figures.three(longest) + " s", Figures.three(usual) + " s"));
        }
        return found;
    }

    /** Returns what is to be said of a clock that runs backwards. */
    public static Optional<Finding> timeFalls(Trace time) {
        int backwards = 0;
        for (int row = 1; row < time.size(); row++) {
            backwards += time.get(row) < time.get(row - 1) ? 1 : 0;
        }
        return backwards > 0 ? Optional.of(TIME_FALLS.with(times(backwards))) : Optional.empty();
    }

    /** Returns whether the force runs further below zero than above it. */
    public static boolean isUpsideDown(Trace force) {
        return -smallest(force) > Math.max(0, force.get(force.rowOfLargest()));
    }

    /** Returns the finding for a force of the wrong sign. */
    public static Finding upsideDown(Trace force) {
        return UPSIDE_DOWN.with(newtons(smallest(force)));
    }

    /**
     * Returns whether the top of the record is flat because the instrument was at its end.
     *
     * <p>A round peak stands on its topmost step for some rows as well, but has come only a few
     * steps up over as many rows before them; a saturated one comes up steeply. The limit of 25
     * steps is our own; a parabola comes up 8.
     */
    public static boolean isSaturated(Trace force, int peak) {
        int flat = flatRows(force, peak);
        int before = Math.max(0, peak - flat);
        if (flat < FLAT_ROWS) {
            return false;
        }
        double step = Double.POSITIVE_INFINITY;
        for (int row = 1; row <= peak; row++) {
            double change = Math.abs(force.get(row) - force.get(row - 1));
            step = change > 0 ? Math.min(step, change) : step;
        }
        return force.get(peak) - force.get(before) >= FLAT_QUANTA * step;
    }

    private static int flatRows(Trace force, int peak) {
        int row = peak;
        while (row + 1 < force.size() && force.get(row + 1) == force.get(peak)) {
            row++;
        }
        return row - peak + 1;
    }

    private void lookForLostRows() {
        int lost = 0;
        for (int row = 0; row < force.size(); row++) {
            lost += Double.isFinite(force.get(row)) ? 0 : 1;
        }
        if (lost > 0) {
            found.add(
                    lost == 1
                            ? NOT_A_NUMBER.with("1 row", "was")
                            : NOT_A_NUMBER.with(lost + " rows", "were"));
        }
    }

    private void lookAtPeak() {
        double largest = force.get(peak);
        if (isSaturated(force, peak)) {
            found.add(SATURATED.with(newtons(largest), flatRows(force, peak)));
        } else if (peak == force.size() - 1) {
            found.add(PEAK_AT_LAST_POINT.with(newtons(largest)));
        } else if (peak > 0) {
            double step = largest - force.get(peak - 1);
            if (step > COARSE_SHARE * largest) {
                found.add(COARSE_AT_PEAK.with(newtons(step)));
            }
        }
        if (noise > NOISE_SHARE * largest) {
            found.add(NOISY.with(newtons(noise)));
        }
    }

    private void lookForSlips() {
        double real = Math.max(SLIP_SHARE * force.get(peak), 6 * noise);
        int slips = 0;
        double deepest = 0;
        double highest = force.get(0);
        double lowest = highest;
        for (int row = 1; row <= peak; row++) {
            double value = force.get(row);
            lowest = Math.min(lowest, value);
            if (value >= highest) {
                if (highest - lowest > real) {
                    slips++;
                    deepest = Math.max(deepest, highest - lowest);
                }
                highest = value;
                lowest = value;
            }
        }
        if (slips > 0) {
            found.add(GRIP_SLIP.with(times(slips), newtons(deepest)));
        }
    }

    private void lookBehindBreak() {
        int last = force.size() - 1;
        OptionalInt broke = curve.lastBeforeCollapse(peak);
        if (broke.isEmpty() || last - broke.getAsInt() < 3 * ROWS_AFTER_BREAK) {
            return;
        }
        double sum = 0;
        for (int row = last - ROWS_AFTER_BREAK + 1; row <= last; row++) {
            sum += force.get(row);
        }
        double rest = sum / ROWS_AFTER_BREAK;
        if (Math.abs(rest) > ZERO_SHARE * force.get(peak)) {
            found.add(ZERO_AFTER_BREAK.with(newtons(rest)));
        }
    }

    private static double smallest(Trace force) {
        double smallest = 0;
        for (int row = 0; row < force.size(); row++) {
            smallest = Math.min(smallest, Double.isNaN(force.get(row)) ? 0 : force.get(row));
        }
        return smallest;
    }

    private static double usualStep(Trace time) {
        int steps = time.size() - 1;
        if (steps < 3) {
            return 0;
        }
        int places = Math.min(steps, PLACES);
        double[] some = new double[places];
        for (int i = 0; i < places; i++) {
            int row = (int) ((long) i * steps / places);
            some[i] = time.get(row + 1) - time.get(row);
        }
        Arrays.sort(some);
        return some[places / 2];
    }

    private static String times(int count) {
        return count == 1 ? "once" : count + " times";
    }

    private static String newtons(double value) {
        return Figures.three(value) + " N";
    }
}
