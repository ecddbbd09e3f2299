package org.twinbar.statistics.resampling;

import java.util.OptionalLong;

/**
 * The effects that a permutation test does not reject.
 *
 * @param estimate the effect: difference, or ratio, of means
 * @param low lower end; −∞ (ratio: 0) where the splits are too few to reject any small effect at
 *     this level
 * @param high upper end; +∞ where they are too few to reject any large one
 * @param level share of studies whose interval holds the true effect, at least
 * @param splits how many splits the ends were found among, the observed one included
 * @param treatedCount treated values
 * @param controlCount control values
 * @param method what was done, in words
 * @param seed what the splits were drawn with; empty where all were listed
 */
public record PermutationInterval(
        double estimate,
        double low,
        double high,
        double level,
        long splits,
        int treatedCount,
        int controlCount,
        String method,
        OptionalLong seed) {

    /** Whether there were splits enough for two ends. */
    public boolean isBounded() {
        return high < Double.POSITIVE_INFINITY;
    }
}
