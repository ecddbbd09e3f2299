package org.twinbar.method.roughness;

/**
 * The mean line of a profile: what of it is longer than a cut-off.
 *
 * <pre>w(x) = exp(−π·(x/(α·λ))²),  α = √(ln 2/π) = 0.4697</pre>
 *
 * <p>Half of the height of a wave of length λ is let through; the weights are cut at ±λ, where they
 * are below 10⁻⁶. Near an end the weights that lie beyond it are left out and the others made to
 * add up to 1. Source: ISO 16610-21:2011, equations (1) and (2).
 *
 * @param step distance of the places (mm)
 * @param cutoff λ (mm), above the step
 */
record GaussianFilter(double step, double cutoff) {

    /** α = √(ln 2/π): ISO 16610-21:2011, equation (2). */
    static final double ALPHA = Math.sqrt(StrictMath.log(2) / Math.PI);

    GaussianFilter {
        if (!(step > 0) || !(cutoff > step)) {
            throw new IllegalArgumentException(
                    "a cut-off of %s mm must be above the step of %s mm, and that above 0"
                            .formatted(cutoff, step));
        }
    }

    /** Returns the share of a wave's height that the mean line keeps: exp(−π·(α·λ/length)²). */
    static double kept(double cutoff, double length) {
        double argument = ALPHA * cutoff / length;
        return StrictMath.exp(-Math.PI * argument * argument);
    }

    /** Returns the mean line at each place of an evenly spaced profile. */
    double[] meanLine(double[] heights) {
        double[] weights = weights();
        double[] line = new double[heights.length];
        for (int at = 0; at < heights.length; at++) {
            int before = Math.min(at, weights.length - 1);
            int after = Math.min(heights.length - 1 - at, weights.length - 1);
            double sum = weights[0] * heights[at];
            double weight = weights[0];
            for (int k = 1; k <= before; k++) {
                sum += weights[k] * heights[at - k];
                weight += weights[k];
            }
            for (int k = 1; k <= after; k++) {
                sum += weights[k] * heights[at + k];
                weight += weights[k];
            }
            line[at] = sum / weight;
        }
        return line;
    }

    private double[] weights() {
        double[] weights = new double[(int) Math.floor(cutoff / step) + 1];
        for (int k = 0; k < weights.length; k++) {
            double argument = k * step / (ALPHA * cutoff);
            weights[k] = StrictMath.exp(-Math.PI * argument * argument);
        }
        return weights;
    }
}
