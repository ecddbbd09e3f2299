package org.twinbar.statistics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The distribution of an estimated standard deviation over the true one: √(χ²/ν).
 *
 * <p>Means over it are taken on u = ln s, whose density falls off on both sides; the density is
 * normed by its own integral, which spares the gamma function.
 *
 * @param df degrees of freedom ν, above zero and finite
 */
record ScaleError(double df) {

    /** Beyond this drop of its logarithm the density adds nothing to a double: e⁻⁴⁵ = 3e-20. */
    private static final double DROP = 45;

    /**
     * Beyond this many standard deviations Φ is 0 or 1 to the last digit of a double: Φ(−9) =
     * 1e-19.
     */
    private static final double FAR_FROM_MEAN = 9;

    private static final int PANELS = 24;
    private static final int POINTS = 16;

    /**
     * The mean of a smooth function of s by the trapezoidal rule, which converges faster than any
     * power of its step.
     *
     * <p>The function is Φ(slope · s − offset) or its complement. Where the argument is far from
     * zero it is 0 or 1 to the last digit, so that the step need not follow the slope there.
     */
    double mean(DoubleUnaryOperator function, double slope, double offset) {
        double low = edge(-1);
        double high = edge(1);
        double steepest =
                Math.min(Math.abs(slope) * StrictMath.exp(high), Math.abs(offset) + FAR_FROM_MEAN);
        double step = Math.min(step(), 0.6 / Math.max(1, steepest));
        long last = (long) Math.ceil(high / step);
        double sum = 0;
        double weights = 0;
        for (long i = (long) Math.floor(low / step); i <= last; i++) {
            double u = i * step;
            double weight = StrictMath.exp(logDensity(u));
            weights += weight;
            sum += weight * function.applyAsDouble(StrictMath.exp(u));
        }
        return sum / weights;
    }

    /** The mean of a function that is zero above a limit and smooth below it. */
    double meanUpTo(double limit, DoubleUnaryOperator function) {
        double low = edge(-1);
        double high = Math.min(edge(1), StrictMath.log(limit));
        if (!(high > low)) {
            return 0;
        }
        GaussIntegrator unit = new GaussIntegratorFactory().legendre(POINTS, 0, 1);
        double width = (high - low) / PANELS;
        double sum = 0;
        for (int panel = 0; panel < PANELS; panel++) {
            double start = low + panel * width;
            sum += width
                    * unit.integrate(part -> {
                        double u = start + part * width;
                        return StrictMath.exp(logDensity(u))
                                * function.applyAsDouble(StrictMath.exp(u));
                    });
        }
        return sum / norm();
    }

    private double norm() {
        double step = step();
        long last = (long) Math.ceil(edge(1) / step);
        double sum = 0;
        for (long i = (long) Math.floor(edge(-1) / step); i <= last; i++) {
            sum += StrictMath.exp(logDensity(i * step));
        }
        return sum * step;
    }

    private double step() {
        return Math.min(0.1, 0.5 / Math.sqrt(2 * df));
    }

    /** The logarithm of the density of u = ln s, 0 at its top u = 0. */
    private double logDensity(double u) {
        return df * (u - StrictMath.expm1(2 * u) / 2);
    }

    /** Where the density has dropped to nothing, on the left (−1) or the right (1). */
    private double edge(int side) {
        double near = 0;
        double far = side / Math.sqrt(df);
        while (logDensity(far) > -DROP) {
            near = far;
            far *= 2;
        }
        while (Math.abs(far - near) > 0.01 * Math.abs(far)) {
            double middle = (near + far) / 2;
            if (logDensity(middle) > -DROP) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return far;
    }
}
