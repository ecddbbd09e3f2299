package org.twinbar.statistics;

import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * A curve through points by nonlinear least squares.
 *
 * @param parameters that make the sum of squares least
 * @param covariances of the parameters, s²(JᵀJ)⁻¹ with s² = SSR/(n − p)
 * @param sumOfSquares SSR that is left
 * @param degreesOfFreedom n − p
 */
public record CurveFit(
        double[] parameters, double[][] covariances, double sumOfSquares, double degreesOfFreedom) {

    private static final int MOST_ITERATIONS = 1000;
    private static final double TOLERANCE = 1e-14;
    private static final double SINGULAR = 1e-14;

    /** A family of curves with its slopes by the parameters. */
    public interface Curve {

        double at(double x, double[] parameters);

        /** Returns the derivative of the value by each parameter. */
        double[] slopes(double x, double[] parameters);
    }

    /**
     * Returns the curve that lies closest to points.
     *
     * <p>Levenberg and Marquardt's method, in the form of MINPACK (J. J. Moré, 1978). What it finds
     * is the least near the start; a family with several needs several starts.
     *
     * @return empty where there are no more points than parameters, or the search comes to no end
     *     within 1000 steps, or the points leave a parameter undetermined
     */
    public static Optional<CurveFit> through(Curve curve, double[] start, double[] x, double[] y) {
        int freedom = x.length - start.length;
        if (freedom < 1) {
            return Optional.empty();
        }
        try {
            LeastSquaresOptimizer.Optimum found = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(TOLERANCE)
                    .withParameterRelativeTolerance(TOLERANCE)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .model(parameters -> model(curve, x, parameters))
                            .target(y)
                            .maxEvaluations(MOST_ITERATIONS)
                            .maxIterations(MOST_ITERATIONS)
                            .build());
            double squares = found.getCost() * found.getCost();
            double[][] covariances = found.getCovariances(SINGULAR)
                    .scalarMultiply(squares / freedom)
                    .getData();
            double[] parameters = found.getPoint().toArray();
            return Double.isFinite(squares)
                    ? Optional.of(new CurveFit(parameters, covariances, squares, freedom))
                    : Optional.empty();
        } catch (MathRuntimeException endedWithoutLeast) {
            return Optional.empty();
        }
    }

    private static Pair<RealVector, RealMatrix> model(
            Curve curve, double[] x, RealVector parameters) {
        double[] here = parameters.toArray();
        double[] values = new double[x.length];
        double[][] slopes = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            values[i] = curve.at(x[i], here);
            slopes[i] = curve.slopes(x[i], here);
        }
        return new Pair<>(
                new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
    }

    /** Returns the standard uncertainty of a parameter. */
    public double uncertainty(int parameter) {
        return Math.sqrt(covariances[parameter][parameter]);
    }

    /** Returns the standard uncertainty of the curve's own value at a place: √(gᵀCg). */
    public double uncertaintyAt(Curve curve, double x) {
        double[] slopes = curve.slopes(x, parameters);
        double sum = 0;
        for (int i = 0; i < slopes.length; i++) {
            for (int j = 0; j < slopes.length; j++) {
                sum += slopes[i] * covariances[i][j] * slopes[j];
            }
        }
        return Math.sqrt(Math.max(0, sum));
    }
}
