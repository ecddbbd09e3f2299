package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TailsTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 7, 50, 400, 1000, 5000, 10_000})
    void putsBothTailsWhereASortDoes(int tail) {
        Random random = new Random(20261125 + tail);
        for (boolean ties : new boolean[] {false, true}) {
            double[] values =
                    random.doubles(10_000).map(v -> ties ? Math.rint(9 * v) : v).toArray();
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            double[] ordered = values.clone();
            Tails.order(ordered, tail);
            int n = values.length;
            assertThat(Arrays.copyOf(ordered, tail)).isEqualTo(Arrays.copyOf(sorted, tail));
            assertThat(Arrays.copyOfRange(ordered, n - tail, n))
                    .isEqualTo(Arrays.copyOfRange(sorted, n - tail, n));
            Arrays.sort(ordered);
            assertThat(ordered).isEqualTo(sorted);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 60, 65, 129})
    void takesFewValuesAndSortedOnes(int n) {
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = n - i;
        }
        Tails.order(values, n / 3);
        for (int i = 0; i < n / 3; i++) {
            assertThat(values[i]).isEqualTo(i + 1);
            assertThat(values[n - 1 - i]).isEqualTo(n - i);
        }
    }
}
