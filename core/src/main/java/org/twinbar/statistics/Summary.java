package org.twinbar.statistics;

import java.util.Arrays;

/**
 * What a list of values comes to.
 *
 * <p>Squares and products are taken about the mean, and the mean, each deviation and every sum
 * carry what rounding loses. On NIST's univariate sets this gives all digits that doubles of that
 * size hold.
 */
public final class Summary {

    private final double[] values;
    private final double[] sorted;
    private final double mean;

    /** What the mean lost by rounding. */
    private final double lost;

    private final double sumOfSquares;

    private Summary(double[] values, double[] sorted) {
        this.values = values;
        this.sorted = sorted;
        this.mean = mean(values);
        this.lost = missed(values, mean);
        this.sumOfSquares = products(0);
    }

    /**
     * The summary of these values.
     *
     * @throws IllegalArgumentException if there is none, or one isn't finite
     */
    public static Summary of(double... values) {
        Arguments.requireFinite(values, 1, "values");
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Summary(values.clone(), sorted);
    }

    public int n() {
        return values.length;
    }

    /** The arithmetic mean. */
    public double mean() {
        return mean;
    }

    /**
     * The variance, Σ(x − x̄)²/(n − 1).
     *
     * @throws IllegalStateException if n < 2: one value has no scatter to see
     */
    public double variance() {
        if (values.length < 2) {
            throw new IllegalStateException(
                    "One value alone has no scatter; at least 2 are needed.");
        }
        return sumOfSquares / (values.length - 1);
    }

    /** The standard deviation, √{@link #variance}, under the same condition. */
    public double sd() {
        return Math.sqrt(variance());
    }

    public double min() {
        return sorted[0];
    }

    public double max() {
        return sorted[sorted.length - 1];
    }

    /** The middle value, or the mean of the two in the middle. */
    public double median() {
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1
                ? sorted[middle]
                : sorted[middle - 1] / 2 + sorted[middle] / 2;
    }

    /**
     * The geometric mean, exp(mean of ln x).
     *
     * @throws IllegalStateException unless every value is above zero
     */
    public double geometricMean() {
        return StrictMath.exp(mean(logarithms()));
    }

    /**
     * The autocorrelation at lag 1 in the order given, Σ(xᵢ − x̄)(xᵢ₊₁ − x̄)/Σ(xᵢ − x̄)².
     *
     * @throws IllegalStateException if all values are equal: nothing varies that could follow
     *     anything
     */
    public double lagOneAutocorrelation() {
        if (!(sumOfSquares > 0)) {
            throw new IllegalStateException("Values that are all equal have no autocorrelation.");
        }
        return products(1) / sumOfSquares;
    }

    /** The natural logarithms, in the order given. */
    double[] logarithms() {
        if (!(sorted[0] > 0)) {
            throw new IllegalStateException(
                    "A logarithm needs values above zero; the least is " + sorted[0] + ".");
        }
        return Arrays.stream(values).map(StrictMath::log).toArray();
    }

    /** Σ(xᵢ − x̄)(xᵢ₊ₗ − x̄) for the lag l. */
    private double products(int lag) {
        Sum sum = new Sum();
        for (int i = lag; i < values.length; i++) {
            double one = values[i] - mean;
            double other = values[i - lag] - mean;
            sum.addProduct(one, other).add(one * remainder(i - lag) + other * remainder(i));
        }
        return sum.value();
    }

    /** What the rounded deviation of the i-th value misses of the exact one. */
    private double remainder(int i) {
        double deviation = values[i] - mean;
        double part = deviation - values[i];
        return (values[i] - (deviation - part)) - (mean + part) - lost;
    }

    /** Each value is divided first, so that no sum of large values overflows. */
    private static double mean(double[] values) {
        Sum sum = new Sum();
        for (double value : values) {
            sum.add(value / values.length);
        }
        double mean = sum.value();
        return mean + missed(values, mean);
    }

    private static double missed(double[] values, double mean) {
        Sum rest = new Sum();
        for (double value : values) {
            rest.add(value).add(-mean);
        }
        return rest.value() / values.length;
    }
}
