package org.twinbar.statistics.resampling;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Mean or median of one group: of all its values, of all but one, and of values drawn from it with
 * replacement.
 */
sealed interface Centre {

    double value();

    /** The centres that remain when each value in turn is left out. */
    double[] leavingOutEach();

    /** The centres of so many resamples. */
    double[] resampled(int count, UniformRandomProvider random);

    /**
     * Fills an array with indexes below {@code bound}, two from each 64 bits.
     *
     * <p>An index is ⌊u·bound/2³²⌋ for 32 random bits u; its chance differs from 1/bound by less
     * than 2⁻³², far below what any number of resamples could show.
     */
    static void draw(int[] indexes, int bound, UniformRandomProvider random) {
        int even = indexes.length & ~1;
        for (int i = 0; i < even; i += 2) {
            long bits = random.nextLong();
            indexes[i] = (int) (((bits >>> 32) * bound) >>> 32);
            indexes[i + 1] = (int) (((bits & 0xffffffffL) * bound) >>> 32);
        }
        if (even < indexes.length) {
            indexes[even] = (int) (((random.nextLong() >>> 32) * bound) >>> 32);
        }
    }

    /** The mean. */
    record Mean(double[] values) implements Centre {

        @Override
        public double value() {
            return Design.sum(values) / values.length;
        }

        @Override
        public double[] leavingOutEach() {
            double[] means = new double[values.length];
            double mean = value();
            for (int i = 0; i < means.length; i++) {
                means[i] = mean + (mean - values[i]) / (values.length - 1);
            }
            return means;
        }

        @Override
        public double[] resampled(int count, UniformRandomProvider random) {
            double[] means = new double[count];
            int[] indexes = new int[values.length];
            for (int draw = 0; draw < count; draw++) {
                Centre.draw(indexes, values.length, random);
                double sum = 0;
                for (int index : indexes) {
                    sum += values[index];
                }
                means[draw] = sum / values.length;
            }
            return means;
        }
    }

    /** The median; the values are sorted once, so that a resample only counts. */
    record Median(double[] sorted) implements Centre {

        static Median of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return new Median(sorted);
        }

        @Override
        public double value() {
            int n = sorted.length;
            return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
        }

        @Override
        public double[] leavingOutEach() {
            int n = sorted.length;
            double[] medians = new double[n];
            for (int out = 0; out < n; out++) {
                int low = (n - 2) / 2;
                int high = (n - 1) / 2;
                medians[out] =
                        (sorted[low < out ? low : low + 1] + sorted[high < out ? high : high + 1])
                                / 2;
            }
            return medians;
        }

        @Override
        public double[] resampled(int count, UniformRandomProvider random) {
            int n = sorted.length;
            double[] medians = new double[count];
            int[] indexes = new int[n];
            int[] times = new int[n];
            for (int draw = 0; draw < count; draw++) {
                Centre.draw(indexes, n, random);
                for (int index : indexes) {
                    times[index]++;
                }
                medians[draw] = medianOf(times);
                Arrays.fill(times, 0);
            }
            return medians;
        }

        private double medianOf(int[] times) {
            int n = sorted.length;
            int below = (n - 1) / 2;
            int above = n / 2;
            int seen = 0;
            int at = 0;
            while (seen + times[at] <= below) {
                seen += times[at++];
            }
            double lower = sorted[at];
            while (seen + times[at] <= above) {
                seen += times[at++];
            }
            return (lower + sorted[at]) / 2;
        }
    }
}
