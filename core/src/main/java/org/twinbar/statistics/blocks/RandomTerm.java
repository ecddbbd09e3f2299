package org.twinbar.statistics.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Something that specimens share by chance: the run they were printed in, their mix.
 *
 * @param name what they share, in words
 * @param members for each level, the indexes of the specimens that share it; a specimen may share
 *     none
 */
record RandomTerm(String name, List<int[]> members) {

    /**
     * The term whose level of each specimen is given; a negative level says that it shares none.
     */
    static RandomTerm of(String name, int... levels) {
        Map<Integer, List<Integer>> byLevel = new TreeMap<>();
        for (int i = 0; i < levels.length; i++) {
            if (levels[i] >= 0) {
                byLevel.computeIfAbsent(levels[i], level -> new ArrayList<>()).add(i);
            }
        }
        return new RandomTerm(
                name,
                byLevel.values().stream()
                        .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                        .toList());
    }

    /** What each specimen has for itself. */
    static RandomTerm residual(int n) {
        List<int[]> own = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            own.add(new int[] {i});
        }
        return new RandomTerm("residual", own);
    }

    /** Whether some level is shared, so that the term differs from the residual. */
    boolean isShared() {
        return members.stream().anyMatch(level -> level.length > 1);
    }

    /** Adds this term's share of the covariance matrix. */
    void addTo(double[][] covariance, double variance) {
        for (int[] level : members) {
            for (int row : level) {
                for (int column : level) {
                    covariance[row][column] += variance;
                }
            }
        }
    }

    /** Sums of a vector over the members of each level. */
    double[] sums(double[] vector) {
        double[] sums = new double[members.size()];
        for (int level = 0; level < sums.length; level++) {
            for (int row : members.get(level)) {
                sums[level] += vector[row];
            }
        }
        return sums;
    }

    /** Sums of a matrix over the members of each level of this term and of another. */
    double[][] sums(double[][] matrix, RandomTerm other) {
        double[][] sums = new double[members.size()][other.members.size()];
        for (int a = 0; a < sums.length; a++) {
            for (int row : members.get(a)) {
                for (int b = 0; b < sums[a].length; b++) {
                    for (int column : other.members.get(b)) {
                        sums[a][b] += matrix[row][column];
                    }
                }
            }
        }
        return sums;
    }
}
