package org.twinbar.method.curve;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.twinbar.method.Trace;

/**
 * Force against the way that the loaded point has gone, in one world.
 *
 * <p>The way is the recorded travel less what the machine itself gave: s = travel − C·F.
 */
public final class LoadCurve {

    /** The force has collapsed where it is below this share of the largest: METHODS A.1. */
    static final double COLLAPSED = 0.10;

    /**
     * A fall within one row that is part of the collapse, as a share of the largest force; our own.
     */
    private static final double COLLAPSING = 0.02;

    /**
     * A force that is back before the way has grown by a tenth had slipped, not yielded; our own.
     */
    private static final double RECOVERED_AT_ONCE = 1.10;

    /** Share of the largest force that the straight stretch spans; our own, wide against noise. */
    private static final double STRAIGHT_SPAN = 0.20;

    /** Of stretches that differ by rounding alone the first is taken, in any unit. */
    private static final double ROUNDING = 1e-9;

    private static final int ROWS_TO_SEARCH = 1000;

    private static final int FEWEST_ROWS_OF_A_STRETCH = 4;

    private final Trace force;
    private final @Nullable Trace travel;
    private final double compliance;

    private LoadCurve(Trace force, @Nullable Trace travel, double compliance) {
        this.force = force;
        this.travel = travel;
        this.compliance = compliance;
    }

    /** Returns a curve of force alone. */
    public static LoadCurve of(Trace force) {
        return new LoadCurve(force, null, 0);
    }

    /**
     * Returns a curve of force against travel.
     *
     * @param compliance of machine and grips, in units of travel per unit of force; 0 for none
     */
    public static LoadCurve of(Trace force, Trace travel, double compliance) {
        return new LoadCurve(force, travel, compliance);
    }

    public int rows() {
        return force.size();
    }

    public double force(int row) {
        return force.get(row);
    }

    public boolean hasTravel() {
        return travel != null;
    }

    /** Returns the way at a row, without what the machine gave. */
    public double way(int row) {
        return needTravel().get(row) - compliance * force.get(row);
    }

    /** Returns the sums of a run of rows as they are here; for the world without errors. */
    public Window window(int from, int to) {
        return Window.of(force, needTravel(), from, to);
    }

    /**
     * Returns the line of force on way through a run of rows.
     *
     * @param atRest its sums in the world without errors: the line in any other follows from them,
     *     so that no world goes through the rows again
     */
    public Line line(Window atRest) {
        return atRest.in(force, needTravel(), compliance);
    }

    /**
     * Returns ∫ F ds over a run of rows by the trapezoid rule.
     *
     * <pre>s = d − C·F,  ∫ F ds = ∫ F dd − C·(F_to² − F_from²)/2</pre>
     *
     * @param atRest the sums of the run in the world without errors
     */
    public double work(Window atRest) {
        Trace travel = needTravel();
        double way = travel.get(atRest.to()) - travel.get(atRest.from());
        double byTravel = force.scale() * travel.scale() * atRest.work() + force.offset() * way;
        double first = force.get(atRest.from());
        double last = force.get(atRest.to());
        return byTravel - compliance * (last * last - first * first) / 2;
    }

    private Trace needTravel() {
        if (travel == null) {
            throw new IllegalStateException("no travel was recorded");
        }
        return travel;
    }

    /** Returns the row of the largest force. */
    public int peak() {
        return force.rowOfLargest();
    }

    /**
     * Returns the last row before the force collapses; empty where the record ends before it does.
     *
     * <p>The force has collapsed at the first row behind the peak with less than a tenth of the
     * largest force. From there the search goes back for as long as each row lost more than 2 % of
     * the largest force, since a filter in the logger spreads a collapse over several rows.
     */
    public OptionalInt lastBeforeCollapse(int peak) {
        double largest = force.get(peak);
        for (int row = peak + 1; row < rows(); row++) {
            if (force.get(row) < COLLAPSED * largest) {
                int last = row - 1;
                while (last > peak
                        && force.get(last - 1) - force.get(last) > COLLAPSING * largest) {
                    last--;
                }
                return OptionalInt.of(last);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Returns the first row of a maximum that a real decrease follows; empty where the force never
     * falls so far, or recovers at once as after a slip.
     *
     * @param decrease a fall by this much is real
     * @param zero the way at which the load began
     * @param lastRow how far to look: the last row before the break
     */
    public OptionalInt firstMaximum(double decrease, double zero, int lastRow) {
        int highest = 0;
        boolean fell = false;
        for (int row = 1; row <= lastRow; row++) {
            double value = force.get(row);
            if (value > force.get(highest) || Double.isNaN(force.get(highest))) {
                if (fell && way(row) - zero > RECOVERED_AT_ONCE * (way(highest) - zero)) {
                    return OptionalInt.of(highest);
                }
                fell = false;
                highest = row;
            } else {
                fell |= force.get(highest) - value > decrease;
            }
        }
        return fell ? OptionalInt.of(highest) : OptionalInt.empty();
    }

    /** A run of rows, both ends included. */
    public record Stretch(int from, int to) {}

    /**
     * Returns the steepest stretch before the peak over which the force rises by a fifth of the
     * largest; the whole rise where there is none so long.
     *
     * <p>A curve of very many rows is searched on about a thousand of them: where the stretch
     * begins and ends matters little, and its line is laid through all of its rows.
     */
    public Stretch steepest(int peak) {
        int step = Math.max(1, peak / ROWS_TO_SEARCH);
        int last = peak - peak % step;
        double rise = STRAIGHT_SPAN * (force.get(peak) - Math.min(0, force.get(0)));
        Line.Sums sums = new Line.Sums();
        Stretch best = new Stretch(0, peak);
        double steepest = Double.NEGATIVE_INFINITY;
        int to = -step;
        for (int from = 0; from < last; from += step) {
            while (to < last && (to < from || force.get(to) - force.get(from) < rise)) {
                to += step;
                sums.add(way(to), force.get(to));
            }
            if (force.get(to) - force.get(from) < rise) {
                break;
            }
            double slope = sums.slope();
            if (sums.points() >= FEWEST_ROWS_OF_A_STRETCH
                    && slope > steepest + ROUNDING * Math.abs(slope)) {
                steepest = slope;
                best = new Stretch(from, to);
            }
            sums.remove(way(from), force.get(from));
        }
        return best;
    }

    /** Returns the first row from one on whose way reaches a length; empty where none does. */
    public OptionalInt firstReaching(double way, int fromRow, int lastRow) {
        for (int row = fromRow; row <= lastRow; row++) {
            if (way(row) >= way) {
                return OptionalInt.of(row);
            }
        }
        return OptionalInt.empty();
    }

    /** Returns the force where the way is a given length, between a row and the one before it. */
    public double forceAt(double way, int row) {
        int before = Math.max(0, row - 1);
        int after = Math.max(1, row);
        double share = (way - way(before)) / (way(after) - way(before));
        return force.get(before) + share * (force.get(after) - force.get(before));
    }
}
