package org.twinbar.statistics;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Factors k of normal tolerance limits x̄ ± k·s: what a stated share of all parts stays within,
 * with confidence.
 *
 * <p>Exact for normal values; no n makes them safe for other shapes, whose tails are another matter
 * than their middle.
 *
 * <p>Sources: METHODS.md I.7; NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3; G. J. Hahn,
 * W. Q. Meeker, Statistical intervals (1991), chapter 4.
 */
public final class ToleranceFactor {

    private static final int POINTS = 64;

    /** The mean lies within ten of its own standard deviations for all that a double can tell. */
    private static final double REACH = 10;

    private ToleranceFactor() {}

    /**
     * The factor of a one-sided limit: a share of parts lies above x̄ − k·s (or below x̄ + k·s).
     *
     * <p>k = t′(confidence; n − 1, z√n)/√n, t′ the noncentral t, z the normal quantile of the
     * share. With share 0.90 and confidence 0.95 the B-basis, with 0.99 and 0.95 the A-basis of
     * handbooks.
     *
     * @param n number of specimens, at least 2
     * @param share of all parts, 0.90 say
     * @param confidence 0.95 say
     * @throws IllegalArgumentException unless n ≥ 2 and share and confidence lie between 0 and 1
     */
    public static double oneSided(int n, double share, double confidence) {
        check(n, share, confidence);
        double root = Math.sqrt(n);
        return new NoncentralT(n - 1, Normal.STANDARD.quantile(share) * root).quantile(confidence)
                / root;
    }

    /**
     * The factor of a two-sided interval: a share of parts lies within x̄ ± k·s.
     *
     * <p>k solves E[P(χ² &gt; ν·r²/k²)] = confidence over the mean's error x ~ N(0, 1/n), with Φ(x
     * + r) − Φ(x − r) = share and ν = n − 1: the exact factor. The e-Handbook's worked example (n
     * 43, share 0.90, confidence 0.99) prints 2.217 by an approximation; exact is 2.2228.
     *
     * @throws IllegalArgumentException unless n ≥ 2 and share and confidence lie between 0 and 1
     */
    public static double twoSided(int n, double share, double confidence) {
        check(n, share, confidence);
        double reach = REACH / Math.sqrt(n);
        GaussIntegrator integrator = new GaussIntegratorFactory().legendre(POINTS, 0, reach);
        ChiSquared chiSquared = new ChiSquared(n - 1);
        double start = Normal.STANDARD.quantile((1 + share) / 2);
        return Roots.increasing(
                k -> k <= 0
                        ? -confidence
                        : 2
                                        * Math.sqrt(n)
                                        * integrator.integrate(x -> {
                                            double r = halfWidth(x, share);
                                            return Normal.STANDARD.density(x * Math.sqrt(n))
                                                    * chiSquared.above((n - 1) * r * r / (k * k));
                                        })
                                - confidence,
                start,
                0.1 * start);
    }

    /** The half-width of the interval about x that holds this share of a standard normal. */
    private static double halfWidth(double x, double share) {
        return Roots.increasing(
                r -> Normal.STANDARD.below(x + r) - Normal.STANDARD.below(x - r) - share,
                x + Normal.STANDARD.quantile(share),
                0.1);
    }

    private static void check(int n, double share, double confidence) {
        Arguments.requireAtLeast(n, 2, "number of specimens");
        Arguments.requireInside(share, "share of parts");
        Arguments.requireInside(confidence, "confidence");
    }
}
