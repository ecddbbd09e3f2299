package org.twinbar.statistics.gauge;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Summary;

/**
 * A chart of one reference specimen or material over time: does the bench still read what it read?
 *
 * @param points what is drawn: the values, or their weighted means
 * @param centre where they should lie (the values' unit)
 * @param low lower limit
 * @param high upper limit
 * @param signals where the chart says that something changed, in order
 * @param method how it was made, in words
 */
public record ControlChart(
        List<Double> points,
        double centre,
        double low,
        double high,
        List<Signal> signals,
        String method) {

    /**
     * What a chart says.
     *
     * @param index the point at which it is said, from 0
     * @param rule which rule
     */
    public record Signal(int index, Rule rule) {}

    /**
     * Rules of runs. Source: Western Electric, Statistical Quality Control Handbook (1956); the
     * last L. S. Nelson (1984).
     */
    public enum Rule {
        /** One point outside the limits. */
        BEYOND_LIMITS,
        /** Two of three points in a row in the outer third on one side, or beyond. */
        TWO_OF_THREE,
        /** Four of five points in a row beyond the inner third on one side. */
        FOUR_OF_FIVE,
        /** Eight points in a row on one side. */
        EIGHT_ON_ONE_SIDE,
        /** Six points in a row rising, or falling. */
        SIX_IN_ONE_DIRECTION
    }

    /** Mean range of two normal values in standard deviations, as tabled. */
    private static final double D2_OF_TWO = 1.128;

    private static final double LIMIT = 3;

    public ControlChart {
        points = List.copyOf(points);
        signals = List.copyOf(signals);
    }

    /**
     * Individual values: x̄ ± 3·MR̄/1.128, MR the distance of neighbours; all rules.
     *
     * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
     *
     * @throws IllegalArgumentException if there are fewer than 2 values, or one isn't finite
     */
    public static ControlChart individuals(double[] values) {
        Arguments.requireFinite(values, 2, "values");
        double ranges = 0;
        for (int i = 1; i < values.length; i++) {
            ranges += Math.abs(values[i] - values[i - 1]);
        }
        double sd = ranges / (values.length - 1) / D2_OF_TWO;
        return individuals(values, Summary.of(values).mean(), sd);
    }

    /**
     * Individual values against a centre and a scatter known from before; all rules.
     *
     * @throws IllegalArgumentException if there is no value, one isn't finite, or sd < 0
     */
    public static ControlChart individuals(double[] values, double centre, double sd) {
        Arguments.requireFinite(values, 1, "values");
        Arguments.requireFinite(centre, "centre");
        Arguments.requireNotNegative(sd, "standard deviation");
        return new ControlChart(
                boxed(values),
                centre,
                centre - LIMIT * sd,
                centre + LIMIT * sd,
                signals(values, centre, sd),
                "individual values, limits at 3 standard deviations");
    }

    /**
     * Exponentially weighted moving average: zᵢ = λxᵢ + (1 − λ)zᵢ₋₁, z₀ the target; limits target ±
     * 3s√(λ/(2 − λ)).
     *
     * <p>Sees slow drift sooner than single values do; only points outside the limits are signals,
     * since neighbours share values. Source: NIST/SEMATECH e-Handbook of Statistical Methods,
     * 6.3.2.4.
     *
     * @param weight λ, the share of the newest value; 0.2 to 0.3 is usual
     * @throws IllegalArgumentException if there is no value, one isn't finite, sd < 0, or λ is not
     *     within (0, 1]
     */
    public static ControlChart weighted(double[] values, double target, double sd, double weight) {
        Arguments.requireFinite(values, 1, "values");
        Arguments.requireFinite(target, "target");
        Arguments.requireNotNegative(sd, "standard deviation");
        if (!(weight > 0 && weight <= 1)) {
            throw new IllegalArgumentException(
                    "The newest value's weight must lie above 0 and up to 1, not " + weight + ".");
        }
        double half = LIMIT * sd * Math.sqrt(weight / (2 - weight));
        List<Double> points = new ArrayList<>();
        List<Signal> signals = new ArrayList<>();
        double z = target;
        for (int i = 0; i < values.length; i++) {
            z = weight * values[i] + (1 - weight) * z;
            points.add(z);
            if (Math.abs(z - target) > half) {
                signals.add(new Signal(i, Rule.BEYOND_LIMITS));
            }
        }
        return new ControlChart(
                points,
                target,
                target - half,
                target + half,
                signals,
                "exponentially weighted moving average, weight " + weight);
    }

    /** Whether no rule says that something changed. */
    public boolean isInControl() {
        return signals.isEmpty();
    }

    private static List<Signal> signals(double[] values, double centre, double sd) {
        List<Signal> signals = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (Math.abs(values[i] - centre) > LIMIT * sd) {
                signals.add(new Signal(i, Rule.BEYOND_LIMITS));
            }
            if (many(values, i, 2, 3, centre, 2 * sd)) {
                signals.add(new Signal(i, Rule.TWO_OF_THREE));
            }
            if (many(values, i, 4, 5, centre, sd)) {
                signals.add(new Signal(i, Rule.FOUR_OF_FIVE));
            }
            if (many(values, i, 8, 8, centre, 0)) {
                signals.add(new Signal(i, Rule.EIGHT_ON_ONE_SIDE));
            }
            if (inOneDirection(values, i)) {
                signals.add(new Signal(i, Rule.SIX_IN_ONE_DIRECTION));
            }
        }
        return signals;
    }

    /**
     * Whether the point at {@code last} is the newest of so many beyond, on its side, among the
     * last few.
     */
    private static boolean many(
            double[] values, int last, int wanted, int among, double centre, double beyond) {
        double side = Math.signum(values[last] - centre);
        int count = 0;
        for (int i = Math.max(0, last - among + 1); i <= last; i++) {
            count += side * (values[i] - centre) > beyond ? 1 : 0;
        }
        return count >= wanted && side * (values[last] - centre) > beyond;
    }

    private static boolean inOneDirection(double[] values, int last) {
        if (last < 5) {
            return false;
        }
        double direction = Math.signum(values[last] - values[last - 1]);
        for (int i = last - 4; i <= last; i++) {
            if (direction == 0 || Math.signum(values[i] - values[i - 1]) != direction) {
                return false;
            }
        }
        return true;
    }

    private static List<Double> boxed(double[] values) {
        List<Double> boxed = new ArrayList<>();
        for (double value : values) {
            boxed.add(value);
        }
        return boxed;
    }
}
