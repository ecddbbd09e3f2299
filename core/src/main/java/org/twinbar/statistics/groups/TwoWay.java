package org.twinbar.statistics.groups;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import org.twinbar.statistics.Arguments;

/**
 * Two-way analysis of variance with interaction, for any numbers per cell: treatment crossed with
 * orientation.
 *
 * <p>Type II asks for each factor beside the other without their interaction; type III beside both,
 * with contrasts that sum to zero, and is of use only where an interaction is there. The
 * interaction's squares are the same in both.
 *
 * @param firstTypeTwo the first factor, type II
 * @param secondTypeTwo the second factor, type II
 * @param firstTypeThree the first factor, type III
 * @param secondTypeThree the second factor, type III
 * @param interaction whether the first factor acts alike at all levels of the second
 * @param residualSquares what remains within cells (the values' unit squared)
 * @param residualDf its degrees of freedom
 * @param additive what remains without interaction
 */
public record TwoWay(
        Term firstTypeTwo,
        Term secondTypeTwo,
        Term firstTypeThree,
        Term secondTypeThree,
        Term interaction,
        double residualSquares,
        int residualDf,
        Residual additive) {

    /**
     * Squares of a term and its test against what remains within cells.
     *
     * @param squares sum of squares (the values' unit squared)
     * @param test the F test
     */
    public record Term(double squares, FTest test) {}

    /**
     * What remains.
     *
     * @param squares sum of squares (the values' unit squared)
     * @param df degrees of freedom
     */
    public record Residual(double squares, int df) {}

    /**
     * The analysis of these cells, the first index being the first factor's level.
     *
     * @throws IllegalArgumentException if a factor has fewer than 2 levels, a cell is empty, or no
     *     cell has 2 values
     */
    public static TwoWay of(double[][][] cells) {
        int rows =
                Arguments.requireAtLeast(cells.length, 2, "number of levels of the first factor");
        int columns = Arguments.requireAtLeast(
                cells[0].length, 2, "number of levels of the second factor");
        List<Double> values = new ArrayList<>();
        List<Integer> first = new ArrayList<>();
        List<Integer> second = new ArrayList<>();
        for (int a = 0; a < rows; a++) {
            Arguments.requireAtLeast(cells[a].length, columns, "number of cells at each level");
            for (int b = 0; b < columns; b++) {
                Arguments.requireFinite(cells[a][b], 1, "values of a cell");
                for (double value : cells[a][b]) {
                    values.add(value);
                    first.add(a);
                    second.add(b);
                }
            }
        }
        int n = values.size();
        double centre = values.get(0);
        double[] y = values.stream().mapToDouble(value -> value - centre).toArray();
        List<double[]> main = contrasts(n, rows, first::get);
        List<double[]> other = contrasts(n, columns, second::get);
        List<double[]> both = new ArrayList<>();
        for (double[] a : main) {
            for (double[] b : other) {
                both.add(product(a, b));
            }
        }
        int df = Arguments.requireAtLeast(n - rows * columns, 1, "degrees of freedom within cells");
        double full = residual(y, List.of(main, other, both));
        double additive = residual(y, List.of(main, other));
        return new TwoWay(
                term(residual(y, List.of(other)) - additive, rows - 1, full, df, "type II"),
                term(residual(y, List.of(main)) - additive, columns - 1, full, df, "type II"),
                term(residual(y, List.of(other, both)) - full, rows - 1, full, df, "type III"),
                term(residual(y, List.of(main, both)) - full, columns - 1, full, df, "type III"),
                term(additive - full, (rows - 1) * (columns - 1), full, df, "interaction"),
                full,
                df,
                new Residual(additive, n - rows - columns + 1));
    }

    private static Term term(double squares, int df, double residual, int residualDf, String kind) {
        double notNegative = Math.max(0, squares);
        return new Term(
                notNegative,
                FTest.of(
                        notNegative,
                        df,
                        residual,
                        residualDf,
                        "two-way analysis of variance, " + kind));
    }

    private static List<double[]> contrasts(int n, int levels, IntUnaryOperator levelOf) {
        List<double[]> columns = new ArrayList<>();
        for (int level = 0; level < levels - 1; level++) {
            double[] column = new double[n];
            for (int i = 0; i < n; i++) {
                int at = levelOf.applyAsInt(i);
                column[i] = at == level ? 1 : at == levels - 1 ? -1 : 0;
            }
            columns.add(column);
        }
        return columns;
    }

    private static double[] product(double[] a, double[] b) {
        double[] product = new double[a.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = a[i] * b[i];
        }
        return product;
    }

    /** Squares that remain of y beside a constant and these columns. */
    private static double residual(double[] y, List<List<double[]>> groups) {
        double[] constant = new double[y.length];
        Arrays.fill(constant, 1);
        List<double[]> columns = new ArrayList<>(List.of(constant));
        groups.forEach(columns::addAll);
        return Explained.squares(Explained.rest(y, columns));
    }
}
