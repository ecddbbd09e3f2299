package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ThinnedTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void keepsTheHighestTheLowestAndBothEnds(long seed) {
        Random random = new Random(seed);
        int rows = 1_000 + random.nextInt(50_000);
        double[] across = new double[rows];
        double[] up = new double[rows];
        for (int i = 0; i < rows; i++) {
            across[i] = i;
            up[i] = random.nextGaussian();
        }
        int[] kept = Thinned.rows(across, up, 300);
        assertThat(kept).isSorted().doesNotHaveDuplicates().hasSizeLessThanOrEqualTo(300);
        assertThat(kept[0]).isZero();
        assertThat(kept[kept.length - 1]).isEqualTo(rows - 1);
        double highest = Arrays.stream(up).max().orElseThrow();
        double lowest = Arrays.stream(up).min().orElseThrow();
        assertThat(Arrays.stream(kept).mapToDouble(row -> up[row])).contains(highest, lowest);
    }

    @Test
    void passesOverRowsThatAreNotFinite() {
        double[] up = {0, Double.NaN, 2, Double.POSITIVE_INFINITY, 1};
        assertThat(Thinned.rows(new double[] {0, 1, 2, 3, 4}, up, 100)).containsExactly(0, 2, 4);
    }

    @Test
    void drawsNothingOfACurveWithoutRows() {
        assertThat(Thinned.rows(new double[0], new double[0], 100)).isEmpty();
    }
}
