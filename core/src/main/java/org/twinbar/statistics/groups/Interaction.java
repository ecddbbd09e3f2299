package org.twinbar.statistics.groups;

import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.TwoGroups;

/**
 * Whether a treatment does in one place what it does in another: flat against upright, this
 * material against that.
 *
 * <p>Each of the four groups keeps its own spread; degrees of freedom are Welch and
 * Satterthwaite's, (Σvᵢ)²/Σ(vᵢ²/(nᵢ − 1)), v the variance of a mean.
 */
public final class Interaction {

    private Interaction() {}

    /**
     * The treated less control here, less the same there: 0 where the treatment adds alike.
     *
     * @throws IllegalArgumentException if a group has fewer than 2 values, nothing varies in any,
     *     or level is not within (0, 1)
     */
    public static Estimate ofDifferences(TwoGroups here, TwoGroups there, double level) {
        return contrast(here, there, false, level);
    }

    /**
     * The ratio of means here over the ratio there: 1 where the treatment multiplies alike.
     *
     * <p>On logarithms of the means, the variance of each v/x̄².
     *
     * @throws IllegalArgumentException under the conditions of {@link #ofDifferences}, or if a mean
     *     is ≤ 0
     */
    public static Estimate ofRatios(TwoGroups here, TwoGroups there, double level) {
        return contrast(here, there, true, level);
    }

    private static Estimate contrast(TwoGroups here, TwoGroups there, boolean ratio, double level) {
        here.holdingEach(2);
        there.holdingEach(2);
        double[][] groups = {here.treated(), here.control(), there.treated(), there.control()};
        double[] signs = {1, -1, -1, 1};
        double value = 0;
        double variance = 0;
        double squares = 0;
        int n = 0;
        for (int i = 0; i < groups.length; i++) {
            Summary summary = Summary.of(groups[i]);
            double mean = summary.mean();
            double scale = ratio ? Arguments.requirePositive(mean, "mean of each group") : 1;
            double own = summary.variance() / (groups[i].length * scale * scale);
            value += signs[i] * (ratio ? StrictMath.log(mean) : mean);
            variance += own;
            squares += own * own / (groups[i].length - 1);
            n += groups[i].length;
        }
        if (!(variance > 0)) {
            throw new IllegalArgumentException(
                    "Four groups of equal values show no scatter to judge by.");
        }
        double df = variance * variance / squares;
        double half = new StudentT(df).twoSided(Arguments.requireInside(level, "level"))
                * Math.sqrt(variance);
        return new Estimate(
                ratio ? StrictMath.exp(value) : value,
                ratio ? StrictMath.exp(value - half) : value - half,
                ratio ? StrictMath.exp(value + half) : value + half,
                level,
                df,
                n,
                ratio
                        ? "ratio of ratios of means, unequal spread"
                        : "difference of differences, unequal spread");
    }
}
