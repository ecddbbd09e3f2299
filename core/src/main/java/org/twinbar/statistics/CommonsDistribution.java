package org.twinbar.statistics;

import org.apache.commons.statistics.distribution.ContinuousDistribution;

/** A distribution of Apache Commons Statistics, with quantiles to the last digits. */
final class CommonsDistribution implements Distribution {

    /** Newton's method doubles the digits each time; the library's root already has about nine. */
    private static final int MOST_STEPS = 8;

    private static final double CLOSE_ENOUGH = 4 * Math.ulp(1.0);

    private final ContinuousDistribution distribution;

    CommonsDistribution(ContinuousDistribution distribution) {
        this.distribution = distribution;
    }

    @Override
    public double below(double x) {
        return distribution.cumulativeProbability(x);
    }

    @Override
    public double above(double x) {
        return distribution.survivalProbability(x);
    }

    @Override
    public double quantile(double p) {
        Arguments.requireShare(p, "probability");
        double x = distribution.inverseCumulativeProbability(p);
        for (int step = 0; step < MOST_STEPS && p > 0 && p < 1; step++) {
            double density = distribution.density(x);
            if (!(density > 0) || Double.isInfinite(density)) {
                break;
            }
            double excess = p < 0.5 ? below(x) - p : (1 - p) - above(x);
            double next = x - excess / density;
            if (!(next > distribution.getSupportLowerBound()
                    && next < distribution.getSupportUpperBound())) {
                break;
            }
            boolean close = Math.abs(next - x) <= CLOSE_ENOUGH * Math.abs(next);
            x = next;
            if (close) {
                break;
            }
        }
        return x;
    }
}
