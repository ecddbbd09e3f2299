package org.twinbar.statistics.blocks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.statistics.TwoGroups;

/** How often intervals hold the truth, against what their Javadoc says; seeds are fixed. */
class BlocksCoverageTest {

    private static final int STUDIES = 600;

    @ParameterizedTest(name = "{0} blocks of {1} + {1}, effect varying by {2}")
    @CsvSource({"3, 3, 0", "3, 3, 3", "5, 2, 2"})
    void fewBlocksWithTheirOwnEffectAreCovered(int blocks, int each, double ofEffect) {
        assertThat(coverage(blocks, each, ofEffect)).isGreaterThan(0.96);
    }

    @ParameterizedTest(name = "2 blocks of {0} + {0}")
    @CsvSource({"3", "5"})
    void twoBlocksWithOneEffectAreCoveredAsStated(int each) {
        // Four Monte Carlo standard errors of 600 studies are 0.036.
        assertThat(coverage(2, each, 0)).isBetween(0.95 - 0.036, 0.95 + 0.036);
    }

    private static double coverage(int blocks, int each, double ofEffect) {
        Random random = new Random(20261125);
        int covered = 0;
        for (int study = 0; study < STUDIES; study++) {
            List<TwoGroups> made = new ArrayList<>();
            for (int block = 0; block < blocks; block++) {
                double level = 50 + 5 * random.nextGaussian();
                double effect = 4 + ofEffect * random.nextGaussian();
                made.add(TwoGroups.of(
                        values(random, each, level + effect), values(random, each, level)));
            }
            BlockOutcome outcome = Blocks.ofBlocks(made, 0.95);
            assertThat(outcome).isInstanceOf(BlockOutcome.Effect.class);
            covered += ((BlockOutcome.Effect) outcome).estimate().holds(4) ? 1 : 0;
        }
        return covered / (double) STUDIES;
    }

    private static double[] values(Random random, int count, double mean) {
        return IntStream.range(0, count)
                .mapToDouble(i -> mean + 3 * random.nextGaussian())
                .toArray();
    }
}
