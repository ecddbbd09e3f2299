package org.twinbar.statistics;

import org.apache.commons.numbers.gamma.LogGamma;

/** How well a standard deviation is known from a few normal values. */
public final class StandardDeviation {

    private StandardDeviation() {}

    /**
     * The expected standard deviation of n normal values over the true one.
     *
     * <p>c₄ = √(2/(n − 1)) · Γ(n/2)/Γ((n − 1)/2); 0.940 for five values. Source: METHODS.md I.8.
     *
     * @throws IllegalArgumentException if n < 2
     */
    public static double c4(int n) {
        Arguments.requireAtLeast(n, 2, "number of specimens");
        double logarithm = LogGamma.value(n / 2.0) - LogGamma.value((n - 1) / 2.0);
        return Math.sqrt(2.0 / (n - 1)) * StrictMath.exp(logarithm);
    }

    /**
     * The relative standard deviation of a standard deviation: √(1 − c₄²)/c₄, 0.36 for five values.
     *
     * <p>Source: JCGM 100:2008, table E.1.
     *
     * @throws IllegalArgumentException if n < 2
     */
    public static double relativeUncertainty(int n) {
        double c4 = c4(n);
        return Math.sqrt(1 - c4 * c4) / c4;
    }

    /**
     * The upper one-sided limit of the true standard deviation: s·√(ν/χ²), χ² the (1 − level)
     * quantile.
     *
     * <p>For planning from few of one's own bars: the 80 % limit rather than s itself. Source:
     * METHODS.md I.4.
     *
     * @param sd standard deviation found, zero or more
     * @param df its degrees of freedom ν
     * @param level of the limit, 0.80 say
     * @throws IllegalArgumentException unless sd ≥ 0, 0 < df < ∞ and 0 < level < 1
     */
    public static double upperLimit(double sd, double df, double level) {
        Arguments.requireNotNegative(sd, "standard deviation");
        Arguments.requireInside(level, "level");
        return sd * Math.sqrt(df / new ChiSquared(df).quantile(1 - level));
    }
}
