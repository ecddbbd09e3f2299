package org.twinbar.statistics.resampling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.Checks;
import org.twinbar.statistics.Published;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.resampling.Permutation.Effect;
import org.twinbar.statistics.resampling.Permutation.Statistic;

class ResamplingReferenceTest {

    private static final TwoGroups SET_W = Published.pair("set W", "treated", "control");

    private final Checks checks = Checks.of(ResamplingReferenceTest.class);
    private final Permutation permutation = Permutation.seeded(1);

    @Test
    void listsAllSplitsOfTheSleepData() {
        PermutationTest test =
                permutation.test(Published.pair("sleep", "1", "2"), Statistic.DIFFERENCE_OF_MEANS);

        checks.row("M-136").expects(test.pTwoSided());
        assertThat(test.splits()).isEqualTo(184_756);
    }

    @Test
    void listsAllSplitsOfTheMouseData() {
        PermutationTest test = permutation.test(
                Published.pair("mouse", "treated", "control"), Statistic.DIFFERENCE_OF_MEANS);

        checks.row("M-137-one").expects(test.pGreater());
        checks.row("M-137-two").expects(test.pTwoSided());
    }

    @ParameterizedTest
    @EnumSource(Statistic.class)
    void agreesWithListingInR(Statistic statistic) {
        TwoGroups near =
                TwoGroups.of(new double[] {43.4, 44.9, 42.2, 44.6, 43.1, 45.8}, SET_W.control());
        String name = switch (statistic) {
            case DIFFERENCE_OF_MEANS -> "diff_means";
            case WELCH_T -> "welch";
            case LOG_RATIO_OF_MEANS -> "logratio";
        };

        PermutationTest test = permutation.test(near, statistic);

        checks.row("R-" + name + "-two").expects(test.pTwoSided());
        checks.row("R-" + name + "-greater").expects(test.pGreater());
    }

    @Test
    void endsAgreeWithBisectionInR() {
        PermutationInterval difference = permutation.interval(SET_W, Effect.DIFFERENCE, 0.95);
        PermutationInterval ratio = permutation.interval(SET_W, Effect.RATIO, 0.95);

        checks.row("R-difference-low").expects(difference.low());
        checks.row("R-difference-high").expects(difference.high());
        checks.row("R-ratio-low").expects(ratio.low());
        checks.row("R-ratio-high").expects(ratio.high());
    }

    @Test
    void labelsMoveWithinTheirBlock() {
        double[][] untreated = {{41.2, 42.0, 41.1}, {43.9, 44.2, 43.0}, {40.0, 40.9, 41.8}};
        double[][] treated = {{42.0, 41.1, 42.9}, {43.8, 44.9, 43.1}, {40.2, 41.6, 40.9}};
        List<TwoGroups> blocks = List.of(
                TwoGroups.of(treated[0], untreated[0]),
                TwoGroups.of(treated[1], untreated[1]),
                TwoGroups.of(treated[2], untreated[2]));

        PermutationTest test = permutation.test(blocks, Statistic.DIFFERENCE_OF_MEANS);

        checks.row("R-blocks-two").expects(test.pTwoSided());
        assertThat(test.splits()).isEqualTo(8_000);
    }

    @Test
    void varianceOfTheSpatialTest() {
        double[] values = Published.values("spatial", "A");

        BootstrapInterval interval =
                Bootstrap.seeded(1).rows(values.length, rows -> variance(values, rows), 0.90);

        checks.row("M-86-a").expects(interval.acceleration());
        checks.row("M-86-low").expects(interval.low());
        checks.row("M-86-high").expects(interval.high());
    }

    @Test
    void correlationOfTheLawSchools() {
        double[] x = Published.values("law school", "LSAT");
        double[] y = Published.values("law school", "GPA");

        BootstrapInterval interval =
                Bootstrap.seeded(1).rows(x.length, rows -> correlation(x, y, rows), 0.95);

        checks.row("M-87-r").expects(interval.estimate());
        checks.row("M-87-se").expects(interval.standardError());
    }

    @Test
    void endsOfMeansAgreeWithR() {
        BootstrapInterval ratio =
                Bootstrap.seeded(1).twoGroups(SET_W, TwoGroupStatistic.RATIO_OF_MEANS, 0.95);
        BootstrapInterval minus =
                Bootstrap.seeded(1).twoGroups(SET_W, TwoGroupStatistic.DIFFERENCE_OF_MEANS, 0.95);

        checks.row("R-bca-ratio-low").expects(ratio.low());
        checks.row("R-bca-ratio-high").expects(ratio.high());
        checks.row("R-bca-minus-low").expects(minus.low());
        checks.row("R-bca-minus-high").expects(minus.high());
    }

    @ParameterizedTest
    @EnumSource(TwoGroupStatistic.class)
    void endsAgreeWithSciPy(TwoGroupStatistic statistic) {
        BootstrapInterval interval =
                Bootstrap.seeded(1).withResamples(200_000).twoGroups(SET_W, statistic, 0.95);

        String row = "SciPy-" + statistic.words().replace(' ', '-');
        checks.row(row + "-low").expects(interval.low());
        checks.row(row + "-high").expects(interval.high());
    }

    private static double variance(double[] values, int[] rows) {
        double mean = 0;
        for (int row : rows) {
            mean += values[row] / rows.length;
        }
        double squares = 0;
        for (int row : rows) {
            squares += (values[row] - mean) * (values[row] - mean);
        }
        return squares / rows.length;
    }

    private static double correlation(double[] x, double[] y, int[] rows) {
        double meanX = 0;
        double meanY = 0;
        for (int row : rows) {
            meanX += x[row] / rows.length;
            meanY += y[row] / rows.length;
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int row : rows) {
            xx += (x[row] - meanX) * (x[row] - meanX);
            xy += (x[row] - meanX) * (y[row] - meanY);
            yy += (y[row] - meanY) * (y[row] - meanY);
        }
        return xx == 0 || yy == 0 ? 0 : xy / Math.sqrt(xx * yy);
    }
}
