package org.twinbar.statistics.groups;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.Checks;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Published;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.TwoMeans;

class GroupsReferenceTest {

    private final Checks checks = Checks.of(GroupsReferenceTest.class);

    @Test
    void resistivityOfSilicon() {
        OneWay analysis = OneWay.of(Published.groups("SiRstv"));

        checks.row("M-106-F").expects(analysis.test().f());
        checks.row("M-106-between").expects(analysis.betweenSquares());
        checks.row("M-106-within").expects(analysis.withinSquares());
        checks.row("M-106-s").expects(analysis.sd());
    }

    @Test
    void atomicWeightOfSilver() {
        OneWay analysis = OneWay.of(Published.groups("AtmWtAg"));

        checks.row("M-107-F").expects(analysis.test().f());
        checks.row("M-107-s").expects(analysis.sd());
        checks.row("M-107-R2").expects(analysis.shareBetween());
    }

    /**
     * NIST's rule: group means 1.4, then 1.3 and 1.5 by turns; in each group its mean, then 0.1
     * below and above it by turns.
     */
    @ParameterizedTest
    @CsvSource({"01, 1", "04, 1000000", "07, 1000000000000"})
    void simulatedSetsWithManyEqualDigits(String name, double constant) {
        double[] middles = {0.4, 0.3, 0.5, 0.3, 0.5, 0.3, 0.5, 0.3, 0.5};
        double[][] groups = new double[9][21];
        for (int group = 0; group < 9; group++) {
            groups[group][0] = constant + middles[group];
            for (int i = 1; i < 21; i++) {
                groups[group][i] = constant + middles[group] + (i % 2 == 1 ? -0.1 : 0.1);
            }
        }

        checks.row("M-108-" + name).expects(OneWay.of(groups).test().f());
    }

    @Test
    void threeByFiveOfTheHandbook() {
        double[][] groups = Published.groups("three by five");
        OneWay analysis = OneWay.of(groups);
        double difference = Summary.of(groups[1]).mean() - Summary.of(groups[0]).mean();
        double half = new StudentizedRange(3, 12).quantile(0.95) * analysis.sd() / Math.sqrt(5);

        checks.row("M-109-between").expects(analysis.betweenSquares());
        checks.row("M-109-within").expects(analysis.withinSquares());
        checks.row("M-109-F").expects(analysis.test().f());
        checks.row("M-109-p").expects(analysis.test().p());
        checks.row("M-110-q").expects(new StudentizedRange(3, 12).quantile(0.95));
        checks.row("M-110-low").expects(difference - half);
        checks.row("M-110-high").expects(difference + half);
    }

    @Test
    void allPairsOfTensionsBesideWool() {
        Crossed crossed = Crossed.of("warpbreaks", List.of("A", "B"), List.of("L", "M", "H"));
        double[][][] cells = crossed.cells();
        double additive = crossed.left(crossed.firsts(), crossed.seconds());
        int df = 54 - 1 - 1 - 2;
        List<Double> means = new ArrayList<>();
        for (int tension = 0; tension < 3; tension++) {
            means.add(Summary.of(joined(cells[0][tension], cells[1][tension])).mean());
        }

        double sd = Math.sqrt(additive / df);
        StudentizedRange range = new StudentizedRange(3, df);
        double unit = sd / Math.sqrt(18);

        checks.row("M-111-LM-p").expects(range.above((means.get(0) - means.get(1)) / unit));
        checks.row("M-111-LH-p").expects(range.above((means.get(0) - means.get(2)) / unit));
        checks.row("M-111-MH-p").expects(range.above((means.get(1) - means.get(2)) / unit));
        checks.row("M-111-ML").expects(means.get(1) - means.get(2));
    }

    @Test
    void conformityWithUnequalCells() {
        Crossed crossed =
                Crossed.of("Moore", List.of("low", "high"), List.of("low", "medium", "high"));
        List<double[]> partner = crossed.firsts();
        List<double[]> fcategory = crossed.seconds();
        List<double[]> both = crossed.both();

        double additive = crossed.left(partner, fcategory);
        double full = crossed.left(partner, fcategory, both);

        checks.row("M-112-first").expects(crossed.left(partner) - additive);
        checks.row("M-112-second").expects(crossed.left(fcategory) - additive);
        checks.row("M-112-interaction").expects(additive - full);
        checks.row("M-112-residual").expects(full);
        checks.row("M-112-p")
                .expects(FTest.of(crossed.left(fcategory) - additive, 1, full, 39, "type II")
                        .p());
        checks.row("M-113-first").expects(crossed.left(partner, both) - full);
        checks.row("M-113-second").expects(crossed.left(fcategory, both) - full);
    }

    /** Two crossed factors, as columns that sum to zero over the levels of each. */
    private record Crossed(
            double[][][] cells,
            double[] values,
            List<double[]> firsts,
            List<double[]> seconds,
            List<double[]> both) {

        static Crossed of(String data, List<String> first, List<String> second) {
            double[][][] cells = first.stream()
                    .map(one -> second.stream()
                            .map(other -> Published.values(data, one + " " + other))
                            .toArray(double[][]::new))
                    .toArray(double[][][]::new);
            int n = Stream.of(cells)
                    .flatMap(Stream::of)
                    .mapToInt(it -> it.length)
                    .sum();
            double[] values = new double[n];
            List<double[]> firsts = columns(n, first.size() - 1);
            List<double[]> seconds = columns(n, second.size() - 1);
            List<double[]> both = columns(n, firsts.size() * seconds.size());
            int at = 0;
            for (int a = 0; a < first.size(); a++) {
                for (int b = 0; b < second.size(); b++) {
                    for (double value : cells[a][b]) {
                        values[at] = value;
                        for (int i = 0; i < firsts.size(); i++) {
                            firsts.get(i)[at] = contrast(i, a, first.size());
                        }
                        for (int i = 0; i < seconds.size(); i++) {
                            seconds.get(i)[at] = contrast(i, b, second.size());
                        }
                        for (int i = 0; i < both.size(); i++) {
                            both.get(i)[at] = firsts.get(i / seconds.size())[at]
                                    * seconds.get(i % seconds.size())[at];
                        }
                        at++;
                    }
                }
            }
            return new Crossed(cells, values, firsts, seconds, both);
        }

        private static List<double[]> columns(int n, int number) {
            return Stream.generate(() -> new double[n]).limit(number).toList();
        }

        private static double contrast(int column, int level, int levels) {
            return level == column ? 1 : level == levels - 1 ? -1 : 0;
        }

        /** Returns the squares that remain beside a constant and these columns. */
        @SafeVarargs
        final double left(List<double[]>... beside) {
            double[] constant = new double[values.length];
            Arrays.fill(constant, 1);
            List<double[]> columns = new ArrayList<>(List.of(constant));
            Stream.of(beside).forEach(columns::addAll);
            return Explained.squares(Explained.rest(values, columns));
        }
    }

    @Test
    void furtherColumnsExplainBreaksBesideWool() {
        List<double[]> wools = new ArrayList<>();
        List<double[]> tensions = new ArrayList<>();
        double[] breaks = new double[54];
        for (int i = 0; i < 3; i++) {
            tensions.add(new double[54]);
            if (i < 2) {
                wools.add(new double[54]);
            }
        }
        int at = 0;
        for (int wool = 0; wool < 2; wool++) {
            for (int tension = 0; tension < 3; tension++) {
                String cell = List.of("A", "B").get(wool) + " "
                        + List.of("L", "M", "H").get(tension);
                for (double value : Published.values("warpbreaks", cell)) {
                    breaks[at] = value;
                    wools.get(wool)[at] = 1;
                    tensions.get(tension)[at] = 1;
                    at++;
                }
            }
        }

        FTest test = Explained.beyond(breaks, wools, tensions, "tension").orElseThrow();

        checks.row("warp-place-F").expects(test.f());
        checks.row("warp-place-p").expects(test.p());
        assertThat(test.numeratorDf()).isEqualTo(2);
        assertThat(Explained.beyond(breaks, tensions, tensions, "again")).isEmpty();
    }

    @Test
    void holmAdjustsAsPublished() {
        double[] four = Holm.adjusted(0.01, 0.02, 0.03, 0.04);
        double[] published = Holm.adjusted(Published.values("BH 1995", "p"));

        checks.row("M-118-first").expects(four[0]);
        checks.row("M-118").expects(four[3]);
        for (int i = 1; i <= 4; i++) {
            checks.row("M-119-" + i).expects(published[i - 1]);
        }
        assertThat(published).isSorted().endsWith(1.0);
    }

    @ParameterizedTest
    @CsvSource({"2,3,2", "3.5,3,12", "4.2,5,20", "1,8,4", "12,10,2", "12,10,1", "3.3,4,Infinity"})
    void studentizedRange(double q, int groups, double df) {
        String inputs = (q == Math.rint(q) ? "" + (int) q : "" + q) + "-" + groups + "-"
                + (Double.isInfinite(df) ? "Inf" : "" + (int) df);

        checks.row("R-ptukey-" + inputs).expects(new StudentizedRange(groups, df).below(q));
    }

    @ParameterizedTest
    @CsvSource({"0.95,3,12", "0.99,5,20", "0.95,2,3", "0.9,10,8"})
    void quantilesOfTheStudentizedRange(double p, int groups, int df) {
        checks.row("R-qtukey-" + p + "-" + groups + "-" + df)
                .expects(new StudentizedRange(groups, df).quantile(p));
    }

    @Test
    void meanRangesOfControlCharts() {
        checks.row("M-131-d2-2").expects(StudentizedRange.meanRange(2));
        checks.row("M-131-d2-5").expects(StudentizedRange.meanRange(5));
    }

    @Test
    void largestOfSeveralComparisonsWithOneControl() {
        checks.row("R-dunnett-equal")
                .expects(DunnettRange.of(5, new int[] {5, 5, 5}, 16).below(2.5));
        checks.row("R-dunnett-unequal")
                .expects(DunnettRange.of(8, new int[] {3, 5, 10, 4}, 25).below(2.2));
        checks.row("R-dunnett-few")
                .expects(DunnettRange.of(3, new int[] {3, 3}, 6).below(3.1));
        checks.row("D-3-16").expects(DunnettRange.of(5, new int[] {5, 5, 5}, 16).quantile(0.95));
    }

    @Test
    void plantsOfUnequalNumbers() {
        double[][] plants = Published.groups("PlantGrowth");
        OneWay analysis = OneWay.of(plants);
        int[] treated = {plants[1].length, plants[2].length};
        DunnettRange dunnett = DunnettRange.of(plants[0].length, treated, analysis.withinDf());
        StudentizedRange tukey = new StudentizedRange(3, analysis.withinDf());
        int[][] pairs = {{1, 0}, {2, 0}, {2, 1}};

        for (int i = 0; i < 3; i++) {
            double[] one = plants[pairs[i][0]];
            double[] other = plants[pairs[i][1]];
            double difference = Summary.of(one).mean() - Summary.of(other).mean();
            double unit = analysis.sd() * Math.sqrt(1.0 / one.length + 1.0 / other.length);
            double t = Math.abs(difference) / unit;
            double half = tukey.quantile(0.95) / Math.sqrt(2) * unit;
            checks.row("R-kramer-low" + (i + 1)).expects(difference - half);
            checks.row("R-kramer-p" + (i + 1)).expects(tukey.above(t * Math.sqrt(2)));
            if (i < 2) {
                double reach = dunnett.quantile(0.95) * unit;
                checks.row("R-plants-p" + (i + 1)).expects(dunnett.above(t));
                checks.row("R-plants-low" + (i + 1)).expects(difference - reach);
                checks.row("R-plants-high" + (i + 1)).expects(difference + reach);
            }
        }
    }

    @Test
    void interactionKeepsFourSpreads() {
        TwoGroups set = Published.pair("set W", "treated", "control");
        TwoMeans here = TwoMeans.of(set.treated(), set.control());
        TwoMeans there =
                TwoMeans.of(new double[] {44, 41.3, 46.2, 43.1}, new double[] {40.2, 43.9, 41.7});

        Estimate difference = Interaction.ofDifferences(here, there, 0.95);
        Estimate ratio = Interaction.ofRatios(here, there, 0.95);

        checks.row("R-interaction").expects(difference.value());
        checks.row("R-interaction-low").expects(difference.low());
        checks.row("R-interaction-ratio").expects(ratio.value());
        checks.row("R-interaction-ratio-high").expects(ratio.high());
    }

    private static double[] joined(double[] a, double[] b) {
        return IntStream.range(0, a.length + b.length)
                .mapToDouble(i -> i < a.length ? a[i] : b[i - a.length])
                .toArray();
    }
}
