package org.twinbar.method.roughness;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * An evenly spaced profile.
 *
 * @param start place of the first height (mm)
 * @param step distance of the places (mm)
 * @param heights µm
 */
record Profile(double start, double step, double[] heights) {

    /**
     * A cut-off of more places than this is thinned to them: they lie closer than any λs, which is
     * λc/300 and less fine (ISO 21920-3).
     */
    private static final double PLACES_PER_CUTOFF = 2000;

    /** A place that misses a bound by this share of a step lies on it. */
    private static final double ROUNDING = 1e-6;

    /**
     * Returns rows as an evenly spaced profile: straight between rows, and where those lie finer
     * than λc/2000 the mean of those that fall into each step.
     *
     * @param places x (mm), rising, two or more
     * @param heights z (µm), as many
     * @param cutoff λc (mm)
     */
    static Profile of(double[] places, double[] heights, double cutoff) {
        int rows = places.length;
        double step = (places[rows - 1] - places[0]) / (rows - 1);
        double[] even = new double[rows];
        int before = 0;
        for (int i = 0; i < rows; i++) {
            double place = places[0] + i * step;
            while (before < rows - 2 && places[before + 1] <= place) {
                before++;
            }
            double part = (place - places[before]) / (places[before + 1] - places[before]);
            even[i] = heights[before] + Math.min(1, part) * (heights[before + 1] - heights[before]);
        }
        int together = Math.max(1, (int) Math.floor(cutoff / PLACES_PER_CUTOFF / step));
        return new Profile(places[0], step, even).thinned(together);
    }

    private Profile thinned(int together) {
        if (together == 1) {
            return this;
        }
        double[] means = new double[heights.length / together];
        for (int i = 0; i < means.length; i++) {
            double sum = 0;
            for (int k = 0; k < together; k++) {
                sum += heights[i * together + k];
            }
            means[i] = sum / together;
        }
        return new Profile(start + step * (together - 1) / 2, step * together, means);
    }

    /** Returns the part of the profile that lies between two places, both within it or beyond. */
    Profile between(double from, double to) {
        int first = Math.max(0, (int) Math.ceil((from - start) / step - ROUNDING));
        int last = Math.min(heights.length - 1, (int) Math.floor((to - start) / step + ROUNDING));
        return new Profile(
                start + first * step,
                step,
                first <= last ? Arrays.copyOfRange(heights, first, last + 1) : new double[0]);
    }

    /** Returns what is shorter than a cut-off. */
    Profile shorterThan(double cutoff) {
        double[] line = new GaussianFilter(step, cutoff).meanLine(heights);
        double[] left = new double[heights.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = heights[i] - line[i];
        }
        return new Profile(start, step, left);
    }

    /**
     * Returns what is longer than a cut-off; all of it where the cut-off is no more than a step.
     */
    Profile longerThan(double cutoff) {
        return cutoff > step
                ? new Profile(start, step, new GaussianFilter(step, cutoff).meanLine(heights))
                : this;
    }

    /** Returns (1/l)∫|z|dx by the trapezoid rule. */
    double meanHeight() {
        return mean(Math::abs);
    }

    /** Returns √((1/l)∫z²dx) by the trapezoid rule. */
    double rootMeanSquare() {
        return Math.sqrt(mean(height -> height * height));
    }

    private double mean(DoubleUnaryOperator of) {
        double sum = 0;
        for (double height : heights) {
            sum += of.applyAsDouble(height);
        }
        double ends = of.applyAsDouble(heights[0]) + of.applyAsDouble(heights[heights.length - 1]);
        return (sum - ends / 2) / (heights.length - 1);
    }

    /** Returns highest peak to deepest valley. */
    double peakToValley() {
        double highest = Double.NEGATIVE_INFINITY;
        double deepest = Double.POSITIVE_INFINITY;
        for (double height : heights) {
            highest = Math.max(highest, height);
            deepest = Math.min(deepest, height);
        }
        return highest - deepest;
    }
}
