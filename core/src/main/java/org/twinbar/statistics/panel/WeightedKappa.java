package org.twinbar.statistics.panel;

import java.util.Arrays;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Normal;

/**
 * How far two raters (or one rater on two days) agree on ordered classes beyond chance: 1 complete,
 * 0 as chance has it.
 *
 * <p>κ = (p_o − p_e)/(1 − p_e), agreements weighted by 1 − |i − j|/(k − 1) or 1 − (i − j)²/(k −
 * 1)². The interval is the large-sample one on the normal distribution, rough below some thirty
 * parts. Source: J. L. Fleiss, J. Cohen, B. S. Everitt, Large sample standard errors of kappa and
 * weighted kappa (1969), doi:10.1037/h0028106.
 */
public final class WeightedKappa {

    /** What a disagreement costs. */
    public enum Weights {
        LINEAR,
        QUADRATIC
    }

    private WeightedKappa() {}

    /**
     * The agreement of two raters on the same parts, classes being the distinct ratings in rising
     * order.
     *
     * @throws IllegalArgumentException if the raters rated different numbers of parts, there are
     *     fewer than 2, both gave one and the same class throughout, or level is not within (0, 1)
     */
    public static Estimate of(double[] first, double[] second, Weights weights, double level) {
        Arguments.requireFinite(first, 2, "ratings");
        Arguments.requireFinite(second, 2, "ratings");
        if (first.length != second.length) {
            throw new IllegalArgumentException(
                    "Both raters must rate the same parts, but one rated " + first.length
                            + " and the other " + second.length + ".");
        }
        double[] classes = Arrays.stream(new double[][] {first, second})
                .flatMapToDouble(Arrays::stream)
                .sorted()
                .distinct()
                .toArray();
        int[][] table = new int[classes.length][classes.length];
        for (int i = 0; i < first.length; i++) {
            table[Arrays.binarySearch(classes, first[i])][
                    Arrays.binarySearch(classes, second[i])]++;
        }
        return of(table, weights, level);
    }

    /**
     * The agreement counted in a table, rows for one rater's classes and columns for the other's.
     *
     * @throws IllegalArgumentException if the table isn't square with 2 classes at least, holds
     *     fewer than 2 parts or all of them in one class of both raters, or level is not within (0,
     *     1)
     */
    public static Estimate of(int[][] table, Weights weights, double level) {
        Arguments.requireInside(level, "level");
        int k = Arguments.requireAtLeast(table.length, 2, "number of classes");
        int n = 0;
        double[] rows = new double[k];
        double[] columns = new double[k];
        for (int i = 0; i < k; i++) {
            if (table[i].length != k) {
                throw new IllegalArgumentException(
                        "The table must have as many columns as its " + k + " rows.");
            }
            for (int j = 0; j < k; j++) {
                n += Arguments.requireAtLeast(table[i][j], 0, "count in a cell");
                rows[i] += table[i][j];
                columns[j] += table[i][j];
            }
        }
        Arguments.requireAtLeast(n, 2, "number of parts");
        double observed = 0;
        double expected = 0;
        double[] ofRow = new double[k];
        double[] ofColumn = new double[k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double weight = weight(i, j, k, weights);
                observed += weight * table[i][j] / n;
                expected += weight * rows[i] * columns[j] / n / n;
                ofRow[i] += weight * columns[j] / n;
                ofColumn[j] += weight * rows[i] / n;
            }
        }
        if (!(expected < 1)) {
            throw new IllegalArgumentException(
                    "Where both raters used one class only, agreement can't be told.");
        }
        double kappa = (observed - expected) / (1 - expected);
        double squares = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double term = weight(i, j, k, weights) - (ofRow[i] + ofColumn[j]) * (1 - kappa);
                squares += term * term * table[i][j] / n;
            }
        }
        double rest = kappa - expected * (1 - kappa);
        double variance =
                Math.max(0, squares - rest * rest) / (n * (1 - expected) * (1 - expected));
        double half = Normal.STANDARD.quantile((1 + level) / 2) * Math.sqrt(variance);
        return new Estimate(
                kappa,
                Math.max(-1, kappa - half),
                Math.min(1, kappa + half),
                level,
                Double.POSITIVE_INFINITY,
                n,
                weights == Weights.LINEAR ? "weighted kappa, linear" : "weighted kappa, quadratic");
    }

    private static double weight(int i, int j, int k, Weights weights) {
        double apart = Math.abs(i - j) / (k - 1.0);
        return 1 - (weights == Weights.LINEAR ? apart : apart * apart);
    }
}
