package org.twinbar.method.curve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.method.Choice;
import org.twinbar.method.Limits;
import org.twinbar.method.Mark;
import org.twinbar.method.Readings;
import org.twinbar.method.Setting;
import org.twinbar.quantity.Unit;

/**
 * The slope of a curve between two strains, by which a modulus is told.
 *
 * <p>From 0.05 to 0.25 % unless set otherwise; the line through all points between them, or the
 * chord between the two ends with the force interpolated there. Source: ISO 527-1:2019, 10.3; ISO
 * 178.
 */
public final class SlopeWindow {

    public static final String REGRESSION = "regression";
    public static final String CHORD = "chord";
    public static final Choice BY = new Choice(
            "modulus_by",
            "Modulus from the line through all points of the window, or its two ends",
            List.of(REGRESSION, CHORD),
            REGRESSION);
    public static final Setting FROM = percent("modulus_from", "Modulus window from", 0.05);
    public static final Setting TO = percent("modulus_to", "Modulus window to", 0.25);
    public static final Mark ROW_FROM = new Mark("window_from", "Modulus window from");
    public static final Mark ROW_TO = new Mark("window_to", "Modulus window to");

    static final Finding.Kind STEPS_COARSE = Finding.Kind.note(
            "modulus-steps-coarse",
            "The stretch is read in steps of %s %s, and %s %s make the whole modulus window; %s"
                    + " wants 1 %% of the window, so the modulus is rough.");

    /** Accuracy of the stretch as a share of the window: ISO 527-1:2019, 5.1.5; ISO 178. */
    private static final double STEP_SHARE = 0.01;

    /** A strain that misses an end by rounding alone is at it. */
    private static final double ROUNDING = 1e-9;

    private static final int FEWEST_POINTS = 3;

    private final Readings readings;
    private final LoadCurve curve;
    private final Channels channels;
    private final double wayFrom;
    private final double wayTo;
    private final OptionalInt from;
    private final OptionalInt to;

    /** The two channels whose display steps an end of the chord has. */
    public record Channels(Channel force, Channel way) {}

    private SlopeWindow(
            Readings readings,
            LoadCurve curve,
            Channels channels,
            double zero,
            double wayPerStrain,
            int peak) {
        this.readings = readings;
        this.curve = curve;
        this.channels = channels;
        this.wayFrom = zero + readings.setting(FROM) / 100 * wayPerStrain;
        this.wayTo = zero + readings.setting(TO) / 100 * wayPerStrain;
        double rounding = ROUNDING * (wayTo - wayFrom);
        this.from = readings.mark(ROW_FROM, () -> curve.firstReaching(wayFrom - rounding, 0, peak));
        this.to = readings.mark(ROW_TO, () -> lastUpTo(rounding, peak));
    }

    /**
     * Returns the window of a curve.
     *
     * @param zero the way at which the load began
     * @param wayPerStrain way per strain of 1, such as the gauge length
     * @param peak row of the peak, beyond which nothing is looked for
     */
    public static SlopeWindow of(
            Readings readings,
            LoadCurve curve,
            Channels channels,
            double zero,
            double wayPerStrain,
            int peak) {
        return new SlopeWindow(readings, curve, channels, zero, wayPerStrain, peak);
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
    public Optional<String> missing() {
        if (wayTo <= wayFrom) {
            return Optional.of("the modulus window ends before it begins");
        }
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.of("the strain never reached %s %% before the peak"
                    .formatted(readings.setting(TO)));
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

    /** Returns the first row of the window. */
    public int from() {
        return from.getAsInt();
    }

    /** Returns the last row of the window. */
    public int to() {
        return to.getAsInt();
    }

    /** Returns force per way, as chosen. */
    public double slope() {
        return byChord() ? chordSlope() : line().slope();
    }

    /** Returns the line through all points of the window, force on way. */
    public Line line() {
        return curve.line(readings.once(
                "modulus window",
                Window.class,
                () -> curve.window(from.getAsInt(), to.getAsInt())));
    }

    /** Returns the slope between the two strains themselves, the force interpolated there. */
    public double chordSlope() {
        int behind = Math.min(to.getAsInt() + 1, curve.rows() - 1);
        double forceFrom = curve.forceAt(wayFrom, from.getAsInt())
                + readings.resolutionAt(channels.force(), "window from");
        double forceTo =
                curve.forceAt(wayTo, behind) + readings.resolutionAt(channels.force(), "window to");
        double way = wayTo
                - wayFrom
                + readings.resolutionAt(channels.way(), "window to")
                - readings.resolutionAt(channels.way(), "window from");
        return (forceTo - forceFrom) / way;
    }

    private boolean beginsInside() {
        return from.getAsInt() == 0
                && readings.once(
                        "begins inside",
                        Boolean.class,
                        () -> curve.way(0) > wayFrom + ROUNDING * (wayTo - wayFrom));
    }

    /**
     * Returns what is to be said where the display's step is more than 1 % of the window.
     *
     * @param standard who wants that
     */
    public Optional<Finding> coarseSteps(String standard) {
        double step = readings.step(channels.way());
        String unit = channels.way().unit().symbol();
        return step > STEP_SHARE * (wayTo - wayFrom)
                ? Optional.of(STEPS_COARSE.with(
                        Figures.two(step), unit, Figures.two(wayTo - wayFrom), unit, standard))
                : Optional.empty();
    }

    public boolean byChord() {
        return readings.choice(BY).equals(CHORD);
    }

    private static Setting percent(String name, String label, double preset) {
        return new Setting(name, label, Unit.of("%"), preset, Limits.between(0, 20));
    }
}
