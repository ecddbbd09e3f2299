package org.twinbar.statistics;

/**
 * How many of a group's specimens were "yes".
 *
 * @param yes number of specimens that were
 * @param n number of specimens
 */
public record Count(int yes, int n) {

    /** @throws IllegalArgumentException unless n ≥ 1 and 0 ≤ yes ≤ n */
    public Count {
        Arguments.requireAtLeast(n, 1, "number of specimens");
        if (yes < 0 || yes > n) {
            throw new IllegalArgumentException(
                    "The number of yes must lie from 0 to " + n + ", not be " + yes + ".");
        }
    }

    /** yes / n. */
    public double share() {
        return (double) yes / n;
    }

    int no() {
        return n - yes;
    }
}
