package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.Checks;

class ShareReferenceTest {

    private final Checks checks = Checks.of(getClass());

    @Test
    void exactLimitsOfTheHandbook() {
        Estimate estimate = Share.exact(new Count(4, 20), 0.90);
        checks.row("45-low").expects(estimate.low());
        checks.row("45-high").expects(estimate.high());
    }

    @Test
    void exactLimitsOfFewSpecimens() {
        checks.row("46-7of8-low").expects(Share.exact(new Count(7, 8), 0.95).low());
        checks.row("46-7of8-high").expects(Share.exact(new Count(7, 8), 0.95).high());
        checks.row("46-3of8-low").expects(Share.exact(new Count(3, 8), 0.95).low());
        checks.row("46-3of8-high").expects(Share.exact(new Count(3, 8), 0.95).high());
        checks.row("46-0of5-high").expects(Share.exact(new Count(0, 5), 0.95).high());
        checks.row("46-0of10-high").expects(Share.exact(new Count(0, 10), 0.95).high());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "E-zero-3",
                "E-zero-5",
                "E-zero-8",
                "47-10",
                "E-zero-15",
                "E-zero-20",
                "47-29",
                "E-zero-30",
                "47-59"
            })
    void noFailureAtAll(String id) {
        int n = Integer.parseInt(id.substring(id.lastIndexOf('-') + 1));
        checks.row(id).expects(Share.exactUpperLimit(new Count(0, n), 0.95));
        assertThat(Share.exactLowerLimit(new Count(n, n), 0.95))
                .isCloseTo(1 - Share.exactUpperLimit(new Count(0, n), 0.95), within(1e-14));
    }

    @Test
    void fisherOfPublishedTables() {
        checks.row("48-p").expects(fisher(3, 4, 1, 4));
        checks.row("48-one")
                .expects(FisherExact.more(new Count(3, 4), new Count(1, 4)).p());
        checks.row("49-p").expects(fisher(8, 10, 1, 6));
        checks.row("50-five").expects(fisher(5, 5, 0, 5));
        checks.row("50-leak").expects(fisher(5, 8, 1, 8));
        checks.row("E-fisher-4").expects(fisher(4, 4, 0, 4));
        checks.row("E-fisher-3").expects(fisher(3, 3, 0, 3));
    }

    @Test
    void newcombesOwnExample() {
        Estimate estimate = ShareDifference.newcombe(new Count(56, 70), new Count(48, 80), 0.95);
        checks.row("newcombe-low").expects(estimate.low());
        checks.row("newcombe-high").expects(estimate.high());
    }

    /** The tolerance and its reason are in the header of shares.csv. */
    @Test
    void agreesWithR() {
        for (ReferenceTable.Row row : ReferenceTable.read("shares.csv").rows()) {
            Count treated = new Count(row.whole("treated_yes"), row.whole("treated_n"));
            Count control = new Count(row.whole("control_yes"), row.whole("control_n"));
            expectsEnds(row, "exact", Share.exact(treated, 0.95));
            expectsEnds(row, "score", Share.score(treated, 0.95));
            expectsEnds(row, "caffo", ShareDifference.agrestiCaffo(treated, control, 0.95));
            expects(row, "fisher", FisherExact.twoSided(treated, control).p());
            expects(row, "fisher_more", FisherExact.more(treated, control).p());
        }
    }

    private static void expectsEnds(ReferenceTable.Row row, String what, Estimate estimate) {
        expects(row, what + "_low", estimate.low());
        expects(row, what + "_high", estimate.high());
    }

    private static void expects(ReferenceTable.Row row, String column, double ours) {
        assertThat(ours).as("%s of %s", column, row).isCloseTo(row.number(column), within(1e-10));
    }

    private static double fisher(int treatedYes, int treated, int controlYes, int control) {
        return FisherExact.twoSided(new Count(treatedYes, treated), new Count(controlYes, control))
                .p();
    }
}
