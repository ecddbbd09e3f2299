package org.twinbar.statistics.groups;

import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.FisherF;

/**
 * A ratio of two mean squares and how surprising it is if both estimate one variance.
 *
 * @param f the ratio; ∞ where the denominator is zero and the numerator is not
 * @param numeratorDf degrees of freedom of the numerator
 * @param denominatorDf degrees of freedom of the denominator
 * @param p probability of a ratio at least as large
 * @param method what was tested, in words
 */
public record FTest(double f, double numeratorDf, double denominatorDf, double p, String method) {

    /** @throws IllegalArgumentException unless f ≥ 0, both degrees of freedom > 0 and 0 ≤ p ≤ 1 */
    public FTest {
        if (!(f >= 0)) {
            throw new IllegalArgumentException(
                    "A ratio of mean squares must be 0 or more, not " + f + ".");
        }
        Arguments.requireDegreesOfFreedom(numeratorDf);
        Arguments.requireDegreesOfFreedom(denominatorDf);
        Arguments.requireShare(p, "probability");
    }

    /** The test of these sums of squares; where both are zero nothing varies, and f is 0. */
    public static FTest of(
            double numeratorSquares,
            double numeratorDf,
            double denominatorSquares,
            double denominatorDf,
            String method) {
        double numerator = numeratorSquares / numeratorDf;
        double f = numerator == 0 ? 0 : numerator / (denominatorSquares / denominatorDf);
        double p = f == Double.POSITIVE_INFINITY
                ? 0
                : new FisherF(numeratorDf, denominatorDf).above(f);
        return new FTest(f, numeratorDf, denominatorDf, p, method);
    }
}
