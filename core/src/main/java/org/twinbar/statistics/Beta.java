package org.twinbar.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The beta distribution on 0 to 1.
 *
 * @param alpha first shape, above zero
 * @param beta second shape, above zero
 */
public record Beta(double alpha, double beta) implements Distribution {

    /** @throws IllegalArgumentException unless both are above zero and finite */
    public Beta {
        Arguments.requirePositive(alpha, "first shape");
        Arguments.requirePositive(beta, "second shape");
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
        return new CommonsDistribution(BetaDistribution.of(alpha, beta));
    }
}
