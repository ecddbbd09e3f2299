package org.twinbar.statistics.resampling;

/**
 * A bias-corrected and accelerated bootstrap interval.
 *
 * @param estimate the statistic of the values themselves
 * @param low lower end
 * @param high upper end
 * @param level share of studies whose interval should hold the truth; with few values fewer do
 * @param standardError standard deviation of the resampled statistics
 * @param bias z₀, the normal quantile of the share of resamples below the estimate
 * @param acceleration a, from the jackknife
 * @param resamples how many
 * @param n how many values were drawn from
 * @param method what was done, in words
 * @param seed what the resamples were drawn with
 */
public record BootstrapInterval(
        double estimate,
        double low,
        double high,
        double level,
        double standardError,
        double bias,
        double acceleration,
        int resamples,
        int n,
        String method,
        long seed) {}
