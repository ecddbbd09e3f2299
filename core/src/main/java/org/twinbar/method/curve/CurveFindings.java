package org.twinbar.method.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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
            "The largest %s, %s, is the last row of the record, so the specimen may have"
                    + " carried more; record until the %s has dropped.");
    static final Finding.Kind SATURATED = Finding.Kind.serious(
            "saturated",
            "The %s rises steeply to %s and stands there for %s rows: the %s or its"
                    + " amplifier is at its end, so the specimen carried at least that.");
    static final Finding.Kind GRIP_SLIP = Finding.Kind.warning(
            "grip-slip",
            "Before the peak the %s dropped and came back %s, by up to %s: the grips"
                    + " slipped, something cracked, or the machine paused; how far it had gone"
                    + " since is not all the specimen's.");
    static final Finding.Kind COARSE_AT_PEAK = Finding.Kind.warning(
            "coarse-at-peak",
            "Next to the peak the %s changes by %s from one row to the next, so the true"
                    + " peak may lie above the recorded one by some of that; sample faster.");
    static final Finding.Kind NOISY = Finding.Kind.warning(
            "noisy-force",
            "The %s jumps by %s (standard deviation) from row to row, and a peak picked"
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
            "The %s runs to %s, further below zero than above: the sign of the %s is"
                    + " turned round. Nothing was calculated; turn the sign and read it again.");
    static final Finding.Kind ZERO_AFTER_BREAK = Finding.Kind.warning(
            "zero-after-break",
            "Behind the break the %s stands at %s instead of zero: tare the %s"
                    + " before each specimen, or give its zero as a source of error.");

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

    private final Channel channel;
    private final LoadCurve curve;
    private final Trace force;
    private final int peak;
    private final double noise;
    private final List<Finding> found = new ArrayList<>();

    private CurveFindings(Readings readings, Channel channel, int peak) {
        this.channel = channel;
        this.force = readings.trace(channel);
        this.curve = LoadCurve.of(force);
        this.peak = peak;
        this.noise = noise(readings, channel, peak);
    }

    /**
     * Returns what is to be said of a record of force or torque.
     *
     * @param peak row of its largest value, or where a person put it
     */
    public static List<Finding> of(Readings readings, Channel channel, int peak) {
        CurveFindings findings = new CurveFindings(readings, channel, peak);
        findings.lookForLostRows();
        findings.lookAtPeak();
        findings.lookAtNoise();
        findings.lookForSlips();
        findings.lookBehindBreak();
        return List.copyOf(findings.found);
    }

    /**
     * As {@link #of}, of a record in which it is usual to fall and come back, as in a peel: there
     * jerks can't be told from noise or slips.
     */
    public static List<Finding> ofJerks(Readings readings, Channel channel, int peak) {
        CurveFindings findings = new CurveFindings(readings, channel, peak);
        findings.lookForLostRows();
        findings.lookAtPeak();
        findings.lookBehindBreak();
        return List.copyOf(findings.found);
    }

    /** Returns the noise of a record up to its peak, in the channel's unit; calculated once. */
    public static double noise(Readings readings, Channel channel, int peak) {
        return readings.once(
                "noise of " + channel.name(),
                Double.class,
                () -> Noise.of(readings.trace(channel), 0, peak));
    }

    /** Returns why the largest value of a record is a lower bound; empty where it is the peak. */
    public static Optional<String> bound(Readings readings, Channel channel, int peak) {
        String reason = readings.once(
                "bound of " + channel.name(),
                String.class,
                () -> boundOf(readings.trace(channel), channel, peak));
        return reason.isEmpty() ? Optional.empty() : Optional.of(reason);
    }

    private static String boundOf(Trace force, Channel channel, int peak) {
        if (isSaturated(force, peak)) {
            return "the %s was at its end".formatted(channel.instrument().word());
        }
        return force.size() < FEWEST_ROWS_OF_A_PEAK
                ? "a record of one or two rows proves no peak"
                : "";
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

    /** Returns what is to be said of rows that were passed over for want of a number. */
    public static Optional<Finding> lostRows(int lost) {
        return switch (lost) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(NOT_A_NUMBER.with("1 row", "was"));
            default -> Optional.of(NOT_A_NUMBER.with(lost + " rows", "were"));
        };
    }

    /** Returns whether a record runs further below zero than above it. */
    public static boolean isUpsideDown(Readings readings, Channel channel) {
        return readings.once(channel.name() + " upside down", Boolean.class, () -> {
            Trace force = readings.trace(channel);
            return -smallest(force) > Math.max(0, force.get(force.rowOfLargest()));
        });
    }

    /** Returns why nothing is calculated from a record of the wrong sign. */
    public static String wrongSign(Channel channel) {
        return "the %s is negative throughout: its sign is turned round".formatted(word(channel));
    }

    /** Returns the finding for a record of the wrong sign. */
    public static Finding upsideDown(Readings readings, Channel channel) {
        return UPSIDE_DOWN.with(
                word(channel),
                figure(channel, smallest(readings.trace(channel))),
                channel.instrument().word());
    }

    /**
     * Returns whether the top of the record is flat because the instrument was at its end.
     *
     * <p>A round peak stands on its topmost step for some rows as well, but has come only a few
     * steps up over as many rows before them; a saturated one comes up steeply. The limit of 25
     * steps is our own; a parabola comes up 8.
     */
    static boolean isSaturated(Trace force, int peak) {
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
        lostRows(lost).ifPresent(found::add);
    }

    private void lookAtPeak() {
        double largest = force.get(peak);
        if (isSaturated(force, peak)) {
            found.add(SATURATED.with(
                    word(channel),
                    figure(channel, largest),
                    flatRows(force, peak),
                    channel.instrument().word()));
        } else if (peak == force.size() - 1) {
            found.add(PEAK_AT_LAST_POINT.with(
                    word(channel), figure(channel, largest), word(channel)));
        } else if (peak > 0) {
            double step = largest - force.get(peak - 1);
            if (step > COARSE_SHARE * largest) {
                found.add(COARSE_AT_PEAK.with(word(channel), figure(channel, step)));
            }
        }
    }

    private void lookAtNoise() {
        if (noise > NOISE_SHARE * force.get(peak)) {
            found.add(NOISY.with(word(channel), figure(channel, noise)));
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
            found.add(GRIP_SLIP.with(word(channel), times(slips), figure(channel, deepest)));
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
            found.add(ZERO_AFTER_BREAK.with(
                    word(channel), figure(channel, rest), channel.instrument().word()));
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

    /** Returns what was recorded, as it stands within a sentence. */
    private static String word(Channel channel) {
        String label = channel.label();
        return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    private static String figure(Channel channel, double value) {
        return Figures.three(value) + " " + channel.unit().symbol();
    }
}
