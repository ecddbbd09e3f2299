package org.twinbar.decision;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.Checks;
import org.twinbar.quantity.Unit;
import org.twinbar.statistics.Count;
import org.twinbar.statistics.MannWhitney;

/** What would settle a question, against core/src/test/R/settling.R. */
class SettlingReferenceTest {

    private static final Subject DRY = new Subject("leak-free", Unit.ONE, "cups");

    private final Checks checks = Checks.of(getClass());

    @ParameterizedTest
    @CsvSource({
        "share, 0.9, 0.4, HIGHER, 0",
        "share-worth, 0.95, 0.35, HIGHER, 0.2",
        "share-lower, 0.1, 0.5, LOWER, 0",
        "share-same, 0.9, 0.9, SAME, 0.3"
    })
    void agreesOnShares(
            String row, double treated, double control, Expectation expectation, double worth) {
        Question question = expectation == Expectation.SAME
                ? Question.same(DRY, Effect.SHARE, worth)
                : Question.of(DRY, Effect.SHARE, expectation);
        if (expectation != Expectation.SAME && worth > 0) {
            question = question.withWorth(worth);
        }
        SharesProspect prospect = new SharesProspect(question, treated, control);
        Fewest.Reached reached = Fewest.first(
                        prospect::supported, 3, SharesProspect.EVERY_ONE, SharesProspect.MOST)
                .orElseThrow();
        checks.row("settle-" + row + "-n").expects(reached.n());
        checks.row("settle-" + row + "-power").expects(reached.power());
    }

    @ParameterizedTest
    @CsvSource({"2", "3"})
    void agreesOnLevels(int deviations) {
        LevelSettling settling = new LevelSettling(
                new Judge(
                        Question.level(Specimens.STRENGTH, new Level(50, 0.9), Expectation.HIGHER),
                        0.1),
                Sample.of("coated", Specimens.of("coated", Specimens.W_COATED)));
        Fewest.Reached reached = Fewest.growing(
                        n -> settling.normalPower(n, deviations), Prospect.FEWEST)
                .orElseThrow();
        checks.row("settle-level-" + deviations + "-n").expects(reached.n());
        checks.row("settle-level-" + deviations + "-power").expects(reached.power());
    }

    /** Nineteen of twenty cups clear a level that four of five are asked to clear. */
    @Test
    void agreesOnCountedLevels() {
        List<Observation> cups = new java.util.ArrayList<>(
                Collections.nCopies(19, Observation.of("C", "coated", new Observed.YesNo(true))));
        cups.add(Observation.of("C", "coated", new Observed.YesNo(false)));
        Judge judge = new Judge(Question.level(DRY, new Level(1, 0.8), Expectation.HIGHER), 1);
        Sample sample = new Sample("coated", cups);
        Levels.Limit limit = new Levels(judge.question(), 1).of(sample);
        Needed.Specimens needed =
                (Needed.Specimens) new LevelSettling(judge, sample).needed(Verdict.OPEN, limit);
        checks.row("settle-counted-n").expects(needed.perGroup());
        checks.row("settle-counted-power").expects(needed.power());
    }

    @Test
    void agreesOnBlocks() {
        Question question = Question.of(Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER);
        BlocksProspect prospect = new BlocksProspect(
                question, 2, new WithinBlocks.Scatter(1.8 * 1.8, 3, true), "print run");
        Fewest.Reached reached =
                Fewest.growing(prospect::supported, Prospect.FEWEST).orElseThrow();
        checks.row("settle-blocks-n").expects(reached.n());
        checks.row("settle-blocks-power").expects(reached.power());
        BlocksProspect down = new BlocksProspect(
                Question.of(Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.LOWER),
                -2,
                new WithinBlocks.Scatter(1.8 * 1.8, 3, true),
                "print run");
        org.assertj.core.api.Assertions.assertThat(down.supported(5))
                .isEqualTo(prospect.supported(5));
    }

    @Test
    void agreesOnRates() {
        Question question = Question.of(
                new Subject("leak", Unit.of("h"), "cups"), Effect.RATE, Expectation.LOWER);
        List<Observation> cups = new java.util.ArrayList<>(Specimens.of("plain", 2, 5, 5, 9, 14));
        for (int i = 0; i < 3; i++) {
            cups.add(Observation.of("E" + i, "plain", new Observed.AtLeast(24)));
        }
        Sample plain = Sample.of("plain", cups);
        Judge.Judged judged = new Judge.Judged(
                Sample.of("coated", List.of()),
                plain,
                Layout.PLAIN,
                Repeats.NONE,
                Found.open(Effect.RATE, Amount.of(0.25), 0.95, "none", "none"),
                Verdict.OPEN);
        Optional<Prospect> prospect = RatesProspect.of(question, judged, 0.25);
        checks.row("settle-rate-12").expects(prospect.orElseThrow().supported(12));
        checks.row("settle-rate-20").expects(prospect.orElseThrow().supported(20));
    }

    @Test
    void agreesOnTheNormalApproximationOfRanks() {
        checks.row("settle-rank-p")
                .expects(MannWhitney.approximate(
                                new double[] {3, 5, 6, 6, 8, 9, 9, 10, 11, 12},
                                new double[] {1, 2, 2, 3, 5, 5, 6, 7, 9, 9, 4})
                        .p());
    }

    /** COMMANDS.md: 29 dry parts for 90 %, as METHODS.md E has it; 59 for 95 %. */
    @Test
    void agreesOnPartsThatAllClearALevel() {
        Judge judge = new Judge(Question.level(DRY, new Level(1, 0.95), Expectation.HIGHER), 1);
        Sample sample = new Sample(
                "coated",
                Collections.nCopies(5, Observation.of("C", "coated", new Observed.YesNo(true))));
        Needed.Specimens needed = (Needed.Specimens) new LevelSettling(judge, sample)
                .needed(Verdict.OPEN, new Levels(judge.question(), 1).of(sample));
        org.assertj.core.api.Assertions.assertThat(needed.perGroup()).isEqualTo(59);
        org.assertj.core.api.Assertions.assertThat(Shares.count(sample)).isEqualTo(new Count(5, 5));
    }
}
