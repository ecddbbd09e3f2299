package org.twinbar.statistics.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Published;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.panel.WeightedKappa.Weights;

class PanelReferenceTest {

    private final Checks checks = Checks.of(PanelReferenceTest.class);

    @Test
    void ratersOfAnxiety() {
        double[][] raters = Published.groups("anxiety");
        Significance agreement = Panel.agreement(raters);

        checks.row("M-62-W").expects(agreement.statistic());
        checks.row("M-62-p").expects(agreement.p());
        checks.row("M-62-chi").expects(Panel.friedman(raters).statistic());
        checks.row("M-64-squared")
                .expects(WeightedKappa.of(raters[0], raters[1], Weights.QUADRATIC, 0.95)
                        .value());
        checks.row("M-64-linear")
                .expects(WeightedKappa.of(raters[0], raters[1], Weights.LINEAR, 0.95)
                        .value());
    }

    @Test
    void threeRatersWithoutTies() {
        double[][] raters = {{1, 2, 3, 4, 5}, {2, 1, 3, 5, 4}, {1, 3, 2, 4, 5}};

        checks.row("M-63-W").expects(Panel.agreement(raters).statistic());
    }

    @Test
    void kappaOfATable() {
        int[][] table = {{10, 3, 1}, {2, 8, 4}, {0, 2, 10}};
        Estimate linear = WeightedKappa.of(table, Weights.LINEAR, 0.95);
        Estimate quadratic = WeightedKappa.of(table, Weights.QUADRATIC, 0.95);

        checks.row("M-65-linear").expects(linear.value());
        checks.row("M-65-quadratic").expects(quadratic.value());
        checks.row("R-kappa-low-1").expects(linear.low());
        checks.row("R-kappa-low-2").expects(quadratic.low());
    }

    @Test
    void depressionBeforeAndAfter() {
        double[] before = Published.values("depression", "before");
        double[] after = Published.values("depression", "after");
        double[] differences = IntStream.range(0, before.length)
                .mapToDouble(i -> before[i] - after[i])
                .toArray();

        checks.row("M-68-V").expects(SignedRank.more(differences).statistic());
        checks.row("M-68-p").expects(SignedRank.more(differences).p());
        checks.row("R-signed-two").expects(SignedRank.twoSided(differences).p());
        Estimate shift = SignedRank.shift(differences, 0.95).orElseThrow();
        checks.row("R-shift").expects(shift.value());
        checks.row("R-shift-low").expects(shift.low());
        checks.row("R-shift-high").expects(shift.high());
    }

    @Test
    void tiedPairs() {
        checks.row("R-signed-tied")
                .expects(SignedRank.twoSided(1, 1, -1, 2, 2, 3, -2, 4, 0, 4, 5).p());
    }

    @Test
    void severalGroupsAndBlocks() {
        double[][] times = Published.groups("rounding times");
        double[][] byRunner = new double[times[0].length][3];
        for (int runner = 0; runner < byRunner.length; runner++) {
            for (int way = 0; way < 3; way++) {
                byRunner[runner][way] = times[way][runner];
            }
        }

        checks.row("M-121-chi").expects(Panel.friedman(byRunner).statistic());
        checks.row("M-121-p").expects(Panel.friedman(byRunner).p());
        Significance months = Panel.kruskalWallis(Published.groups("airquality ozone"));
        checks.row("M-120-H").expects(months.statistic());
        checks.row("M-120-p").expects(months.p());
        assertThat(months.df()).isEqualTo(4);
    }
}
