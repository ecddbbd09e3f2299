package org.twinbar.method.curve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Choice;
import org.twinbar.method.Mark;
import org.twinbar.method.Readings;

/**
 * Where the load began: slack, seating and misalignment make the start of a curve lag.
 *
 * <p>The way counts from where the steepest straight stretch meets zero force (ASTM D638-22, annex
 * A1), or from the first row. Not for a specimen whose slow start is its own, such as an open
 * infill that is crushed first.
 */
public final class Toe {

    public static final String COMPENSATE = "compensate";
    public static final String AS_RECORDED = "as_recorded";

    public static final Choice CHOICE = new Choice(
            "toe",
            "Count from where the straight stretch meets zero force, or from the start",
            List.of(COMPENSATE, AS_RECORDED),
            COMPENSATE);

    public static final Mark START = new Mark("start", "Start of the loading");
    public static final Mark STRAIGHT_FROM = new Mark("straight_from", "Straight stretch from");
    public static final Mark STRAIGHT_TO = new Mark("straight_to", "Straight stretch to");

    static final Finding.Kind LARGE = Finding.Kind.warning(
            "toe-large",
            "The toe is %s %% of the stretch at the largest force, above 15 %%: slack in the grips or"
                    + " supports, or a specimen that really gives at first; look at the start of the"
                    + " curve.");

    /** Our own: beyond this share of the stretch, the choice of the toe decides it. */
    private static final double LARGE_SHARE = 0.15;

    private Toe() {}

    /**
     * Returns what is to be said of a toe that is more than 15 % of the stretch.
     *
     * @param toe way that was taken off
     * @param stretch way at the largest force, less the toe
     */
    public static Optional<Finding> large(double toe, double stretch) {
        double share = toe / stretch;
        return share > LARGE_SHARE
                ? Optional.of(LARGE.with(Figures.two(100 * share)))
                : Optional.empty();
    }

    public static boolean isCompensated(Readings readings) {
        return readings.choice(CHOICE).equals(COMPENSATE);
    }

    /** Returns the row at which the loading starts: the first, unless a person moved it. */
    public static int start(Readings readings) {
        return readings.mark(START, () -> OptionalInt.of(0)).getAsInt();
    }

    /** Returns the way at which the load began, in the world of the readings and the curve. */
    public static double zero(Readings readings, LoadCurve curve, int peak) {
        int start = start(readings);
        if (!isCompensated(readings)) {
            return curve.way(start);
        }
        int from = readings.mark(
                        STRAIGHT_FROM,
                        () -> OptionalInt.of(found(readings, curve, peak).from()))
                .getAsInt();
        int to = readings.mark(
                        STRAIGHT_TO,
                        () -> OptionalInt.of(found(readings, curve, peak).to()))
                .getAsInt();
        Line line = curve.line(
                readings.once("straight line", Window.class, () -> curve.window(from, to)));
        return line.slope() > 0 ? line.zeroCrossing() : curve.way(start);
    }

    private static LoadCurve.Stretch found(Readings readings, LoadCurve curve, int peak) {
        return readings.once(
                "straight stretch", LoadCurve.Stretch.class, () -> curve.steepest(peak));
    }
}
