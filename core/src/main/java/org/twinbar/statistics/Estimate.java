package org.twinbar.statistics;

import java.util.function.DoubleUnaryOperator;

/**
 * An estimate with its interval.
 *
 * @param value the estimate; never NaN, infinite only where the data set it no bound
 * @param low lower end, at most {@code high}; −∞, or 0 for a ratio, where there is none
 * @param high upper end; ∞ where there is none
 * @param level share of such intervals that hold the true value, 0.95 say
 * @param df degrees of freedom; ∞ where the interval rests on none
 * @param n number of specimens behind it
 * @param method how it was calculated, in the words of a report
 */
public record Estimate(
        double value, double low, double high, double level, double df, int n, String method) {

    /**
     * @throws IllegalArgumentException unless low ≤ high, 0 < level < 1, df > 0, n ≥ 0, and value
     *     is a number
     */
    public Estimate {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "The lower end " + low + " lies above the upper end " + high + ".");
        }
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("The estimate must be a number.");
        }
        Arguments.requireInside(level, "level");
        Arguments.requireDegreesOfFreedom(df);
        Arguments.requireAtLeast(n, 0, "number of specimens");
    }

    /** Whether the interval holds this value, its ends included. */
    public boolean holds(double something) {
        return low <= something && something <= high;
    }

    /** Whether both ends are finite. */
    public boolean isBounded() {
        return Double.isFinite(low) && Double.isFinite(high);
    }

    /** The same in another scale, by an increasing function; degrees of freedom and method stay. */
    Estimate through(DoubleUnaryOperator increasing) {
        return new Estimate(
                increasing.applyAsDouble(value),
                increasing.applyAsDouble(low),
                increasing.applyAsDouble(high),
                level,
                df,
                n,
                method);
    }
}
