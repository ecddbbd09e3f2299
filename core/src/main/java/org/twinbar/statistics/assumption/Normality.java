package org.twinbar.statistics.assumption;

import java.util.Arrays;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.Summary;

/**
 * Whether the scatter of values has the normal shape; below eight values such tests see next to
 * nothing.
 */
public final class Normality {

    // The polynomials of AS R94, coefficients by rising power.
    private static final double[] LAST_WEIGHT = {
        0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056
    };
    private static final double[] NEXT_WEIGHT = {
        0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633
    };
    private static final double[] SMALL_BOUND = {-2.273, 0.459};
    private static final double[] SMALL_MEAN = {0.5440, -0.39978, 0.025054, -6.714e-4};
    private static final double[] SMALL_LOG_SD = {1.3822, -0.77857, 0.062767, -0.0020322};
    private static final double[] LARGE_MEAN = {-1.5861, -0.31082, -0.083751, 0.0038915};
    private static final double[] LARGE_LOG_SD = {-0.4803, -0.082676, 0.0030302};

    private static final int LARGEST_SMALL = 11;
    private static final int MOST = 5000;
    private static final int FEWEST_FOR_ANDERSON_DARLING = 8;

    private Normality() {}

    /**
     * Shapiro and Wilk's W: the squared slope of values against normal scores, over their variance.
     *
     * <p>W = (Σ aᵢ x₍ᵢ₎)²/Σ(x − x̄)², with Royston's weights and his normal approximation for the p
     * (exact for three values). Source: P. Royston, Remark AS R94 (1995), doi:10.2307/2986146.
     *
     * @throws IllegalArgumentException if there are fewer than 3 or more than 5000 values, one
     *     isn't finite, or all are equal
     */
    public static Significance shapiroWilk(double[] values) {
        double[] sorted = sortedAndSpread(values, 3);
        int n = sorted.length;
        if (n > MOST) {
            throw new IllegalArgumentException(
                    "Shapiro and Wilk's W is for 3 to 5000 values, not " + n + ".");
        }
        double[] weights = weights(n);
        double slope = 0;
        for (int i = 0; i < weights.length; i++) {
            slope += weights[i] * (sorted[n - 1 - i] - sorted[i]);
        }
        double w = Math.min(1, slope * slope / (Summary.of(sorted).variance() * (n - 1)));
        return new Significance(w, Double.POSITIVE_INFINITY, probability(w, n), "Shapiro–Wilk");
    }

    /**
     * Anderson and Darling's A², with mean and standard deviation estimated.
     *
     * <p>A² = −n − (1/n)Σ(2i − 1)(ln Φ(zᵢ) + ln(1 − Φ(zₙ₊₁₋ᵢ))); the p from A²(1 + 0.75/n +
     * 2.25/n²). Source: M. A. Stephens in R. B. D'Agostino and M. A. Stephens, Goodness-of-Fit
     * Techniques (1986), table 4.9.
     *
     * @throws IllegalArgumentException if there are fewer than 8 values, one isn't finite, or all
     *     are equal
     */
    public static Significance andersonDarling(double[] values) {
        double[] sorted = sortedAndSpread(values, FEWEST_FOR_ANDERSON_DARLING);
        int n = sorted.length;
        Summary summary = Summary.of(sorted);
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double low = (sorted[i] - summary.mean()) / summary.sd();
            double high = (sorted[n - 1 - i] - summary.mean()) / summary.sd();
            sum += (2 * i + 1)
                    * (StrictMath.log(Normal.STANDARD.below(low))
                            + StrictMath.log(Normal.STANDARD.above(high)));
        }
        double a = -n - sum / n;
        double b = a * (1 + 0.75 / n + 2.25 / ((double) n * n));
        double p;
        if (b < 0.2) {
            p = 1 - StrictMath.exp(-13.436 + 101.14 * b - 223.73 * b * b);
        } else if (b < 0.34) {
            p = 1 - StrictMath.exp(-8.318 + 42.796 * b - 59.938 * b * b);
        } else if (b < 0.6) {
            p = StrictMath.exp(0.9177 - 4.279 * b - 1.38 * b * b);
        } else {
            // The fitted parabola turns up again far outside the table.
            double at = Math.min(b, 10);
            p = StrictMath.exp(1.2937 - 5.709 * at + 0.0186 * at * at);
        }
        return new Significance(a, Double.POSITIVE_INFINITY, p, "Anderson–Darling");
    }

    private static double[] sortedAndSpread(double[] values, int fewest) {
        double[] sorted = Arguments.requireFinite(values, fewest, "values").clone();
        Arrays.sort(sorted);
        if (!(sorted[sorted.length - 1] > sorted[0])) {
            throw new IllegalArgumentException(
                    "Equal values have no shape; at least two must differ.");
        }
        return sorted;
    }

    /** Weights of the differences between opposite order statistics, the outermost first. */
    private static double[] weights(int n) {
        int half = n / 2;
        double[] weights = new double[half];
        if (n == 3) {
            weights[0] = Math.sqrt(0.5);
            return weights;
        }
        double[] scores = new double[half];
        double squares = 0;
        for (int i = 0; i < half; i++) {
            scores[i] = -Normal.STANDARD.quantile((i + 1 - 0.375) / (n + 0.25));
            squares += 2 * scores[i] * scores[i];
        }
        double root = 1 / Math.sqrt(n);
        int fitted = n > 5 ? 2 : 1;
        weights[0] = polynomial(LAST_WEIGHT, root) + scores[0] / Math.sqrt(squares);
        double left = 1 - 2 * weights[0] * weights[0];
        squares -= 2 * scores[0] * scores[0];
        if (fitted == 2) {
            weights[1] = polynomial(NEXT_WEIGHT, root)
                    + scores[1] / Math.sqrt(squares + 2 * scores[0] * scores[0]);
            left -= 2 * weights[1] * weights[1];
            squares -= 2 * scores[1] * scores[1];
        }
        for (int i = fitted; i < half; i++) {
            weights[i] = scores[i] / Math.sqrt(squares / left);
        }
        return weights;
    }

    private static double probability(double w, int n) {
        if (n == 3) {
            double exact = 6
                    / Math.PI
                    * (StrictMath.asin(Math.sqrt(w)) - StrictMath.asin(Math.sqrt(0.75)));
            return Math.min(1, Math.max(0, exact));
        }
        if (w == 1) {
            return 1;
        }
        double y = StrictMath.log(1 - w);
        double logN = StrictMath.log(n);
        if (n <= LARGEST_SMALL) {
            double bound = polynomial(SMALL_BOUND, n);
            if (y >= bound) {
                return 0;
            }
            y = -StrictMath.log(bound - y);
        }
        double mean = n <= LARGEST_SMALL ? polynomial(SMALL_MEAN, n) : polynomial(LARGE_MEAN, logN);
        double logSd =
                n <= LARGEST_SMALL ? polynomial(SMALL_LOG_SD, n) : polynomial(LARGE_LOG_SD, logN);
        return Normal.STANDARD.above((y - mean) / StrictMath.exp(logSd));
    }

    private static double polynomial(double[] coefficients, double x) {
        double value = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            value = value * x + coefficients[i];
        }
        return value;
    }
}
