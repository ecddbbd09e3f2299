package org.twinbar.report;

import java.util.Arrays;

/** Chooses the rows of a curve that a picture needs: no peak and no dip is lost. */
final class Thinned {

    private Thinned() {}

    /**
     * Returns the rows to draw, rising: of each stretch the lowest and the highest, and both ends.
     * Rows whose number is not finite are passed over.
     *
     * @param most how many rows to keep about; at least 8
     */
    static int[] rows(double[] across, double[] up, int most) {
        int[] finite = new int[up.length];
        int count = 0;
        for (int row = 0; row < up.length; row++) {
            if (Double.isFinite(up[row]) && Double.isFinite(across[row])) {
                finite[count++] = row;
            }
        }
        if (count <= most) {
            return Arrays.copyOf(finite, count);
        }
        int stretches = Math.max(4, (most - 2) / 2);
        int[] kept = new int[2 * stretches + 2];
        int at = 0;
        kept[at++] = finite[0];
        for (int stretch = 0; stretch < stretches; stretch++) {
            int from = (int) ((long) count * stretch / stretches);
            int to = (int) ((long) count * (stretch + 1) / stretches);
            int low = finite[from];
            int high = finite[from];
            for (int i = from; i < to; i++) {
                low = up[finite[i]] < up[low] ? finite[i] : low;
                high = up[finite[i]] > up[high] ? finite[i] : high;
            }
            kept[at++] = Math.min(low, high);
            kept[at++] = Math.max(low, high);
        }
        kept[at++] = finite[count - 1];
        return Arrays.stream(kept, 0, at).distinct().toArray();
    }
}
