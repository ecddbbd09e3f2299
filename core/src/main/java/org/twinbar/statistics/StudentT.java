package org.twinbar.statistics;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Student's t distribution.
 *
 * @param df degrees of freedom, above zero, not necessarily whole; infinite ones make it the normal
 *     distribution
 */
public record StudentT(double df) implements Distribution {

    /** @throws IllegalArgumentException unless df > 0 */
    public StudentT {
        Arguments.requireDegreesOfFreedom(df);
    }

    /**
     * The factor of a two-sided interval of this level: the (1 + level) / 2 quantile.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public double twoSided(double level) {
        return quantile((1 + Arguments.requireInside(level, "level")) / 2);
    }

    /** The probability of a value at least as far from zero as this one, on either side. */
    public double twoSidedP(double t) {
        return Math.min(1, 2 * above(Math.abs(t)));
    }

    @Override
    public double below(double x) {
        return library().below(x);
    }

    @Override
    public double above(double x) {
        return library().above(x);
    }

    @Override
    public double quantile(double p) {
        return library().quantile(p);
    }

    private CommonsDistribution library() {
        return new CommonsDistribution(TDistribution.of(df));
    }
}
