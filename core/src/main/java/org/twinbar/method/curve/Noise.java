package org.twinbar.method.curve;

import java.util.Arrays;
import org.twinbar.method.Trace;

/** The noise of a channel, from how its rows jump about a smooth course. */
public final class Noise {

    /** This many places along the curve tell the noise to about 5 %. */
    private static final int PLACES = 401;

    /** Median of the absolute value of a normal variable: Φ⁻¹(3/4). */
    private static final double MEDIAN_OF_ABSOLUTE = 0.6744897501960817;

    private Noise() {}

    /**
     * Returns the standard deviation of one row about a smooth course.
     *
     * <pre>σ = median|y₋₁ − 2y₀ + y₊₁| / (0.67449·√6)</pre>
     *
     * <p>The median passes over jumps. Rows that a logger has filtered or repeated look quieter
     * than they are. Fewer than 5 rows tell nothing: 0. Source: common practice, no source; the
     * factor is that of a normal variable, and √6 the sum 1² + 2² + 1².
     *
     * @param from first row
     * @param to last row, included
     */
    public static double of(Trace trace, int from, int to) {
        int middles = to - from - 1;
        if (middles < 3) {
            return 0;
        }
        int places = Math.min(middles, PLACES);
        double[] jumps = new double[places];
        int found = 0;
        for (int i = 0; i < places; i++) {
            int row = from + 1 + (int) ((long) i * middles / places);
            double jump = trace.get(row - 1) - 2 * trace.get(row) + trace.get(row + 1);
            if (Double.isFinite(jump)) {
                jumps[found++] = Math.abs(jump);
            }
        }
        if (found == 0) {
            return 0;
        }
        Arrays.sort(jumps, 0, found);
        return jumps[found / 2] / (MEDIAN_OF_ABSOLUTE * Math.sqrt(6));
    }
}
