package org.twinbar.statistics.groups;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Places and weights of Gauss and Legendre's rule, laid over an interval panel by panel. */
final class Panels {

    private static final int POINTS = 16;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(POINTS);

    private final double[] places;
    private final double[] weights;

    private Panels(double[] places, double[] weights) {
        this.places = places;
        this.weights = weights;
    }

    static Panels over(double low, double high, int count) {
        double[] places = new double[count * POINTS];
        double[] weights = new double[count * POINTS];
        double half = (high - low) / (2 * count);
        for (int panel = 0; panel < count; panel++) {
            double middle = low + (2 * panel + 1) * half;
            for (int i = 0; i < POINTS; i++) {
                places[panel * POINTS + i] = middle + half * RULE.getPoint(i);
                weights[panel * POINTS + i] = half * RULE.getWeight(i);
            }
        }
        return new Panels(places, weights);
    }

    /** The same places with each weight times the function there. */
    Panels weightedBy(DoubleUnaryOperator function) {
        double[] product = new double[weights.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = weights[i] * function.applyAsDouble(places[i]);
        }
        return new Panels(places, product);
    }

    double integral(DoubleUnaryOperator function) {
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            sum += weights[i] * function.applyAsDouble(places[i]);
        }
        return sum;
    }
}
