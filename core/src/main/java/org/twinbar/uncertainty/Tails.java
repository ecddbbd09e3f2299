package org.twinbar.uncertainty;

import java.util.Arrays;

/** Puts the lowest and the highest values in order, and leaves those between as they fall. */
final class Tails {

    /** Fewer values are sorted as fast as they are parted. */
    private static final int FEW = 64;

    private Tails() {}

    /**
     * Orders both tails: the values before {@code tail} and the last {@code tail} ones are what a
     * full sort would put there.
     *
     * @param tail how many on either side, from 0 to the number of values
     */
    static void order(double[] values, int tail) {
        int n = values.length;
        if (2 * tail >= n || n <= FEW) {
            Arrays.sort(values);
            return;
        }
        part(values, 0, n, tail);
        part(values, tail, n, n - tail);
        Arrays.sort(values, 0, tail);
        Arrays.sort(values, n - tail, n);
    }

    /**
     * Moves the values that belong before a place before it, by parting about a middle of three.
     */
    private static void part(double[] values, int from, int to, int place) {
        int low = from;
        int high = to - 1;
        int budget = 4 * (32 - Integer.numberOfLeadingZeros(to - from));
        while (high - low > FEW) {
            if (budget-- == 0) {
                break;
            }
            double pivot = middle(values[low], values[(low + high) >>> 1], values[high]);
            int left = low;
            int right = high;
            while (left <= right) {
                while (values[left] < pivot) {
                    left++;
                }
                while (values[right] > pivot) {
                    right--;
                }
                if (left <= right) {
                    double kept = values[left];
                    values[left++] = values[right];
                    values[right--] = kept;
                }
            }
            if (place <= right) {
                high = right;
            } else if (place >= left) {
                low = left;
            } else {
                return;
            }
        }
        Arrays.sort(values, low, high + 1);
    }

    private static double middle(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
