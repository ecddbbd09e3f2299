package org.twinbar.statistics;

import org.apache.commons.statistics.distribution.FDistribution;

/**
 * The F distribution of a ratio of two variances.
 *
 * @param numeratorDf degrees of freedom of the numerator, above zero
 * @param denominatorDf degrees of freedom of the denominator, above zero
 */
public record FisherF(double numeratorDf, double denominatorDf) implements Distribution {

    /** @throws IllegalArgumentException unless both are above zero and finite */
    public FisherF {
        Arguments.requirePositive(numeratorDf, "numerator degrees of freedom");
        Arguments.requirePositive(denominatorDf, "denominator degrees of freedom");
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
        return new CommonsDistribution(FDistribution.of(numeratorDf, denominatorDf));
    }
}
