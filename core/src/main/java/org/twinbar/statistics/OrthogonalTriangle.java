package org.twinbar.statistics;

/**
 * A matrix of tall columns as an orthogonal matrix times a triangle, by Householder's reflections.
 */
final class OrthogonalTriangle {

    private final double[][] reflected;
    private final double[] diagonal;
    private final double[] lengths;

    private OrthogonalTriangle(double[][] reflected, double[] diagonal, double[] lengths) {
        this.reflected = reflected;
        this.diagonal = diagonal;
        this.lengths = lengths;
    }

    /**
     * The decomposition, after each column was brought to unit length.
     *
     * @param dependent share of its length below which what the other columns leave of a column is
     *     nothing
     * @throws IllegalArgumentException if a column is zero or depends on those before it
     */
    static OrthogonalTriangle of(double[][] rows, double dependent) {
        int n = rows.length;
        int columns = rows[0].length;
        double[][] a = new double[columns][n];
        double[] lengths = new double[columns];
        double[] diagonal = new double[columns];
        for (int j = 0; j < columns; j++) {
            for (int i = 0; i < n; i++) {
                a[j][i] = rows[i][j];
            }
            lengths[j] = Math.sqrt(product(a[j], a[j], 0));
            for (int i = 0; i < n; i++) {
                a[j][i] /= lengths[j];
            }
        }
        for (int j = 0; j < columns; j++) {
            double left = Math.sqrt(product(a[j], a[j], j));
            if (!(left > dependent)) {
                throw new IllegalArgumentException("Column " + (j + 1)
                        + " of the model depends on the others, so that its coefficient is open.");
            }
            diagonal[j] = a[j][j] > 0 ? -left : left;
            a[j][j] -= diagonal[j];
            for (int k = j + 1; k < columns; k++) {
                reflect(a[j], a[k], j);
            }
        }
        return new OrthogonalTriangle(a, diagonal, lengths);
    }

    /** The coefficients of least squares. */
    double[] solve(double[] y) {
        double[] turned = y.clone();
        for (int j = 0; j < diagonal.length; j++) {
            reflect(reflected[j], turned, j);
        }
        double[] solution = backwards(turned);
        for (int j = 0; j < solution.length; j++) {
            solution[j] /= lengths[j];
        }
        return solution;
    }

    /** (XᵀX)⁻¹. */
    double[][] inverseOfSquares() {
        int columns = diagonal.length;
        double[][] inverse = new double[columns][];
        for (int j = 0; j < columns; j++) {
            double[] unit = new double[columns];
            unit[j] = 1;
            inverse[j] = backwards(unit);
        }
        double[][] squares = new double[columns][columns];
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < columns; j++) {
                Sum sum = new Sum();
                for (int k = Math.max(i, j); k < columns; k++) {
                    sum.addProduct(inverse[k][i], inverse[k][j]);
                }
                squares[i][j] = sum.value() / lengths[i] / lengths[j];
            }
        }
        return squares;
    }

    private double[] backwards(double[] right) {
        double[] solution = new double[diagonal.length];
        for (int j = diagonal.length - 1; j >= 0; j--) {
            Sum sum = new Sum().add(right[j]);
            for (int k = j + 1; k < diagonal.length; k++) {
                sum.addProduct(-reflected[k][j], solution[k]);
            }
            solution[j] = sum.value() / diagonal[j];
        }
        return solution;
    }

    private static void reflect(double[] mirror, double[] column, int from) {
        double factor = 2 * product(mirror, column, from) / product(mirror, mirror, from);
        for (int i = from; i < column.length; i++) {
            column[i] = Math.fma(-factor, mirror[i], column[i]);
        }
    }

    private static double product(double[] one, double[] other, int from) {
        Sum sum = new Sum();
        for (int i = from; i < one.length; i++) {
            sum.addProduct(one[i], other[i]);
        }
        return sum.value();
    }
}
