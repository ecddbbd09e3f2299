package org.twinbar.planning;

import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.StandardDeviation;

/**
 * What pilot specimens tell of the scatter; they are never compared.
 *
 * @param mean of their values
 * @param scatter their standard deviation s
 * @param cautious upper 80 % limit of the scatter: s·√(ν/χ²₀.₂,ν), ν = n − 1. Source: METHODS.md
 *     I.4
 * @param number n of them
 */
public record Pilot(double mean, double scatter, double cautious, int number) {

    /** Few pilots tell a scatter badly: one in five times it is larger than the cautious one. */
    private static final double CAUTION = 0.2;

    /** @throws PlanException unless there are two or more finite values that are not all equal */
    public static Pilot of(double... values) {
        if (values.length < 2) {
            throw new PlanException(
                    "Two pilots or more tell a scatter, not %s.".formatted(values.length));
        }
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new PlanException("A pilot's value must be a finite number.");
            }
        }
        MeanEstimate estimate = MeanEstimate.of(values);
        double scatter = Math.sqrt(values.length * estimate.variance());
        if (!(scatter > 0)) {
            throw new PlanException(
                    "Pilots that all read the same tell the bench's steps, not the scatter: read finer.");
        }
        double df = values.length - 1.0;
        return new Pilot(
                estimate.mean(),
                scatter,
                StandardDeviation.upperLimit(scatter, df, 1 - CAUTION),
                values.length);
    }

    /** Returns the cautious scatter over the mean. */
    public double relative() {
        return cautious / Math.abs(mean);
    }
}
