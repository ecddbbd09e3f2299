package org.twinbar.method.tensile;

import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.method.Readings;
import org.twinbar.method.curve.Line;
import org.twinbar.method.curve.LoadCurve;
import org.twinbar.method.curve.Window;

/** The rows between two strains, 0.05 and 0.25 % unless set otherwise (ISO 527-1:2019, 10.3). */
final class ModulusWindow {

    /** A strain that misses an end by rounding alone is at it. */
    private static final double ROUNDING = 1e-9;

    private static final int FEWEST_POINTS = 3;

    private final Readings readings;
    private final LoadCurve curve;
    private final Stretching stretching;
    private final double wayFrom;
    private final double wayTo;
    private final OptionalInt from;
    private final OptionalInt to;

    ModulusWindow(
            Readings readings, LoadCurve curve, Stretching stretching, double zero, int peak) {
        this.readings = readings;
        this.curve = curve;
        this.stretching = stretching;
        double percent = 100 * stretching.strainPerWay().orElseThrow();
        this.wayFrom = zero + readings.setting(PullForm.MODULUS_FROM) / percent;
        this.wayTo = zero + readings.setting(PullForm.MODULUS_TO) / percent;
        double rounding = ROUNDING * (wayTo - wayFrom);
        this.from = readings.mark(
                PullForm.WINDOW_FROM, () -> curve.firstReaching(wayFrom - rounding, 0, peak));
        this.to = readings.mark(PullForm.WINDOW_TO, () -> lastUpTo(rounding, peak));
    }

    private OptionalInt lastUpTo(double rounding, int peak) {
        OptionalInt reached = curve.firstReaching(wayTo - rounding, 0, peak);
        if (reached.isEmpty() || curve.way(reached.getAsInt()) <= wayTo + rounding) {
            return reached;
        }
        int before = reached.getAsInt() - 1;
        return before >= 0 ? OptionalInt.of(before) : OptionalInt.empty();
    }

    /** Returns why there is no modulus, if so. */
    Optional<String> missing() {
        if (wayTo <= wayFrom) {
            return Optional.of("the modulus window ends before it begins");
        }
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.of("the strain never reached %s %% before the peak"
                    .formatted(readings.setting(PullForm.MODULUS_TO)));
        }
        if (byChord() && beginsInside()) {
            return Optional.of("the record begins above the start of the modulus window");
        }
        int points = to.getAsInt() - from.getAsInt() + 1;
        if (points < FEWEST_POINTS && !byChord()) {
            return Optional.of("%s rows lie in the modulus window, a line wants %s; sample faster"
                    .formatted(Math.max(0, points), FEWEST_POINTS));
        }
        return slope() > 0
                ? Optional.empty()
                : Optional.of("the force does not rise over the modulus window");
    }

    int to() {
        return to.getAsInt();
    }

    double slope() {
        return byChord() ? chordSlope() : line().slope();
    }

    /** Returns the line through all points of the window, force on way. */
    Line line() {
        return curve.line(readings.once(
                "modulus window",
                Window.class,
                () -> curve.window(from.getAsInt(), to.getAsInt())));
    }

    /** Returns the slope between the two strains themselves, the force interpolated there. */
    double chordSlope() {
        int behind = Math.min(to.getAsInt() + 1, curve.rows() - 1);
        double forceFrom = curve.forceAt(wayFrom, from.getAsInt())
                + readings.resolutionAt(PullForm.FORCE, "window from");
        double forceTo =
                curve.forceAt(wayTo, behind) + readings.resolutionAt(PullForm.FORCE, "window to");
        double way = wayTo
                - wayFrom
                + readings.resolutionAt(stretching.needChannel(), "window to")
                - readings.resolutionAt(stretching.needChannel(), "window from");
        return (forceTo - forceFrom) / way;
    }

    private boolean beginsInside() {
        return from.getAsInt() == 0
                && readings.once(
                        "begins inside",
                        Boolean.class,
                        () -> curve.way(0) > wayFrom + ROUNDING * (wayTo - wayFrom));
    }

    private boolean byChord() {
        return readings.choice(PullForm.MODULUS_BY).equals(PullForm.CHORD);
    }
}
