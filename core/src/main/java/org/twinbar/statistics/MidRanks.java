package org.twinbar.statistics;

import java.util.Arrays;

/** Ranks of two groups taken together, tied values at the mean of their places. */
public final class MidRanks {

    private final double[] all;

    private MidRanks(double[] sorted) {
        this.all = sorted;
    }

    public static MidRanks among(double[]... groups) {
        double[] all = Arrays.stream(groups).flatMapToDouble(Arrays::stream).toArray();
        Arrays.sort(all);
        return new MidRanks(all);
    }

    public double[] of(double[] values) {
        return Arrays.stream(values).map(this::rank).toArray();
    }

    /** Ranks of all values in rising order, doubled so that they are whole. */
    public int[] doubled() {
        return Arrays.stream(all)
                .mapToInt(value -> (int) Math.rint(2 * rank(value)))
                .toArray();
    }

    private double rank(double value) {
        int below = 0;
        int upTo = 0;
        for (double other : all) {
            below += other < value ? 1 : 0;
            upTo += other <= value ? 1 : 0;
        }
        return (below + 1 + upTo) / 2.0;
    }
}
