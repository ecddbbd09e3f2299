package org.twinbar.method;

/**
 * What can be told from nothing, and what a reading that can't be told from it still allows.
 *
 * <p>A value is detected from three standard uncertainties on (METHODS E). That is a rule for what
 * is called seen, and no upper end: of parts that truly lie at the limit every other one reads
 * below it. What is said of them is therefore the larger of the limit and of the one-sided 95 %
 * limit of what was read.
 *
 * @param standardUncertainty of a reading of nothing, zero or more
 */
public record Detection(double standardUncertainty) {

    private static final double MULTIPLE = 3;

    /** Φ⁻¹(0.95). */
    private static final double ONE_SIDED = 1.6448536269514722;

    /** Returns the least value that is told from nothing. */
    public double limit() {
        return MULTIPLE * standardUncertainty;
    }

    public boolean detects(double read) {
        return read >= limit();
    }

    /**
     * Returns what the truth lies below, nineteen times of twenty, where nothing was detected.
     *
     * <pre>max(3u, x + 1.645u)</pre>
     *
     * @param read x, below the limit
     */
    public double below(double read) {
        return Math.max(limit(), read + ONE_SIDED * standardUncertainty);
    }
}
