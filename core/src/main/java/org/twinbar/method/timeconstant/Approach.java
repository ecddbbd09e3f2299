package org.twinbar.method.timeconstant;

import java.util.Arrays;
import java.util.Optional;
import org.twinbar.method.curve.Line;
import org.twinbar.statistics.CurveFit;

/**
 * The exponential by which a dummy comes up to its oven, laid through readings.
 *
 * <pre>T(t) = held − gap·exp(−t/τ)</pre>
 *
 * <p>The search goes over ln τ, so that τ stays above zero.
 *
 * @param fit parameters held (°C), gap (K) and ln τ (τ in s), in this order
 * @param serial correlation of what is left with what is left one reading before
 */
record Approach(CurveFit fit, double serial) {

    private static final int HELD = 0;
    private static final int GAP = 1;
    private static final int LOGARITHM = 2;

    /** Where the search for τ begins, as shares of the record. */
    private static final double[] SHARES = {0.03, 0.1, 0.3, 1, 3};

    /** Beyond this the readings say the same thing over and over. */
    private static final double MOST_SERIAL = 0.99;

    private static final CurveFit.Curve LAW = new CurveFit.Curve() {
        @Override
        public double at(double seconds, double[] parameters) {
            return parameters[HELD] - parameters[GAP] * left(seconds, parameters);
        }

        @Override
        public double[] slopes(double seconds, double[] parameters) {
            double left = left(seconds, parameters);
            double times = seconds / StrictMath.exp(parameters[LOGARITHM]);
            return new double[] {1, -left, -parameters[GAP] * left * times};
        }

        private double left(double seconds, double[] parameters) {
            return StrictMath.exp(-seconds / StrictMath.exp(parameters[LOGARITHM]));
        }
    };

    /**
     * Returns the exponential that lies closest to readings; empty where none settles on them, or
     * where it would fall.
     *
     * @param seconds from 0 on
     */
    static Optional<Approach> through(double[] seconds, double[] degrees) {
        double span = seconds[seconds.length - 1];
        return Arrays.stream(SHARES)
                .mapToObj(share -> start(share * span, seconds, degrees))
                .flatMap(start -> CurveFit.through(LAW, start, seconds, degrees).stream())
                .min((one, other) -> Double.compare(one.sumOfSquares(), other.sumOfSquares()))
                .filter(fit -> fit.parameters()[GAP] > 0)
                .map(fit -> new Approach(fit, serial(fit, seconds, degrees)));
    }

    /** Returns the parameters that are best for one τ: a straight line over exp(−t/τ). */
    private static double[] start(double tau, double[] seconds, double[] degrees) {
        double[] left =
                Arrays.stream(seconds).map(t -> StrictMath.exp(-t / tau)).toArray();
        Line line = Line.through(left, degrees);
        return new double[] {line.intercept(), -line.slope(), StrictMath.log(tau)};
    }

    /** Returns Σ eᵢeᵢ₊₁ / Σ eᵢ², 0 where nothing is left. */
    private static double serial(CurveFit fit, double[] seconds, double[] degrees) {
        double products = 0;
        double squares = 0;
        double before = 0;
        for (int i = 0; i < seconds.length; i++) {
            double left = degrees[i] - LAW.at(seconds[i], fit.parameters());
            products += left * before;
            squares += left * left;
            before = left;
        }
        return squares > 0 ? products / squares : 0;
    }

    /** Returns τ (s). */
    double seconds() {
        return StrictMath.exp(fit.parameters()[LOGARITHM]);
    }

    /** Returns the standard uncertainty of τ (s). */
    double secondsUncertainty() {
        return seconds() * fit.uncertainty(LOGARITHM) * widening();
    }

    /** Returns the temperature that it goes to (°C). */
    double held() {
        return fit.parameters()[HELD];
    }

    /** Returns the standard uncertainty of the temperature that it goes to (K). */
    double heldUncertainty() {
        return fit.uncertainty(HELD) * widening();
    }

    /** Returns the standard deviation of what is left (K). */
    double scatter() {
        return Math.sqrt(fit.sumOfSquares() / fit.degreesOfFreedom());
    }

    /**
     * Returns the degrees of freedom of so many readings as would be worth as much if they were
     * independent, at least 1.
     *
     * <pre>n·(1 − r)/(1 + r) − 3</pre>
     *
     * <p>r is the correlation of neighbours, 0 where it is negative. Source: G. V. Bayley and J. M.
     * Hammersley, J. R. Stat. Soc. Suppl. 8 (1946), 184 to 197, for a first-order process.
     */
    double degreesOfFreedom() {
        double readings = fit.degreesOfFreedom() + fit.parameters().length;
        return Math.max(1, readings / (widening() * widening()) - fit.parameters().length);
    }

    private double widening() {
        double r = Math.min(MOST_SERIAL, Math.max(0, serial));
        return Math.sqrt((1 + r) / (1 - r));
    }
}
