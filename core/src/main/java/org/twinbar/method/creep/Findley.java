package org.twinbar.method.creep;

import java.util.Optional;
import org.twinbar.statistics.CurveFit;

/** Findley's law of creep: ε = ε₀ + m·tⁿ, parameters in this order. */
final class Findley implements CurveFit.Curve {

    static final int START = 0;
    static final int GROWTH = 1;
    static final int EXPONENT = 2;

    /** Where the search for n begins; glassy polymers lie at 0.1 to 0.35 (METHODS K). */
    private static final double[] EXPONENTS = {0.05, 0.1, 0.2, 0.35, 0.6, 1};

    private Findley() {}

    static final Findley LAW = new Findley();

    @Override
    public double at(double hours, double[] parameters) {
        return parameters[START] + parameters[GROWTH] * StrictMath.pow(hours, parameters[EXPONENT]);
    }

    @Override
    public double[] slopes(double hours, double[] parameters) {
        double power = StrictMath.pow(hours, parameters[EXPONENT]);
        return new double[] {1, power, parameters[GROWTH] * power * StrictMath.log(hours)};
    }

    /**
     * Returns the law that lies closest to strains, of the starts that lead to one the best.
     *
     * @param hours above 0
     */
    static Optional<CurveFit> through(double[] hours, double[] strains) {
        Optional<CurveFit> best = Optional.empty();
        for (double exponent : EXPONENTS) {
            Optional<CurveFit> found =
                    CurveFit.through(LAW, start(exponent, hours, strains), hours, strains);
            if (found.isPresent()
                    && (best.isEmpty()
                            || found.get().sumOfSquares() < best.get().sumOfSquares())) {
                best = found;
            }
        }
        return best;
    }

    /** Returns ε₀ and m for an exponent from the first and the last reading. */
    private static double[] start(double exponent, double[] hours, double[] strains) {
        int last = hours.length - 1;
        double first = StrictMath.pow(hours[0], exponent);
        double growth =
                (strains[last] - strains[0]) / (StrictMath.pow(hours[last], exponent) - first);
        double usable = Double.isFinite(growth) ? growth : 1;
        return new double[] {strains[0] - usable * first, usable, exponent};
    }
}
