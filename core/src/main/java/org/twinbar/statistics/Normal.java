package org.twinbar.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. */
public record Normal() implements Distribution {

    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);

    private static final CommonsDistribution LIBRARY =
            new CommonsDistribution(NormalDistribution.of(0, 1));

    /** The one standard normal distribution. */
    public static final Normal STANDARD = new Normal();

    /** exp(−x²/2)/√(2π). */
    public double density(double x) {
        return StrictMath.exp(-x * x / 2) / ROOT_OF_TWO_PI;
    }

    @Override
    public double below(double x) {
        return LIBRARY.below(x);
    }

    @Override
    public double above(double x) {
        return LIBRARY.above(x);
    }

    @Override
    public double quantile(double p) {
        return LIBRARY.quantile(p);
    }
}
