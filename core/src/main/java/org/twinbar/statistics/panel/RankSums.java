package org.twinbar.statistics.panel;

import java.util.Arrays;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.MidRanks;

/**
 * Ranks within each block, summed over blocks.
 *
 * @param sums for each column the sum of its ranks
 * @param blocks how many blocks there are
 * @param ties Σ(t³ − t) over the ties of all blocks
 */
record RankSums(double[] sums, int blocks, double ties) {

    static RankSums of(double[][] blocks, String blockName, String columnName) {
        Arguments.requireAtLeast(blocks.length, 2, "number of " + blockName);
        int columns = Arguments.requireAtLeast(blocks[0].length, 2, "number of " + columnName);
        double[] sums = new double[columns];
        double ties = 0;
        for (double[] block : blocks) {
            if (block.length != columns) {
                throw new IllegalArgumentException("All " + blockName + " must hold the same "
                        + columns + " " + columnName + ", but one holds " + block.length + ".");
            }
            Arguments.requireFinite(block, 2, columnName);
            double[] ranks = MidRanks.among(block).of(block);
            for (int i = 0; i < columns; i++) {
                sums[i] += ranks[i];
            }
            ties += ties(block);
        }
        return new RankSums(sums, blocks.length, ties);
    }

    /** Σ(t³ − t) over the groups of equal values. */
    static double ties(double[] values) {
        double ties = 0;
        for (double value : values) {
            double equal = Arrays.stream(values).filter(other -> other == value).count();
            // Each of t equal values adds t² − 1.
            ties += equal * equal - 1;
        }
        return ties;
    }

    /** Squares of the sums about their mean. */
    double squares() {
        double mean = Arrays.stream(sums).average().orElseThrow();
        return Arrays.stream(sums).map(sum -> (sum - mean) * (sum - mean)).sum();
    }
}
