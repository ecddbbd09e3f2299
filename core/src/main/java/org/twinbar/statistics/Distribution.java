package org.twinbar.statistics;

/** A continuous distribution on the line. */
public interface Distribution {

    /** The probability of a value at most {@code x}. */
    double below(double x);

    /**
     * The probability of a value above {@code x}, 1 − {@link #below}, with its digits kept where it
     * is tiny.
     */
    double above(double x);

    /**
     * The value that is exceeded with probability 1 − p.
     *
     * @param p probability, 0 to 1; the ends give the ends of the support
     * @throws IllegalArgumentException unless 0 ≤ p ≤ 1
     */
    double quantile(double p);
}
