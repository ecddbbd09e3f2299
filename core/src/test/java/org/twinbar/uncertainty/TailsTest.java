package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TailsTest {

    private static void holdsWhatASortDoes(double[] values, int tail) {
        int count = values.length;
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] one = Arrays.copyOf(values, count / 3);
        double[] rest = Arrays.copyOfRange(values, count / 3, count);
        double[] before = rest.clone();
        Tails tails = Tails.of(List.of(one, rest), tail);
        assertThat(tails.lowest()).isEqualTo(Arrays.copyOf(sorted, tail));
        assertThat(tails.highest()).isEqualTo(Arrays.copyOfRange(sorted, count - tail, count));
        assertThat(rest).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 7, 50, 400, 1000, 2500, 5000, 10_000})
    void holdsWhatASortPutsAtBothEnds(int tail) {
        Random random = new Random(20261125 + tail);
        for (boolean ties : new boolean[] {false, true}) {
            double[] values =
                    random.doubles(10_000).map(v -> ties ? Math.rint(9 * v) : v).toArray();
            holdsWhatASortDoes(values, tail);
        }
    }

    @Test
    void tailsOfPartsJoinIntoThoseOfAll() {
        Random random = new Random(7);
        List<double[]> parts = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            parts.add(random.doubles(2000).toArray());
        }
        Tails whole = Tails.of(parts, 2000);
        List<Tails> tails =
                parts.stream().map(part -> Tails.of(List.of(part), 150)).toList();
        Tails joined = Tails.joined(tails, 2000).orElseThrow();
        assertThat(joined.lowest()).isEqualTo(whole.lowest());
        assertThat(joined.highest()).isEqualTo(whole.highest());
        assertThat(joined.shortened(10).highest())
                .isEqualTo(Arrays.copyOfRange(whole.highest(), 1990, 2000));
    }

    /** One part that lies lower than all others hides values behind its own tail. */
    @Test
    void tailsThatMayHideValuesAreNotJoined() {
        double[] low = new double[1000];
        double[] high = new double[1000];
        for (int i = 0; i < 1000; i++) {
            low[i] = i;
            high[i] = 5000 + i;
        }
        List<Tails> tails = List.of(Tails.of(List.of(low), 100), Tails.of(List.of(high), 100));
        assertThat(Tails.joined(tails, 100).orElseThrow().lowest()).endsWith(98, 99);
        assertThat(Tails.joined(tails, 101)).isEmpty();
        assertThat(Tails.joined(tails, 0)).isEmpty();
        assertThat(Tails.joined(tails, 201)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 60, 65, 999, 1000, 1001, 4000})
    void takesFewValuesAndSortedOnes(int n) {
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = n - i;
        }
        holdsWhatASortDoes(values, n / 20);
        holdsWhatASortDoes(values, n / 3);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 16})
    void aSampleThatMisleadsIsSeenThrough(int every) {
        double[] values = new double[10_000];
        // The sample is taken each tenth place, and meets none of the extremes, or little else.
        for (int i = 0; i < values.length; i++) {
            values[i] = i % 10 == 0 ? (i % every) : 1e6 * Math.sin(i);
        }
        holdsWhatASortDoes(values, 500);
        for (int i = 0; i < values.length; i++) {
            values[i] = i % 10 == 0 ? 1e6 * Math.sin(i) : (i % every);
        }
        holdsWhatASortDoes(values, 500);
    }
}
