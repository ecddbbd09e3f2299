package org.twinbar.statistics;

/**
 * A linear model fitted by least squares, y = Σ βⱼ·xⱼ + error, with errors of one spread.
 *
 * <p>By Householder's orthogonal triangles on columns of unit length, and one refinement with
 * residuals that carry rounding; NIST's sets Norris, Longley and Wampler1 come out to nine digits
 * and more. Sources: G. H. Golub, Numerical methods for solving linear least squares problems
 * (1965); N. R. Draper, H. Smith, Applied regression analysis (1998).
 */
public final class LinearFit {

    private static final int REFINEMENTS = 2;

    /**
     * A column that the others explain to this share of its length has no digits of its own left.
     */
    private static final double DEPENDENT = 1e-13;

    private final double[] coefficients;
    private final double[][] unscaledCovariance;
    private final double residualSumOfSquares;
    private final double totalSumOfSquares;
    private final int n;

    private LinearFit(
            double[] coefficients,
            double[][] unscaledCovariance,
            double residualSumOfSquares,
            double totalSumOfSquares,
            int n) {
        this.coefficients = coefficients;
        this.unscaledCovariance = unscaledCovariance;
        this.residualSumOfSquares = residualSumOfSquares;
        this.totalSumOfSquares = totalSumOfSquares;
        this.n = n;
    }

    /**
     * The fit.
     *
     * @param rows one row of x per observation; a column of ones where there is an intercept
     * @param y observations
     * @throws IllegalArgumentException if there are no more observations than columns, rows differ
     *     in length, a number isn't finite, or a column depends on the others
     */
    public static LinearFit of(double[][] rows, double[] y) {
        Arguments.requireFinite(y, 2, "observations");
        if (rows.length != y.length) {
            throw new IllegalArgumentException(
                    "There are " + rows.length + " rows of x and " + y.length + " observations.");
        }
        int columns = rows[0].length;
        Arguments.requireAtLeast(columns, 1, "number of columns");
        if (y.length <= columns) {
            throw new IllegalArgumentException(
                    "A model of " + columns + " coefficients needs more than " + columns
                            + " observations, not " + y.length + ".");
        }
        for (double[] row : rows) {
            if (row.length != columns) {
                throw new IllegalArgumentException("The rows of x differ in length.");
            }
            Arguments.requireFinite(row, 1, "values of x");
        }
        OrthogonalTriangle triangle = OrthogonalTriangle.of(rows, DEPENDENT);
        double[] coefficients = triangle.solve(y);
        double[] residuals = residuals(rows, y, coefficients);
        for (int i = 0; i < REFINEMENTS; i++) {
            double[] correction = triangle.solve(residuals);
            for (int j = 0; j < columns; j++) {
                coefficients[j] += correction[j];
            }
            residuals = residuals(rows, y, coefficients);
        }
        double mean = Summary.of(y).mean();
        Sum residual = new Sum();
        Sum total = new Sum();
        for (int i = 0; i < y.length; i++) {
            residual.addProduct(residuals[i], residuals[i]);
            total.addProduct(y[i] - mean, y[i] - mean);
        }
        return new LinearFit(
                coefficients,
                triangle.inverseOfSquares(),
                residual.value(),
                total.value(),
                y.length);
    }

    private static double[] residuals(double[][] rows, double[] y, double[] coefficients) {
        double[] residuals = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            Sum sum = new Sum().add(y[i]);
            for (int j = 0; j < coefficients.length; j++) {
                sum.addProduct(-coefficients[j], rows[i][j]);
            }
            residuals[i] = sum.value();
        }
        return residuals;
    }

    /** The coefficient of the j-th column. */
    public double coefficient(int j) {
        return coefficients[j];
    }

    /** How many coefficients there are. */
    public int size() {
        return coefficients.length;
    }

    /** The covariance of two coefficients, s²·(XᵀX)⁻¹. */
    public double covariance(int i, int j) {
        return residualVariance() * unscaledCovariance[i][j];
    }

    /** The standard error of the j-th coefficient. */
    public double standardError(int j) {
        return Math.sqrt(covariance(j, j));
    }

    /** n less the number of coefficients. */
    public double df() {
        return n - coefficients.length;
    }

    /** The standard deviation of the errors, √(Σ residual²/df). */
    public double residualSd() {
        return Math.sqrt(residualVariance());
    }

    private double residualVariance() {
        return residualSumOfSquares / df();
    }

    /**
     * R² about the mean, 1 − Σ residual²/Σ(y − ȳ)²: for models with an intercept; 1 where y does
     * not vary at all.
     */
    public double determination() {
        return totalSumOfSquares > 0 ? 1 - residualSumOfSquares / totalSumOfSquares : 1;
    }

    /** The j-th coefficient with its two-sided interval by Student's t. */
    public Estimate coefficient(int j, double level) {
        return interval(coefficients[j], standardError(j), level, "least squares, coefficient");
    }

    /** The mean of y at x, with its two-sided interval. */
    public Estimate mean(double[] x, double level) {
        return interval(
                at(x), Math.sqrt(residualVariance() * leverage(x)), level, "least squares, mean");
    }

    /** One further observation at x, with the interval that it falls in. */
    public Estimate prediction(double[] x, double level) {
        return interval(
                at(x),
                Math.sqrt(residualVariance() * (1 + leverage(x))),
                level,
                "least squares, one observation");
    }

    private double at(double[] x) {
        requireSize(x);
        Sum sum = new Sum();
        for (int j = 0; j < x.length; j++) {
            sum.addProduct(coefficients[j], x[j]);
        }
        return sum.value();
    }

    private double leverage(double[] x) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < x.length; j++) {
                sum += x[i] * unscaledCovariance[i][j] * x[j];
            }
        }
        return Math.max(0, sum);
    }

    private void requireSize(double[] x) {
        if (x.length != coefficients.length) {
            throw new IllegalArgumentException(
                    "The model has " + coefficients.length + " columns, x has " + x.length + ".");
        }
        Arguments.requireFinite(x, 1, "values of x");
    }

    private Estimate interval(double value, double standardError, double level, String method) {
        double half = new StudentT(df()).twoSided(level) * standardError;
        return new Estimate(value, value - half, value + half, level, df(), n, method);
    }
}
