package org.twinbar.statistics;

/**
 * The mean of one group with what it is uncertain by.
 *
 * @param mean the mean
 * @param variance variance of the mean (not of one specimen), zero or more
 * @param df degrees of freedom of that variance
 * @param n number of specimens
 */
public record MeanEstimate(double mean, double variance, double df, int n) {

    private static final double ROOT_OF_THREE = Math.sqrt(3);

    /**
     * @throws IllegalArgumentException unless mean is finite, variance ≥ 0 and finite, df > 0, n ≥
     *     1
     */
    public MeanEstimate {
        Arguments.requireFinite(mean, "mean");
        Arguments.requireNotNegative(variance, "variance of the mean");
        Arguments.requireDegreesOfFreedom(df);
        Arguments.requireAtLeast(n, 1, "number of specimens");
    }

    /**
     * The mean of these values, with variance s²/n and n − 1 degrees of freedom.
     *
     * @throws IllegalArgumentException if there are fewer than 2, or one isn't finite
     */
    public static MeanEstimate of(double... values) {
        Arguments.requireFinite(values, 2, "values");
        Summary summary = Summary.of(values);
        return new MeanEstimate(
                summary.mean(), summary.variance() / summary.n(), summary.n() - 1, summary.n());
    }

    /**
     * The same mean, its scatter not believed below what the readings can resolve.
     *
     * <p>Rounding does not average out: where s &lt; √3·u the variance of the mean is max(s²/n,
     * u²), s² = n · variance. Degrees of freedom stay. Source: METHODS.md J.1, by simulation there.
     *
     * @param u standard uncertainty of one result from resolution, in the unit of the mean (d/√12
     *     for a step d)
     * @throws IllegalArgumentException unless u ≥ 0 and finite
     */
    public MeanEstimate withResolution(double u) {
        Arguments.requireNotNegative(u, "uncertainty from resolution");
        boolean coarse = Math.sqrt(n * variance) < ROOT_OF_THREE * u;
        return coarse ? new MeanEstimate(mean, Math.max(variance, u * u), df, n) : this;
    }

    /** The two-sided interval of the mean by Student's t. */
    public Estimate interval(double level) {
        double half = new StudentT(df).twoSided(level) * Math.sqrt(variance);
        return new Estimate(mean, mean - half, mean + half, level, df, n, "Student's t");
    }
}
