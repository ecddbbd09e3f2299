package org.twinbar.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * The χ² distribution.
 *
 * @param df degrees of freedom, above zero, not necessarily whole
 */
public record ChiSquared(double df) implements Distribution {

    /** @throws IllegalArgumentException unless 0 < df < ∞ */
    public ChiSquared {
        Arguments.requirePositive(df, "degrees of freedom");
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
        return new CommonsDistribution(ChiSquaredDistribution.of(df));
    }
}
