package org.twinbar.method;

import org.twinbar.quantity.Unit;

/**
 * The range that a number must lie in; NaN lies in none.
 *
 * @param lowest the lower end
 * @param end whether the lower end itself is allowed
 * @param highestInclusive the upper end, itself allowed
 */
public record Limits(double lowest, End end, double highestInclusive) {

    /** Whether an end belongs to its range. */
    public enum End {
        INCLUDED,
        EXCLUDED
    }

    public static final Limits ANY =
            new Limits(Double.NEGATIVE_INFINITY, End.INCLUDED, Double.POSITIVE_INFINITY);
    public static final Limits ABOVE_ZERO = new Limits(0, End.EXCLUDED, Double.POSITIVE_INFINITY);
    public static final Limits ZERO_OR_MORE = new Limits(0, End.INCLUDED, Double.POSITIVE_INFINITY);

    public static Limits between(double lowestInclusive, double highestInclusive) {
        return new Limits(lowestInclusive, End.INCLUDED, highestInclusive);
    }

    public boolean allow(double value) {
        boolean aboveLowest = end == End.INCLUDED ? value >= lowest : value > lowest;
        return aboveLowest && value <= highestInclusive;
    }

    /** Returns the range in words, such as "above 0 mm" or "0 to 180 °"; empty for any number. */
    public String describe(Unit unit) {
        String behind = unit.symbol().isEmpty() ? "" : "\u2009" + unit.symbol();
        boolean open = Double.isInfinite(highestInclusive);
        if (open) {
            return Double.isInfinite(lowest)
                    ? ""
                    : (end == End.INCLUDED ? "at least " : "above ") + plain(lowest) + behind;
        }
        return plain(lowest) + " to " + plain(highestInclusive) + behind;
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
