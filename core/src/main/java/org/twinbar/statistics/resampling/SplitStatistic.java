package org.twinbar.statistics.resampling;

import java.util.List;
import org.twinbar.statistics.TwoGroups;

/** Calculates a statistic for each split and counts how it compares with the observed one. */
abstract class SplitStatistic implements Splits.Visitor {

    /**
     * Sums of one set of values in another order differ by less than this many units in the last
     * place a value.
     */
    private static final double ROUNDING = 16;

    private final Splits splits;
    private double observed;
    private double slack;
    private long visited;
    private long asLarge;
    private long asSmall;
    private long asFar;

    private SplitStatistic(Splits splits) {
        this.splits = splits;
    }

    /**
     * The statistic of a split with this sum of picked values and this sum of their second weights.
     */
    abstract double of(double sum, double second);

    Splits splits() {
        return splits;
    }

    long visited() {
        return visited;
    }

    long asLarge() {
        return asLarge;
    }

    long asSmall() {
        return asSmall;
    }

    long asFar() {
        return asFar;
    }

    @Override
    public final void split(double fromTreated, double fromControl, double second, int exchanged) {
        double value = of(fromTreated + fromControl, second);
        visited++;
        if (value >= observed - slack) {
            asLarge++;
        }
        if (value <= observed + slack) {
            asSmall++;
        }
        if (Math.abs(value) >= Math.abs(observed) - slack) {
            asFar++;
        }
    }

    private void observe(double sum, double second, double slackOfObserved) {
        observed = of(sum, second);
        slack = slackOfObserved;
    }

    /**
     * Sum of the picked values, less its expectation: orders splits as the weighted difference of
     * means does.
     */
    static SplitStatistic sum(Design design) {
        List<TwoGroups> centred = centred(design);
        SplitStatistic statistic =
                new SplitStatistic(Splits.of(centred, new double[design.size()])) {
                    @Override
                    double of(double sum, double second) {
                        return sum;
                    }
                };
        statistic.observe(treatedSum(centred), 0, rounding(design));
        return statistic;
    }

    static SplitStatistic welch(Design design) {
        List<TwoGroups> centred = centred(design);
        double[] squares = new double[design.size()];
        double all = 0;
        double observedSquares = 0;
        int at = 0;
        for (TwoGroups block : centred) {
            for (double value : block.treated()) {
                squares[at++] = value * value;
                observedSquares += value * value;
            }
            for (double value : block.control()) {
                squares[at++] = value * value;
            }
        }
        for (double square : squares) {
            all += square;
        }
        double allSquares = all;
        double n1 = design.treatedCount();
        double n2 = design.controlCount();
        SplitStatistic statistic = new SplitStatistic(Splits.of(centred, squares)) {
            @Override
            double of(double sum, double second) {
                // The centred values sum to zero, so that the other group's sum is the opposite of
                // this one's.
                double difference = sum / n1 + sum / n2;
                double ss1 = Math.max(0, second - sum * sum / n1);
                double ss2 = Math.max(0, allSquares - second - sum * sum / n2);
                double variance =
                        ss1 / (n1 * Math.max(1, n1 - 1)) + ss2 / (n2 * Math.max(1, n2 - 1));
                double floor = 1e-14 * allSquares / (n1 * n2);
                return difference == 0 ? 0 : difference / Math.sqrt(Math.max(variance, floor));
            }
        };
        statistic.observe(treatedSum(centred), observedSquares, 0);
        statistic.slack = 1e-9 * Math.abs(statistic.observed);
        return statistic;
    }

    static SplitStatistic logRatio(Design design) {
        double[] second = new double[design.size()];
        double controlShareOfAll = 0;
        double observedSecond = 0;
        int at = 0;
        for (TwoGroups block : design.blocks()) {
            double n = block.treatedCount() + block.controlCount();
            double share = block.controlCount() / n;
            for (double value : block.treated()) {
                second[at++] = share * value;
                observedSecond += share * value;
                controlShareOfAll += (1 - share) * value;
            }
            for (double value : block.control()) {
                second[at++] = share * value;
                controlShareOfAll += (1 - share) * value;
            }
        }
        double whole = controlShareOfAll;
        SplitStatistic statistic = new SplitStatistic(Splits.of(design.blocks(), second)) {
            @Override
            double of(double sum, double picked) {
                return StrictMath.log(picked / (whole - (sum - picked)));
            }
        };
        statistic.observe(design.treatedSum(), observedSecond, 1e-12);
        return statistic;
    }

    private static List<TwoGroups> centred(Design design) {
        return design.blocks().stream()
                .map(block -> {
                    double n = block.treatedCount() + block.controlCount();
                    double mean = (Design.sum(block.treated()) + Design.sum(block.control())) / n;
                    return TwoGroups.of(less(block.treated(), mean), less(block.control(), mean));
                })
                .toList();
    }

    private static double[] less(double[] values, double mean) {
        double[] rest = new double[values.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = values[i] - mean;
        }
        return rest;
    }

    private static double treatedSum(List<TwoGroups> blocks) {
        return blocks.stream().mapToDouble(block -> Design.sum(block.treated())).sum();
    }

    private static double rounding(Design design) {
        double largest = 0;
        for (TwoGroups block : design.blocks()) {
            for (double value : block.treated()) {
                largest = Math.max(largest, Math.abs(value));
            }
            for (double value : block.control()) {
                largest = Math.max(largest, Math.abs(value));
            }
        }
        return ROUNDING * design.size() * Math.ulp(largest);
    }
}
