package org.twinbar.method;

/**
 * One channel of a curve in one world: the recorded numbers with the world's gain and zero.
 *
 * <p>The recorded numbers are shared by all worlds and never copied.
 */
public final class Trace {

    private final double[] recorded;
    private final double scale;
    private final double offset;

    Trace(double[] recorded, double scale, double offset) {
        this.recorded = recorded;
        this.scale = scale;
        this.offset = offset;
    }

    public int size() {
        return recorded.length;
    }

    /** Returns the value of a row, counted from 0. */
    public double get(int row) {
        return recorded[row] * scale + offset;
    }

    /** Returns what a recorded number is multiplied by here; 1 in the world without errors. */
    public double scale() {
        return scale;
    }

    /** Returns what is added to it then; 0 in the world without errors. */
    public double offset() {
        return offset;
    }

    public double last() {
        return get(recorded.length - 1);
    }

    /**
     * Returns the first row that holds the largest value; rows without a number are passed over.
     */
    public int rowOfLargest() {
        int best = 0;
        for (int row = 1; row < recorded.length; row++) {
            if (recorded[row] > recorded[best] || Double.isNaN(recorded[best])) {
                best = row;
            }
        }
        return best;
    }
}
