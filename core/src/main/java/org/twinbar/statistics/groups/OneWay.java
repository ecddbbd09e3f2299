package org.twinbar.statistics.groups;

import java.util.Arrays;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Summary;

/**
 * One-way analysis of variance: do the means of several groups differ by more than their scatter
 * explains?
 *
 * <p>SS_between = Σ nᵢ(x̄ᵢ − x̿)², SS_within = Σ(nᵢ − 1)sᵢ², F = (SS_between/(k − 1))/(SS_within/(N
 * − k)). Everything is taken about the first group's mean, so that values with twelve equal leading
 * digits lose none of the rest.
 *
 * @param betweenSquares SS_between (the values' unit squared)
 * @param withinSquares SS_within (the values' unit squared)
 * @param betweenDf k − 1
 * @param withinDf N − k
 * @param test the F test
 */
public record OneWay(
        double betweenSquares, double withinSquares, int betweenDf, int withinDf, FTest test) {

    /**
     * The analysis of these groups.
     *
     * @throws IllegalArgumentException if there are fewer than 2 groups, one is empty, or none has
     *     2 values
     */
    public static OneWay of(double[]... groups) {
        Arguments.requireAtLeast(groups.length, 2, "number of groups");
        double centre = Summary.of(groups[0]).mean();
        int n = 0;
        double within = 0;
        double[] means = new double[groups.length];
        for (int i = 0; i < groups.length; i++) {
            // Differences of near-equal doubles are exact, and their mean keeps the digits that x̄
            // would lose.
            double[] rest =
                    Arrays.stream(groups[i]).map(value -> value - centre).toArray();
            Summary summary = Summary.of(rest);
            means[i] = summary.mean();
            within += rest.length < 2 ? 0 : summary.variance() * (rest.length - 1);
            n += rest.length;
        }
        double grand = 0;
        for (int i = 0; i < means.length; i++) {
            grand += means[i] * groups[i].length / n;
        }
        double between = 0;
        for (int i = 0; i < means.length; i++) {
            between += groups[i].length * (means[i] - grand) * (means[i] - grand);
        }
        int betweenDf = groups.length - 1;
        int withinDf =
                Arguments.requireAtLeast(n - groups.length, 1, "degrees of freedom within groups");
        return new OneWay(
                between,
                within,
                betweenDf,
                withinDf,
                FTest.of(between, betweenDf, within, withinDf, "one-way analysis of variance"));
    }

    /** The pooled standard deviation within groups, √(SS_within/(N − k)). */
    public double sd() {
        return Math.sqrt(withinSquares / withinDf);
    }

    /** R², the share of all squares that lies between groups; 0 where nothing varies. */
    public double shareBetween() {
        return betweenSquares == 0 ? 0 : betweenSquares / (betweenSquares + withinSquares);
    }
}
