package org.twinbar.statistics.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.groups.FTest;

/**
 * A crossed study of a gauge: every operator reads every part the same number of times.
 *
 * <p>Standard deviations, in the readings' unit: of repeats by one operator, between operators
 * (with the part by operator interaction where it is kept), of both together, between parts, and of
 * all. A destroyed specimen can't be read twice: where "repeats" are neighbours of one batch, their
 * scatter counts as the gauge's.
 *
 * @param repeatability of repeats on one part by one operator
 * @param reproducibility between operators
 * @param gauge both, √(repeatability² + reproducibility²)
 * @param parts between parts
 * @param total √(gauge² + parts²)
 * @param setToZero which variances came out negative and are given as 0, in words
 * @param method how it was calculated, in words
 */
public record GaugeStudy(
        double repeatability,
        double reproducibility,
        double gauge,
        double parts,
        double total,
        List<String> setToZero,
        String method) {

    /**
     * An interaction less surprising than this is taken for repeats. Source: AIAG, MSA, 4th ed.
     * 2010.
     */
    private static final double POOLED_ABOVE_P = 0.25;

    // AIAG, Measurement Systems Analysis, constants 1/d2 and 1/d2*, from 2 on.
    private static final double[] FOR_TRIALS = {0.8862, 0.5908};
    private static final double[] FOR_OPERATORS = {0.7071, 0.5231};
    private static final double[] FOR_PARTS = {
        0.7071, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146
    };

    /** Parts are told apart where their categories' middles lie 97 % intervals apart: √2. */
    private static final double CATEGORIES = 1.41;

    public GaugeStudy {
        setToZero = List.copyOf(setToZero);
    }

    /**
     * By analysis of variance: from the mean squares of parts, operators, their interaction and
     * repeats.
     *
     * <p>σ²_repeat = MS_E, σ²_interaction = (MS_PO − MS_E)/r, σ²_operators = (MS_O − MS_PO)/(pr),
     * σ²_parts = (MS_P − MS_PO)/(or); where the interaction's p is above 0.25, its squares and
     * degrees of freedom join those of repeats. A variance below zero is given as 0 and named.
     * Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, ch. III B.
     *
     * @param readings by operator, part and trial
     * @throws IllegalArgumentException unless there are 2 operators, 2 parts and 2 trials at least,
     *     everywhere alike
     */
    public static GaugeStudy crossed(double[][][] readings) {
        Sizes sizes = Sizes.of(readings);
        double repeats = 0;
        double[] ofOperators = new double[sizes.operators()];
        double[] ofParts = new double[sizes.parts()];
        double[][] ofCells = new double[sizes.operators()][sizes.parts()];
        for (int o = 0; o < sizes.operators(); o++) {
            for (int p = 0; p < sizes.parts(); p++) {
                Summary cell = Summary.of(readings[o][p]);
                repeats += cell.variance() * (sizes.trials() - 1);
                ofCells[o][p] = cell.mean();
                ofOperators[o] += cell.mean() / sizes.parts();
                ofParts[p] += cell.mean() / sizes.operators();
            }
        }
        double grand = Summary.of(ofParts).mean();
        double interaction = 0;
        for (int o = 0; o < sizes.operators(); o++) {
            for (int p = 0; p < sizes.parts(); p++) {
                double rest = ofCells[o][p] - ofOperators[o] - ofParts[p] + grand;
                interaction += sizes.trials() * rest * rest;
            }
        }
        double perPart = (double) sizes.operators() * sizes.trials();
        double perOperator = (double) sizes.parts() * sizes.trials();
        double partSquare = perPart * Summary.of(ofParts).variance();
        double operatorSquare = perOperator * Summary.of(ofOperators).variance();
        double interactionDf = (sizes.operators() - 1.0) * (sizes.parts() - 1);
        double repeatDf = (double) sizes.operators() * sizes.parts() * (sizes.trials() - 1);
        boolean pooled = FTest.of(interaction, interactionDf, repeats, repeatDf, "interaction")
                        .p()
                > POOLED_ABOVE_P;
        double repeatSquare =
                pooled ? (repeats + interaction) / (repeatDf + interactionDf) : repeats / repeatDf;
        double between = pooled ? repeatSquare : interaction / interactionDf;
        Zeroed zeroed = new Zeroed();
        double operators = zeroed.variance("operators", (operatorSquare - between) / perOperator);
        double both = pooled
                ? 0
                : zeroed.variance("operators by parts", (between - repeatSquare) / sizes.trials());
        double parts = zeroed.variance("parts", (partSquare - between) / perPart);
        return of(
                Math.sqrt(repeatSquare),
                Math.sqrt(operators + both),
                Math.sqrt(parts),
                zeroed.names,
                pooled
                        ? "crossed study, analysis of variance, interaction pooled with repeats"
                        : "crossed study, analysis of variance, interaction kept");
    }

    /**
     * By ranges, as it is done on paper: 2 or 3 operators, 2 to 10 parts, 2 or 3 trials.
     *
     * <p>Repeatability R̄·K₁; reproducibility √((X_diff·K₂)² − repeatability²/(pr)), 0 and named
     * where that is negative; parts R_p·K₃. Source: AIAG, Measurement Systems Analysis, 4th ed.
     * 2010, ch. III B.
     *
     * @param readings by operator, part and trial
     * @throws IllegalArgumentException if there are other numbers of operators, parts or trials
     */
    public static GaugeStudy byRanges(double[][][] readings) {
        Sizes sizes = Sizes.of(readings);
        double k1 = constant(FOR_TRIALS, sizes.trials(), "trials");
        double k2 = constant(FOR_OPERATORS, sizes.operators(), "operators");
        double k3 = constant(FOR_PARTS, sizes.parts(), "parts");
        double meanRange = 0;
        double[] ofOperators = new double[sizes.operators()];
        double[] ofParts = new double[sizes.parts()];
        for (int o = 0; o < sizes.operators(); o++) {
            for (int p = 0; p < sizes.parts(); p++) {
                Summary cell = Summary.of(readings[o][p]);
                meanRange += (cell.max() - cell.min()) / (sizes.operators() * sizes.parts());
                ofOperators[o] += cell.mean() / sizes.parts();
                ofParts[p] += cell.mean() / sizes.operators();
            }
        }
        double repeatability = meanRange * k1;
        double difference = range(ofOperators) * k2;
        Zeroed zeroed = new Zeroed();
        double operators = zeroed.variance(
                "operators",
                difference * difference
                        - repeatability * repeatability / (sizes.parts() * sizes.trials()));
        return of(
                repeatability,
                Math.sqrt(operators),
                range(ofParts) * k3,
                zeroed.names,
                "crossed study, ranges");
    }

    /**
     * The gauge's share of all scatter, as a ratio of standard deviations; 0 where nothing varies.
     */
    public double share() {
        return total > 0 ? gauge / total : 0;
    }

    /**
     * How many classes of parts the gauge tells apart, 1.41·parts/gauge cut to a whole number; ∞
     * without scatter.
     */
    public double categories() {
        return gauge > 0 ? Math.floor(CATEGORIES * parts / gauge) : Double.POSITIVE_INFINITY;
    }

    private static GaugeStudy of(
            double repeatability,
            double operators,
            double parts,
            List<String> setToZero,
            String method) {
        double gauge = Math.sqrt(repeatability * repeatability + operators * operators);
        return new GaugeStudy(
                repeatability,
                operators,
                gauge,
                parts,
                Math.sqrt(gauge * gauge + parts * parts),
                setToZero,
                method);
    }

    private static double range(double[] values) {
        Summary summary = Summary.of(values);
        return summary.max() - summary.min();
    }

    private static double constant(double[] table, int number, String name) {
        if (number - 2 >= table.length) {
            throw new IllegalArgumentException("Ranges are for 2 to " + (table.length + 1) + " "
                    + name + ", not " + number + "; use the analysis of variance.");
        }
        return table[number - 2];
    }

    /** Keeps the names of variances that came out negative. */
    private static final class Zeroed {
        private final List<String> names = new ArrayList<>();

        double variance(String name, double variance) {
            if (variance < 0) {
                names.add(name);
                return 0;
            }
            return variance;
        }
    }

    private record Sizes(int operators, int parts, int trials) {

        static Sizes of(double[][][] readings) {
            Arguments.requireAtLeast(readings.length, 2, "number of operators");
            int parts = Arguments.requireAtLeast(readings[0].length, 2, "number of parts");
            Arguments.requireAtLeast(readings[0][0].length, 2, "number of trials");
            int trials = readings[0][0].length;
            for (double[][] ofOperator : readings) {
                boolean alike = ofOperator.length == parts
                        && Arrays.stream(ofOperator).allMatch(cell -> cell.length == trials);
                if (!alike) {
                    throw new IllegalArgumentException(
                            "In a crossed study every operator reads all " + parts + " parts "
                                    + trials + " times.");
                }
            }
            return new Sizes(readings.length, parts, trials);
        }
    }
}
