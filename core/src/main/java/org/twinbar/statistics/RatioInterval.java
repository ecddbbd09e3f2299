package org.twinbar.statistics;

import java.util.List;

/** What Fieller's method says of a ratio: an interval, or that the data set it no finite one. */
public sealed interface RatioInterval {

    /** The ratio of the means. */
    double value();

    /**
     * A finite interval.
     *
     * @param estimate the ratio with its interval
     * @param g how uncertain the control's mean is, (t·u/x̄)²; below 1 here
     */
    record Finite(Estimate estimate, double g) implements RatioInterval {
        @Override
        public double value() {
            return estimate.value();
        }
    }

    /**
     * No finite interval: the control's mean is not told from zero at this level.
     *
     * @param value the ratio of the means
     * @param ends the two ratios between which (strictly) all are excluded, lower first; one ratio
     *     where all on one side of it are excluded; none where the data agree with any ratio
     * @param level level at which nothing finite holds
     * @param df degrees of freedom
     * @param n number of specimens
     * @param method how it was calculated
     * @param g how uncertain the control's mean is, (t·u/x̄)²; 1 or more here
     * @param reason the reason, a sentence
     */
    record Unbounded(
            double value,
            List<Double> ends,
            double level,
            double df,
            int n,
            String method,
            double g,
            String reason)
            implements RatioInterval {
        public Unbounded {
            ends = List.copyOf(ends);
        }
    }
}
