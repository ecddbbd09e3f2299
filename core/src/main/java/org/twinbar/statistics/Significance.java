package org.twinbar.statistics;

/**
 * How surprising data are if there is no effect: for reference beside an interval, never in place
 * of one.
 *
 * @param statistic the test's statistic
 * @param df degrees of freedom; ∞ where it has none
 * @param p probability of a statistic at least as extreme, 0 to 1
 * @param method what was tested, and on how many sides
 */
public record Significance(double statistic, double df, double p, String method) {

    /** @throws IllegalArgumentException unless statistic is a number, df > 0 and 0 ≤ p ≤ 1 */
    public Significance {
        if (Double.isNaN(statistic)) {
            throw new IllegalArgumentException("The statistic must be a number.");
        }
        Arguments.requireDegreesOfFreedom(df);
        Arguments.requireShare(p, "probability");
    }
}
