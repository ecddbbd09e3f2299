package org.twinbar.statistics.resampling;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.TwoGroups;

/**
 * The ways in which the labels "treated" and "control" may be dealt out anew within each block.
 *
 * <p>Values stand block by block, the treated ones of a block first. A split picks as many values
 * of each block as were treated there; the visitor is told their sums, parted by where the values
 * came from.
 */
final class Splits {

    /** Told of each split once. */
    interface Visitor {
        /**
         * One split.
         *
         * @param fromTreated sum of the picked values that were treated
         * @param fromControl sum of the picked values that were control
         * @param second sum of the second weights of all picked values
         * @param exchanged how many of the picked values were control
         */
        void split(double fromTreated, double fromControl, double second, int exchanged);
    }

    private final double[] values;
    private final double[] second;
    private final boolean[] wasTreated;
    private final int[] blockEnd;
    private final int[] toPick;

    private Splits(
            double[] values, double[] second, boolean[] wasTreated, int[] blockEnd, int[] toPick) {
        this.values = values;
        this.second = second;
        this.wasTreated = wasTreated;
        this.blockEnd = blockEnd;
        this.toPick = toPick;
    }

    /**
     * Splits of these blocks, with a second weight for each value, in the order block, treated,
     * control.
     */
    static Splits of(List<TwoGroups> blocks, double[] second) {
        int n = second.length;
        double[] values = new double[n];
        boolean[] wasTreated = new boolean[n];
        int[] blockEnd = new int[blocks.size()];
        int[] toPick = new int[blocks.size()];
        int at = 0;
        for (int b = 0; b < blocks.size(); b++) {
            TwoGroups block = blocks.get(b);
            for (double value : block.treated()) {
                wasTreated[at] = true;
                values[at++] = value;
            }
            for (double value : block.control()) {
                values[at++] = value;
            }
            blockEnd[b] = at;
            toPick[b] = block.treatedCount();
        }
        return new Splits(values, second, wasTreated, blockEnd, toPick);
    }

    /**
     * The number of splits, the observed one included; {@link Long#MAX_VALUE} where it is larger
     * than that.
     */
    static long count(List<TwoGroups> blocks) {
        double count = 1;
        for (TwoGroups block : blocks) {
            int n = block.treatedCount() + block.controlCount();
            int k = Math.min(block.treatedCount(), block.controlCount());
            double ways = 1;
            for (int i = 1; i <= k; i++) {
                // The product is a whole number at every step, and is exact below 2^53.
                ways = ways * (n - k + i) / i;
            }
            count *= ways;
        }
        return count < 0x1p53 ? (long) count : Long.MAX_VALUE;
    }

    void visitAll(Visitor visitor) {
        visit(0, 0, toPick[0], 0, 0, 0, 0, visitor);
    }

    private void visit(
            int block,
            int at,
            int left,
            double treated,
            double control,
            double other,
            int exchanged,
            Visitor visitor) {
        int end = blockEnd[block];
        if (left == 0 || at == end) {
            if (block + 1 == blockEnd.length) {
                visitor.split(treated, control, other, exchanged);
            } else {
                visit(
                        block + 1,
                        end,
                        toPick[block + 1],
                        treated,
                        control,
                        other,
                        exchanged,
                        visitor);
            }
            return;
        }
        if (end - at > left) {
            visit(block, at + 1, left, treated, control, other, exchanged, visitor);
        }
        if (wasTreated[at]) {
            visit(
                    block,
                    at + 1,
                    left - 1,
                    treated + values[at],
                    control,
                    other + second[at],
                    exchanged,
                    visitor);
        } else {
            visit(
                    block,
                    at + 1,
                    left - 1,
                    treated,
                    control + values[at],
                    other + second[at],
                    exchanged + 1,
                    visitor);
        }
    }

    /**
     * Visits splits drawn at random, each split as likely as any other, the observed one included.
     */
    void visitDrawn(int draws, long seed, Visitor visitor) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        int[] order = new int[values.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        for (int draw = 0; draw < draws; draw++) {
            double treated = 0;
            double control = 0;
            double other = 0;
            int exchanged = 0;
            int start = 0;
            for (int b = 0; b < blockEnd.length; b++) {
                for (int i = start; i < start + toPick[b]; i++) {
                    int j = i + random.nextInt(blockEnd[b] - i);
                    int picked = order[j];
                    order[j] = order[i];
                    order[i] = picked;
                    other += second[picked];
                    if (wasTreated[picked]) {
                        treated += values[picked];
                    } else {
                        control += values[picked];
                        exchanged++;
                    }
                }
                start = blockEnd[b];
            }
            visitor.split(treated, control, other, exchanged);
        }
    }
}
