package org.twinbar.statistics;

/** The maximum of the Weibull likelihood on logarithms. */
final class WeibullLikelihood {

    private static final int MOST_STEPS = 200;
    private static final double CLOSE_ENOUGH = 1e-13;

    /** A shape above this is a scatter of a hundred-millionth: values equal to the last digits. */
    private static final double LARGEST_SHAPE = 1e8;

    private WeibullLikelihood() {}

    /**
     * Shape and logarithm of the scale; nothing where the likelihood has no maximum.
     *
     * <p>Newton's method on the increasing function g(m) = Σw·y/Σw − 1/m − ȳ, w = exp(m(y − max
     * y)), kept inside a bracket that each step narrows.
     *
     * @param logs logarithms of all values
     * @param failures how many of them are failures, at least 1
     * @param meanOfFailed mean logarithm of the failures
     */
    static double[] maximum(double[] logs, int failures, double meanOfFailed) {
        double largest = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (double log : logs) {
            largest = Math.max(largest, log);
            least = Math.min(least, log);
        }
        if (!(largest - meanOfFailed > 1 / LARGEST_SHAPE)) {
            return new double[0];
        }
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double shape = 1.2 / Math.max(largest - meanOfFailed, 1e-3 * (largest - least));
        double weights = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            weights = 0;
            double first = 0;
            double second = 0;
            for (double log : logs) {
                double y = log - largest;
                double weight = StrictMath.exp(shape * y);
                weights += weight;
                first += weight * y;
                second += weight * y * y;
            }
            double mean = first / weights;
            double value = mean - 1 / shape - (meanOfFailed - largest);
            if (value > 0) {
                high = shape;
            } else {
                low = shape;
            }
            double slope = second / weights - mean * mean + 1 / (shape * shape);
            double next = shape - value / slope;
            if (!(next > low && next < high)) {
                next = high == Double.POSITIVE_INFINITY ? 2 * shape : (low + high) / 2;
            }
            boolean close = Math.abs(next - shape) <= CLOSE_ENOUGH * shape;
            shape = next;
            if (close || high - low <= CLOSE_ENOUGH * shape) {
                break;
            }
        }
        weights = 0;
        for (double log : logs) {
            weights += StrictMath.exp(shape * (log - largest));
        }
        return new double[] {shape, largest + StrictMath.log(weights / failures) / shape};
    }
}
