package org.twinbar.decision;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.quantity.Unit;

/** Chances of "supported" for rates and ranks, against core/src/test/R/orders.R. */
class AimsReferenceTest {

    private static final Subject LEAK = new Subject("time to leak", Unit.of("h"), "cups");
    private static final Subject RATING = new Subject("rating", Unit.ONE, "parts");

    private final Checks checks = Checks.of(getClass());

    @Test
    void agreesOnRates() {
        Question slower = Question.of(LEAK, Effect.RATE, Expectation.LOWER);
        checks.row("aim-rate-4").expects(Aims.rate(slower, 0.2, 1).power(4));
        checks.row("aim-rate-6").expects(Aims.rate(slower, 0.2, 1).power(6));
        checks.row("aim-rate-worth-6")
                .expects(Aims.rate(slower.withWorth(0.3), 0.1, 1).power(6));
        checks.row("aim-rate-12").expects(Aims.rate(slower, 0.3, 1).power(12));
        checks.row("aim-rate-seen-15").expects(Aims.rate(slower, 0.25, 0.6).power(15));
    }

    @Test
    void agreesOnRanks() {
        Question higher = Question.of(RATING, Effect.RANK, Expectation.HIGHER);
        checks.row("aim-rank-4").expects(Aims.rank(higher, 0.9).power(4));
        checks.row("aim-rank-6").expects(Aims.rank(higher, 0.9).power(6));
        checks.row("aim-rank-worth-6")
                .expects(Aims.rank(higher.withWorth(0.1), 0.95).power(6));
        checks.row("aim-rank-12").expects(Aims.rank(higher, 0.8).power(12));
    }

    /** The same rows that settle what an open question needs; core/src/test/R/settling.R. */
    @Test
    void agreesOnTwoShares() {
        Subject dry = new Subject("leak-free", Unit.ONE, "cups");
        Question higher = Question.of(dry, Effect.SHARE, Expectation.HIGHER);
        checks.row("settle-share-n")
                .expects(Aims.shares(higher, 0.4, 0.5).fewest(0.8).orElseThrow());
        checks.row("settle-share-worth-n")
                .expects(Aims.shares(higher.withWorth(0.2), 0.35, 0.6)
                        .fewest(0.8)
                        .orElseThrow());
        checks.row("settle-share-same-n")
                .expects(Aims.shares(Question.same(dry, Effect.SHARE, 0.3), 0.9, 0)
                        .fewest(0.8)
                        .orElseThrow());
    }
}
