package org.twinbar.method.roughness;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;

/** What is taken off a profile before it is filtered, by least squares. */
enum FormRemoval {
    LINE("line", 1),
    PARABOLA("parabola", 2),
    NONE("none", -1);

    private final String word;
    private final int degree;

    FormRemoval(String word, int degree) {
        this.word = word;
        this.degree = degree;
    }

    String word() {
        return word;
    }

    static FormRemoval of(String word) {
        for (FormRemoval form : values()) {
            if (form.word.equals(word)) {
                return form;
            }
        }
        throw new IllegalArgumentException("form '" + word + "' is none that can be taken off");
    }

    /**
     * Returns heights less the polynomial of this degree that fits them best.
     *
     * <p>Places are scaled to −1 to 1, so that the normal equations of a parabola stay well
     * conditioned.
     *
     * @param places x, rising
     * @param heights z, as many
     */
    double[] without(double[] places, double[] heights) {
        double[] left = heights.clone();
        if (degree < 0) {
            return left;
        }
        double middle = (places[0] + places[places.length - 1]) / 2;
        double half = (places[places.length - 1] - places[0]) / 2;
        double[] powers = new double[2 * degree + 1];
        double[] moments = new double[degree + 1];
        for (int row = 0; row < places.length; row++) {
            double x = (places[row] - middle) / half;
            double power = 1;
            for (int k = 0; k < powers.length; k++) {
                powers[k] += power;
                if (k < moments.length) {
                    moments[k] += power * heights[row];
                }
                power *= x;
            }
        }
        double[] c = solve(powers, moments);
        for (int row = 0; row < places.length; row++) {
            double x = (places[row] - middle) / half;
            left[row] -= degree == 1 ? c[0] + c[1] * x : c[0] + x * (c[1] + x * c[2]);
        }
        return left;
    }

    private static double[] solve(double[] powers, double[] moments) {
        int size = moments.length;
        double[][] matrix = new double[size][size];
        for (int i = 0; i < size; i++) {
            System.arraycopy(powers, i, matrix[i], 0, size);
        }
        RealVector solution = new LUDecomposition(new Array2DRowRealMatrix(matrix, false))
                .getSolver()
                .solve(new ArrayRealVector(moments, false));
        return solution.toArray();
    }
}
