package org.twinbar.statistics.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.twinbar.statistics.panel.Panel.Reduction;
import org.twinbar.statistics.panel.WeightedKappa.Weights;

class PanelTest {

    @Test
    void tenRatersOnOnePairAreOnePair() {
        double[][] ratings = {{3, 4, 4, 5, 3, 4, 4, 4, 5, 3}, {1, 2, 2, 1, 1, 2, 3, 2, 2, 1}};

        assertThat(Panel.perPart(ratings, Reduction.MEDIAN)).containsExactly(4, 2);
        assertThat(Panel.perPart(ratings, Reduction.MEAN)).containsExactly(3.9, 1.7);
        assertThatThrownBy(() -> Panel.perPart(new double[][] {{}}, Reduction.MEAN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void ratersOfOneMindAgreeCompletely() {
        double[][] alike = {{1, 2, 3, 4}, {10, 20, 30, 40}};
        double[][] flat = {{2, 2, 2}, {3, 3, 3}};

        assertThat(Panel.agreement(alike).statistic()).isEqualTo(1);
        assertThat(Panel.agreement(flat).statistic()).isZero();
        assertThat(Panel.agreement(flat).p()).isEqualTo(1);
        double[] ratings = {1, 2, 3, 2};
        assertThat(WeightedKappa.of(ratings, ratings, Weights.LINEAR, 0.95).low())
                .isEqualTo(1);
    }

    @Test
    void scaleAndOrderChangeNoRank() {
        double[][] groups = {{3.1, 4.2, 5.0}, {4.4, 6.1}, {2.0, 3.9, 4.1, 5.5}};
        double[][] scaled = Arrays.stream(groups)
                .map(group -> Arrays.stream(group)
                        .map(value -> 7 - 3 * value)
                        .sorted()
                        .toArray())
                .toArray(double[][]::new);

        assertThat(Panel.kruskalWallis(scaled).statistic())
                .isCloseTo(Panel.kruskalWallis(groups).statistic(), within(1e-12));
        double[] differences = {1.2, -0.3, 0.8, 2.1, 0.3, 1.1};
        double[] opposite = Arrays.stream(differences).map(one -> -one).toArray();
        assertThat(SignedRank.twoSided(opposite).p())
                .isEqualTo(SignedRank.twoSided(differences).p());
        assertThat(SignedRank.shift(opposite, 0.9).orElseThrow().low())
                .isEqualTo(-SignedRank.shift(differences, 0.9).orElseThrow().high());
    }

    @Test
    void fivePairsAreTooFewForAnInterval() {
        double[] five = {1, 2, 3, 4, 5};

        assertThat(SignedRank.shift(five, 0.95)).isEmpty();
        assertThat(SignedRank.twoSided(five).p()).isEqualTo(1 / 16.0);
        assertThat(SignedRank.twoSided(0, 0, 0).p()).isEqualTo(1);
    }

    @Test
    void equalValuesDifferInNothing() {
        assertThat(Panel.kruskalWallis(new double[] {2, 2}, new double[] {2}).p())
                .isEqualTo(1);
    }

    @Test
    void refusesWhatHasNoAnswer() {
        double[] ones = {1, 1, 1};

        assertThatThrownBy(() -> Panel.agreement(new double[][] {{1, 2, 3}, {1, 2}}))
                .hasMessage("All raters must hold the same 3 parts, but one holds 2.");
        assertThatThrownBy(() -> WeightedKappa.of(ones, new double[] {1, 2}, Weights.LINEAR, 0.95))
                .hasMessage(
                        "Both raters must rate the same parts, but one rated 3 and the other 2.");
        assertThatThrownBy(() -> WeightedKappa.of(ones, ones, Weights.LINEAR, 0.95))
                .isInstanceOf(IllegalArgumentException.class);
        double[] many = new double[501];
        Arrays.fill(many, 1);
        assertThatThrownBy(() -> SignedRank.twoSided(many))
                .hasMessage("The exact signed-rank test takes up to 500 pairs, not 501.");
    }
}
