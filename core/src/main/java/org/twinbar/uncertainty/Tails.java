package org.twinbar.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The lowest and the highest of many values, each in order; those between are never sorted.
 *
 * <p>A sample tells about where the tails begin. What lies beyond those two places is gathered and
 * sorted; should it be fewer than asked for or far more than expected, all values are.
 *
 * @param lowest in rising order
 * @param highest in rising order
 */
record Tails(double[] lowest, double[] highest) {

    /** Fewer values are sorted as fast as they are parted. */
    private static final int FEW = 1000;

    /** Times as many values as are expected beyond a place that there is room for. */
    private static final int ROOM = 2;

    /** Standard deviations of its rank by which a place is taken further in than expected. */
    private static final int MARGIN = 4;

    /**
     * Returns both tails of all values in all parts, which stay as they are.
     *
     * @param tail how many on either side, from 0 to the number of values
     */
    static Tails of(List<double[]> parts, int tail) {
        int count = parts.stream().mapToInt(part -> part.length).sum();
        if (count <= FEW || 4L * tail > count) {
            return sorted(parts, count, tail);
        }
        double[] sample = sample(parts, count);
        int rank = rank(sample.length, (double) tail / count);
        int most = ROOM * (int) ((long) rank * count / sample.length);
        Gathered low = new Gathered(most);
        Gathered high = new Gathered(most);
        for (double[] part : parts) {
            low.upTo(sample[rank], part);
            high.from(sample[sample.length - 1 - rank], part);
        }
        if (low.failed(tail) || high.failed(tail)) {
            return sorted(parts, count, tail);
        }
        double[] lowest = low.inOrder();
        double[] highest = high.inOrder();
        return new Tails(
                Arrays.copyOf(lowest, tail),
                Arrays.copyOfRange(highest, highest.length - tail, highest.length));
    }

    /**
     * Returns both tails of all values from the tails of their parts, without looking at the values
     * again; nothing where a part's tail ends before theirs, so that it may hide values.
     */
    static Optional<Tails> joined(List<Tails> parts, int tail) {
        double[] low = inOrder(parts.stream().map(Tails::lowest).toList());
        double[] high = inOrder(parts.stream().map(Tails::highest).toList());
        if (tail == 0 || low.length < tail) {
            return Optional.empty();
        }
        double lowEnd = low[tail - 1];
        double highEnd = high[high.length - tail];
        for (Tails part : parts) {
            int size = part.lowest.length;
            if (size == 0 || part.lowest[size - 1] < lowEnd || part.highest[0] > highEnd) {
                return Optional.empty();
            }
        }
        return Optional.of(new Tails(
                Arrays.copyOf(low, tail),
                Arrays.copyOfRange(high, high.length - tail, high.length)));
    }

    /** Returns the tails that hold so many fewer on either side. */
    Tails shortened(int tail) {
        return new Tails(
                Arrays.copyOf(lowest, tail),
                Arrays.copyOfRange(highest, highest.length - tail, highest.length));
    }

    private static double[] inOrder(List<double[]> parts) {
        double[] all = joined(parts);
        // The library's sort sees that these are a few rising runs, and merges them.
        Arrays.sort(all);
        return all;
    }

    private static double[] joined(List<double[]> parts) {
        double[] all = new double[parts.stream().mapToInt(part -> part.length).sum()];
        int at = 0;
        for (double[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return all;
    }

    private static Tails sorted(List<double[]> parts, int count, int tail) {
        double[] all = inOrder(parts);
        return new Tails(Arrays.copyOf(all, tail), Arrays.copyOfRange(all, count - tail, count));
    }

    /** Ten times the root of the number, or a few more, evenly from among them, in order. */
    private static double[] sample(List<double[]> parts, int count) {
        int step = (int) (Math.sqrt(count) / 10) + 1;
        double[] sample = new double[count / step + parts.size()];
        int size = 0;
        for (double[] part : parts) {
            for (int i = 0; i < part.length; i += step) {
                sample[size++] = part[i];
            }
        }
        Arrays.sort(sample, 0, size);
        return Arrays.copyOf(sample, size);
    }

    private static int rank(int sample, double share) {
        double expected = sample * share;
        double deviation = Math.sqrt(expected * (1 - share));
        return (int) Math.min(sample - 1, expected + MARGIN * deviation + 1);
    }

    /** Values beyond a place, as far as there is room. */
    private static final class Gathered {
        private final double[] values;
        private int size;

        Gathered(int most) {
            this.values = new double[most];
        }

        void upTo(double place, double[] part) {
            int at = size;
            for (int i = 0; i < part.length && at < values.length; i++) {
                if (part[i] <= place) {
                    values[at++] = part[i];
                }
            }
            size = at;
        }

        void from(double place, double[] part) {
            int at = size;
            for (int i = 0; i < part.length && at < values.length; i++) {
                if (part[i] >= place) {
                    values[at++] = part[i];
                }
            }
            size = at;
        }

        /** Room that ran out, as where most values are alike, leaves values unseen. */
        boolean failed(int least) {
            return size < least || size == values.length;
        }

        double[] inOrder() {
            Arrays.sort(values, 0, size);
            return Arrays.copyOf(values, size);
        }
    }
}
