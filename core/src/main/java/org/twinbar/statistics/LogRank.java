package org.twinbar.statistics;

import java.util.List;

/**
 * The log-rank test: whether the treated had as many events as the control's and their own times
 * together lead to expect.
 *
 * <p>χ² = (ΣO − ΣE)²/ΣV, E = n_T·d/n, V = n_T·n_C·d(n − d)/(n²(n − 1)) at each time of an event.
 * Source: METHODS.md E; N. Mantel, Evaluation of survival data and two new rank order statistics
 * arising in its consideration (1966).
 *
 * @param observed events among the treated
 * @param expected events expected among them
 * @param observedControl events among the control
 * @param expectedControl events expected among those
 * @param test χ² with one degree of freedom and its p; χ² is 0 where no event could have told the
 *     groups apart
 */
public record LogRank(
        int observed,
        double expected,
        int observedControl,
        double expectedControl,
        Significance test) {

    /**
     * The test of two groups.
     *
     * @throws IllegalArgumentException if a group is empty, or a time is known only to lie between
     *     two looks
     */
    public static LogRank of(List<Lifetime> treated, List<Lifetime> control) {
        return of(Stratum.one(treated, control));
    }

    /**
     * The test of two groups in strata: expected events and variances within each, then summed.
     *
     * @throws IllegalArgumentException if a group is empty in all strata, or a time is known only
     *     to lie between two looks
     */
    public static LogRank of(List<Stratum> strata) {
        Stratum.count(strata);
        int observed = 0;
        int all = 0;
        double expected = 0;
        double variance = 0;
        for (Stratum stratum : strata) {
            for (RiskTable.Row row : RiskTable.of(stratum.treated(), stratum.control())) {
                double n = row.allAtRisk();
                double d = row.allEvents();
                observed += row.events();
                all += row.allEvents();
                expected += row.atRisk() * d / n;
                variance += n > 1
                        ? row.atRisk() * row.atRiskControl() * d * (n - d) / (n * n * (n - 1))
                        : 0;
            }
        }
        double excess = observed - expected;
        double statistic = variance > 0 ? excess * excess / variance : 0;
        String method = strata.size() > 1 ? "stratified log-rank" : "log-rank";
        return new LogRank(
                observed,
                expected,
                all - observed,
                all - expected,
                new Significance(
                        statistic, 1, new ChiSquared(1).above(statistic), method + ", two-sided"));
    }
}
