package org.twinbar.statistics;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Cox's partial likelihood of two groups, as a function of the logarithm of their hazard ratio. */
final class PartialLikelihood {

    static final String METHOD = "score of the partial likelihood, ties by Efron";

    /** e³⁰ is a ratio of 10¹³: ends beyond it are none. */
    private static final double LARGEST = 30;

    private static final double STEP = 0.05;

    private final List<RiskTable.Row> rows;
    private final String method;

    private PartialLikelihood(List<RiskTable.Row> rows, String method) {
        this.rows = rows;
        this.method = method;
    }

    /**
     * Only moments at which both groups of a stratum were at risk tell them apart; the moments of
     * all strata count together.
     */
    static PartialLikelihood of(List<Stratum> strata) {
        return new PartialLikelihood(
                strata.stream()
                        .flatMap(each -> RiskTable.of(each.treated(), each.control()).stream())
                        .filter(row -> row.atRisk() > 0 && row.atRiskControl() > 0)
                        .toList(),
                strata.size() > 1 ? METHOD + ", stratified" : METHOD);
    }

    HazardRatio invert(double level, int n) {
        if (!(information(0) > 0)) {
            return new HazardRatio.Unknown(
                    "At no moment did it happen to a specimen while others of both groups were "
                            + "at risk, so that nothing is known of the hazard ratio.");
        }
        int events = rows.stream().mapToInt(RiskTable.Row::events).sum();
        int control = rows.stream().mapToInt(RiskTable.Row::eventsControl).sum();
        double z = Normal.STANDARD.quantile((1 + level) / 2);
        double low = events == 0 ? Double.NEGATIVE_INFINITY : lowEnd(z);
        double high = control == 0 ? Double.POSITIVE_INFINITY : highEnd(z);
        double middle = events == 0 || control == 0
                ? (events == 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY)
                : Roots.increasing(beta -> -score(beta), 0, 0.5);
        Estimate estimate = new Estimate(
                        middle, low, high, level, Double.POSITIVE_INFINITY, n, method)
                .through(StrictMath::exp);
        double statistic = standardized(0) * standardized(0);
        HazardRatio.Ends ends = events == 0
                ? HazardRatio.Ends.UPPER
                : control == 0 ? HazardRatio.Ends.LOWER : HazardRatio.Ends.BOTH;
        return new HazardRatio.Known(
                estimate,
                ends,
                new Significance(
                        statistic, 1, new ChiSquared(1).above(statistic), method + ", two-sided"));
    }

    /** Whether every ratio from this one upwards lies outside the interval of this level. */
    boolean excludesFrom(double ratio, double level) {
        double z = Normal.STANDARD.quantile((1 + level) / 2);
        return information(0) > 0 && standardized(StrictMath.log(ratio)) < -z;
    }

    /** The outermost crossing, should the standardised score cross more than once. */
    private double lowEnd(double z) {
        DoubleUnaryOperator excess = beta -> standardized(beta) - z;
        for (double beta = -LARGEST; beta < LARGEST; beta += STEP) {
            if (excess.applyAsDouble(beta + STEP) <= 0) {
                return excess.applyAsDouble(beta) <= 0
                        ? Double.NEGATIVE_INFINITY
                        : Roots.between(excess, beta, beta + STEP);
            }
        }
        return LARGEST;
    }

    private double highEnd(double z) {
        DoubleUnaryOperator excess = beta -> standardized(beta) + z;
        for (double beta = LARGEST; beta > -LARGEST; beta -= STEP) {
            if (excess.applyAsDouble(beta - STEP) >= 0) {
                return excess.applyAsDouble(beta) >= 0
                        ? Double.POSITIVE_INFINITY
                        : Roots.between(excess, beta - STEP, beta);
            }
        }
        return -LARGEST;
    }

    private double standardized(double beta) {
        return score(beta) / Math.sqrt(information(beta));
    }

    /** U(β): events among the treated less those expected. */
    double score(double beta) {
        double ratio = StrictMath.exp(beta);
        Sum sum = new Sum();
        for (RiskTable.Row row : rows) {
            sum.add(row.events());
            for (int tie = 0; tie < row.allEvents(); tie++) {
                sum.add(-share(row, tie, ratio));
            }
        }
        return sum.value();
    }

    /** I(β): the variance of the score. */
    double information(double beta) {
        double ratio = StrictMath.exp(beta);
        Sum sum = new Sum();
        for (RiskTable.Row row : rows) {
            for (int tie = 0; tie < row.allEvents(); tie++) {
                sum.add(share(row, tie, ratio) * otherShare(row, tie, ratio));
            }
        }
        return sum.value();
    }

    private static double share(RiskTable.Row row, int tie, double ratio) {
        double treated = treatedLeft(row, tie) * ratio;
        return treated / (treated + controlLeft(row, tie));
    }

    /** One less the share, without the difference of nearly equal numbers. */
    private static double otherShare(RiskTable.Row row, int tie, double ratio) {
        double control = controlLeft(row, tie) / ratio;
        return control / (control + treatedLeft(row, tie));
    }

    /**
     * Efron: of those that fell at one moment, each has left the risk set in the mean by its turn.
     */
    private static double treatedLeft(RiskTable.Row row, int tie) {
        return row.atRisk() - (double) tie / row.allEvents() * row.events();
    }

    private static double controlLeft(RiskTable.Row row, int tie) {
        return row.atRiskControl() - (double) tie / row.allEvents() * row.eventsControl();
    }
}
