package org.twinbar.statistics;

/**
 * When something happened to one specimen, as far as it was seen: after one time and by another.
 *
 * <p>Both are the same where the moment was seen. Between two looks the first is the last look that
 * found it whole, the second the first that found it changed. Where the test ended first, the
 * second is ∞.
 *
 * @param after time after which it happened
 * @param until time by which it had happened; ∞ where it had not when the test ended
 */
public record Lifetime(double after, double until) {

    /** @throws IllegalArgumentException unless 0 ≤ after ≤ until and after is finite */
    public Lifetime {
        Arguments.requireNotNegative(after, "time");
        if (!(until >= after)) {
            throw new IllegalArgumentException("The time by which it happened, " + until
                    + ", lies before the time after which, " + after + ".");
        }
    }

    /** It happened at this time. */
    public static Lifetime event(double time) {
        return new Lifetime(time, time);
    }

    /** The test ended at this time, and it had not happened. */
    public static Lifetime censored(double time) {
        return new Lifetime(time, Double.POSITIVE_INFINITY);
    }

    /** It happened between two looks. */
    public static Lifetime between(double lastWithout, double firstWith) {
        return new Lifetime(lastWithout, firstWith);
    }

    public boolean isCensored() {
        return until == Double.POSITIVE_INFINITY;
    }

    /** Whether only two looks enclose it. */
    public boolean isBetweenLooks() {
        return after < until && !isCensored();
    }

    Lifetime atFirst() {
        return isBetweenLooks() ? event(after) : this;
    }

    Lifetime atLast() {
        return isBetweenLooks() ? event(until) : this;
    }

    Lifetime atMiddle() {
        return isBetweenLooks() ? event(after / 2 + until / 2) : this;
    }
}
