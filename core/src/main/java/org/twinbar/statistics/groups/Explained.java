package org.twinbar.statistics.groups;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What columns explain of values, by least squares; a column that the ones before it already
 * explain adds nothing.
 *
 * <p>Columns are made orthogonal one after the other, twice each, since once leaves what rounding
 * put back. Source: Å. Björck, Numerics of Gram–Schmidt orthogonalization (1994),
 * doi:10.1016/0024-3795(94)90493-6.
 */
public final class Explained {

    /** A column shorter than this share of its length is a sum of the ones before it. */
    private static final double DEPENDENT = 1e-10;

    private Explained() {}

    /**
     * Tests whether further columns explain more than chance does beside others: F = ((SS₀ −
     * SS₁)/q)/(SS₁/(n − r)), q the further columns' rank beside the others, r the rank of all.
     *
     * @param y values
     * @param columns that are there anyhow
     * @param more whose say is tested
     * @return nothing where the further columns add none of their own, or leave nothing to judge by
     */
    public static Optional<FTest> beyond(
            double[] y, List<double[]> columns, List<double[]> more, String method) {
        List<double[]> before = basis(columns);
        List<double[]> all = new ArrayList<>(columns);
        all.addAll(more);
        List<double[]> after = basis(all);
        int rank = after.size() - before.size();
        int df = y.length - after.size();
        if (rank < 1 || df < 1) {
            return Optional.empty();
        }
        double without = squares(takenOut(y, before));
        double with = squares(takenOut(y, after));
        return Optional.of(FTest.of(Math.max(0, without - with), rank, with, df, method));
    }

    /** Returns what the columns leave of y. */
    public static double[] rest(double[] y, List<double[]> columns) {
        return takenOut(y, basis(columns));
    }

    static double squares(double[] values) {
        return dot(values, values);
    }

    private static List<double[]> basis(List<double[]> columns) {
        List<double[]> basis = new ArrayList<>();
        for (double[] column : columns) {
            double length = Math.sqrt(dot(column, column));
            double[] rest = takenOut(column, basis);
            double left = Math.sqrt(dot(rest, rest));
            if (left > DEPENDENT * length) {
                for (int i = 0; i < rest.length; i++) {
                    rest[i] /= left;
                }
                basis.add(rest);
            }
        }
        return basis;
    }

    private static double[] takenOut(double[] values, List<double[]> basis) {
        double[] rest = values.clone();
        for (int pass = 0; pass < 2; pass++) {
            for (double[] direction : basis) {
                double share = dot(rest, direction);
                for (int i = 0; i < rest.length; i++) {
                    rest[i] -= share * direction[i];
                }
            }
        }
        return rest;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
