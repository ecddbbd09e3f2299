package org.twinbar.statistics.resampling;

import java.util.List;
import org.twinbar.statistics.TwoGroups;

/**
 * The blocks that hold both groups, and the effects seen in them, each block weighted by
 * n₁n₂/(n₁+n₂).
 */
record Design(List<TwoGroups> blocks, int treatedCount, int controlCount) {

    /**
     * The blocks that can say something.
     *
     * @throws IllegalArgumentException if none holds both groups, or if a value is ≤ 0 for a ratio
     */
    static Design of(List<TwoGroups> blocks, boolean ratio) {
        List<TwoGroups> both = blocks.stream()
                .filter(block -> block.treatedCount() > 0 && block.controlCount() > 0)
                .map(block -> ratio ? block.aboveZero() : block)
                .toList();
        if (both.isEmpty()) {
            throw new IllegalArgumentException(
                    "A permutation needs a block that holds both groups.");
        }
        return new Design(
                both,
                both.stream().mapToInt(TwoGroups::treatedCount).sum(),
                both.stream().mapToInt(TwoGroups::controlCount).sum());
    }

    int size() {
        return treatedCount + controlCount;
    }

    double treatedSum() {
        return blocks.stream().mapToDouble(block -> sum(block.treated())).sum();
    }

    double difference() {
        double weights = 0;
        for (TwoGroups block : blocks) {
            weights += weight(block);
        }
        return (treatedShare() - controlShare()) / weights;
    }

    double ratio() {
        return treatedShare() / controlShare();
    }

    /** Σ n₁n₂/(n₁+n₂) · mean of the treated. */
    double treatedShare() {
        double total = 0;
        for (TwoGroups block : blocks) {
            total += weight(block) * sum(block.treated()) / block.treatedCount();
        }
        return total;
    }

    /** Σ n₁n₂/(n₁+n₂) · mean of the control. */
    double controlShare() {
        double total = 0;
        for (TwoGroups block : blocks) {
            total += weight(block) * sum(block.control()) / block.controlCount();
        }
        return total;
    }

    static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static double weight(TwoGroups block) {
        double n1 = block.treatedCount();
        double n2 = block.controlCount();
        return n1 * n2 / (n1 + n2);
    }
}
