package org.twinbar.statistics;

import java.util.Arrays;

/**
 * A straight line fitted by least squares, y = ȳ + slope · (x − x̄).
 *
 * <p>It is held by its height at the mean of x, whose error is independent of the slope's;
 * intercepts far from the data would lose digits.
 *
 * @param meanX mean of x
 * @param atMean value at the mean of x
 * @param slope change of y per unit of x
 * @param varianceAtMean variance of the value at the mean of x
 * @param slopeVariance variance of the slope
 * @param residualSd standard deviation of y about the line, √(Σ residual²/(n − 2))
 * @param determination R², 1 − Σ residual²/Σ(y − ȳ)²
 * @param n number of points
 */
public record StraightLine(
        double meanX,
        double atMean,
        double slope,
        double varianceAtMean,
        double slopeVariance,
        double residualSd,
        double determination,
        int n) {

    /**
     * The line through these points.
     *
     * <p>Slope Σ(x − x̄)(y − ȳ)/Σ(x − x̄)², by {@link LinearFit} on x less its mean. Source: N. R.
     * Draper, H. Smith, Applied regression analysis (1998), chapter 1; NIST StRD Norris.
     *
     * @throws IllegalArgumentException if the lists differ in length, hold fewer than 3 points or a
     *     number that isn't finite, or if all x are equal
     */
    public static StraightLine of(double[] x, double[] y) {
        Arguments.requireFinite(x, 3, "values of x");
        Summary summary = Summary.of(x);
        if (!(summary.max() > summary.min())) {
            throw new IllegalArgumentException(
                    "All x are " + summary.min() + ": no slope can be had from them.");
        }
        double mean = summary.mean();
        double[][] rows = Arrays.stream(x)
                .mapToObj(value -> new double[] {1, value - mean})
                .toArray(double[][]::new);
        LinearFit fit = LinearFit.of(rows, y);
        return new StraightLine(
                mean,
                fit.coefficient(0),
                fit.coefficient(1),
                fit.covariance(0, 0),
                fit.covariance(1, 1),
                fit.residualSd(),
                fit.determination(),
                x.length);
    }

    /** n − 2. */
    public double df() {
        return n - 2;
    }

    /** The line's value at x. */
    public double at(double x) {
        return atMean + slope * (x - meanX);
    }

    /** The slope with its two-sided interval. */
    public Estimate slope(double level) {
        return interval(slope, slopeVariance, level, "least squares, slope");
    }

    /** The value at x = 0. */
    public double intercept() {
        return at(0);
    }

    /** The intercept with its two-sided interval. */
    public Estimate intercept(double level) {
        return interval(intercept(), varianceAt(0), level, "least squares, intercept");
    }

    /** The covariance of intercept and slope. */
    public double covariance() {
        return -meanX * slopeVariance;
    }

    /** The mean of y at x with its two-sided interval. */
    public Estimate mean(double x, double level) {
        return interval(at(x), varianceAt(x), level, "least squares, mean");
    }

    /** One further y at x, with the interval that it falls in. */
    public Estimate prediction(double x, double level) {
        return interval(
                at(x),
                varianceAt(x) + residualSd * residualSd,
                level,
                "least squares, one observation");
    }

    /** The variance of the line's value at x. */
    public double varianceAt(double x) {
        return varianceAtMean + (x - meanX) * (x - meanX) * slopeVariance;
    }

    private Estimate interval(double value, double variance, double level, String method) {
        double half = new StudentT(df()).twoSided(level) * Math.sqrt(variance);
        return new Estimate(value, value - half, value + half, level, df(), n, method);
    }
}
