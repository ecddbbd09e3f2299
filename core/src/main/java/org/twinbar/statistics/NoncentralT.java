package org.twinbar.statistics;

import java.util.function.DoubleUnaryOperator;

/**
 * The noncentral t distribution: (Z + δ)/√(V/ν), Z standard normal, V χ² with ν degrees of freedom.
 *
 * <p>P(T ≤ t) = ∫ Φ(t·s − δ) f(s) ds, f the density of s = √(V/ν). With s = eᵘ the integrand is
 * smooth and dies out on both sides, so that the trapezoidal rule converges faster than any power
 * of its step; the weights are normed by their own sum, which spares the gamma function. Absolute
 * error below 1e-13 for ν from 1 to 10⁶ and |δ| up to 1000; a probability far below that has no
 * correct digits.
 *
 * @param df degrees of freedom ν, at least 1
 * @param noncentrality δ, from −1000 to 1000
 */
public record NoncentralT(double df, double noncentrality) implements Distribution {

    private static final double LARGEST = 1000;

    /** @throws IllegalArgumentException unless 1 ≤ df < ∞ and −1000 ≤ noncentrality ≤ 1000 */
    public NoncentralT {
        if (!(df >= 1 && df < Double.POSITIVE_INFINITY)) {
            throw Arguments.refused(
                    "The %s must be finite and at least 1, not %s.", "degrees of freedom", df);
        }
        if (!(Math.abs(noncentrality) <= LARGEST)) {
            throw Arguments.refused(
                    "The %s must lie from -1000 to 1000, not %s.", "noncentrality", noncentrality);
        }
    }

    @Override
    public double below(double t) {
        return mean(t, s -> Normal.STANDARD.below(t * s - noncentrality));
    }

    @Override
    public double above(double t) {
        return mean(t, s -> Normal.STANDARD.above(t * s - noncentrality));
    }

    /**
     * {@inheritDoc} The root is found to 14 digits, or to where {@link #below} stops to tell values
     * apart.
     */
    @Override
    public double quantile(double p) {
        Arguments.requireShare(p, "probability");
        if (p == 0 || p == 1) {
            return p == 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        DoubleUnaryOperator excess = p < 0.5 ? t -> below(t) - p : t -> (1 - p) - above(t);
        return Roots.increasing(excess, noncentrality, 1 + Math.abs(noncentrality) / 4);
    }

    private double mean(double t, DoubleUnaryOperator function) {
        return Math.min(1, new ScaleError(df).mean(function, t, noncentrality));
    }
}
