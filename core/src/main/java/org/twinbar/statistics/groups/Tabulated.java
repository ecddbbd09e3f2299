package org.twinbar.statistics.groups;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function from 0 to a place beyond which it is 1, kept as Chebyshev polynomials, so that
 * it can be asked a thousand times for the price of a few hundred.
 *
 * <p>Source: W. H. Press et al., Numerical recipes (2007), 5.8 (Clenshaw's recurrence).
 */
final class Tabulated implements DoubleUnaryOperator {

    private static final int PANELS = 20;
    private static final int NODES = 14;

    private final double width;
    private final double[][] coefficients;

    private Tabulated(double width, double[][] coefficients) {
        this.width = width;
        this.coefficients = coefficients;
    }

    static Tabulated of(DoubleUnaryOperator function, double one) {
        double width = one / PANELS;
        double[][] coefficients = new double[PANELS][NODES];
        for (int panel = 0; panel < PANELS; panel++) {
            double[] values = new double[NODES];
            for (int node = 0; node < NODES; node++) {
                double place = StrictMath.cos(StrictMath.PI * (node + 0.5) / NODES);
                values[node] = function.applyAsDouble((panel + (1 + place) / 2) * width);
            }
            for (int order = 0; order < NODES; order++) {
                double sum = 0;
                for (int node = 0; node < NODES; node++) {
                    sum += values[node]
                            * StrictMath.cos(StrictMath.PI * order * (node + 0.5) / NODES);
                }
                coefficients[panel][order] = 2 * sum / NODES;
            }
        }
        return new Tabulated(width, coefficients);
    }

    @Override
    public double applyAsDouble(double x) {
        double at = x / width;
        if (at >= PANELS) {
            return 1;
        }
        int panel = (int) Math.max(0, at);
        double place = 2 * (at - panel) - 1;
        double[] own = coefficients[panel];
        double one = 0;
        double two = 0;
        for (int order = NODES - 1; order > 0; order--) {
            double next = 2 * place * one - two + own[order];
            two = one;
            one = next;
        }
        return Math.max(0, Math.min(1, place * one - two + own[0] / 2));
    }
}
