package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks the plane of (low, high) against the table of DESIGN.md, "The verdict rule". */
class VerdictRuleTest {

    /** A row of the table, as DESIGN.md words it. */
    private record Row(Verdict verdict, BiPredicate<Double, Double> fits) {}

    private static final double[] ENDS = {
        Double.NEGATIVE_INFINITY,
        0.5,
        0.94,
        0.95,
        0.96,
        0.999,
        1,
        1.001,
        1.04,
        1.05,
        1.06,
        1.5,
        Double.POSITIVE_INFINITY
    };

    static Stream<Question> questions() {
        return Stream.of(
                question(Expectation.HIGHER),
                question(Expectation.HIGHER).withWorth(0.05),
                question(Expectation.HIGHER).withClaimed(0.05),
                question(Expectation.LOWER),
                question(Expectation.LOWER).withWorth(0.05),
                Question.same(Specimens.STRENGTH, Effect.RATIO, 0.05));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void fitsExactlyOneRowEverywhere(Question question) {
        for (double low : ENDS) {
            for (double high : ENDS) {
                if (low <= high) {
                    List<Verdict> fitting = new ArrayList<>();
                    for (Row row : rows(question)) {
                        if (row.fits().test(low, high)) {
                            fitting.add(row.verdict());
                        }
                    }
                    List<Verdict> expected = fitting.isEmpty() ? List.of(Verdict.OPEN) : fitting;
                    assertThat(expected).as("%s to %s", low, high).hasSize(1);
                    assertThat(VerdictRule.read(low, high, question))
                            .as("%s to %s", low, high)
                            .isEqualTo(expected.get(0));
                }
            }
        }
    }

    /** The rows but "open", which is everything else. */
    private static List<Row> rows(Question question) {
        double none = question.none();
        double worth = question.worth();
        return switch (question.expectation()) {
            case HIGHER ->
                List.of(
                        new Row(
                                Verdict.SUPPORTED,
                                (low, high) -> worth == none ? low > none : low >= worth),
                        new Row(Verdict.CONTRADICTED, (low, high) -> high < none),
                        new Row(Verdict.TOO_SMALL, (low, high) -> none <= high && high < worth),
                        new Row(
                                Verdict.BETTER_SIZE_OPEN,
                                (low, high) -> none < low && low < worth && worth <= high));
            case LOWER ->
                List.of(
                        new Row(
                                Verdict.SUPPORTED,
                                (low, high) -> worth == none ? high < none : high <= worth),
                        new Row(Verdict.CONTRADICTED, (low, high) -> low > none),
                        new Row(Verdict.TOO_SMALL, (low, high) -> none >= low && low > worth),
                        new Row(
                                Verdict.BETTER_SIZE_OPEN,
                                (low, high) -> none > high && high > worth && worth >= low));
            case SAME ->
                List.of(
                        new Row(Verdict.SUPPORTED, (low, high) -> low >= 0.95 && high <= 1.05),
                        new Row(Verdict.CONTRADICTED, (low, high) -> high < 0.95 || low > 1.05));
        };
    }

    @ParameterizedTest
    @CsvSource({
        "61, Infinity, supported",
        "60, 70, supported",
        "59, 70, open",
        "-Infinity, Infinity, open",
        "50, 60, open",
        "50, 59.9, contradicted",
        "-Infinity, 59.9, contradicted"
    })
    void holdsALevelAgainstItself(double low, double high, String verdict) {
        assertThat(VerdictRule.level(low, high, 60).word()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({
        "1.1, 1.2, reached",
        "1.11, 1.2, reached",
        "1.05, 1.2, open",
        "1.05, 1.1, open",
        "1.05, 1.09, not reached"
    })
    void saysWhetherTheClaimedSizeIsReached(double low, double high, String reached) {
        Question question = question(Expectation.HIGHER).withWorth(0.05).withClaimed(0.1);
        assertThat(VerdictRule.reach(low, high, question).word()).isEqualTo(reached);
    }

    @Test
    void refusesAnIntervalThatRunsDownwardsOrIsNoNumber() {
        Question question = question(Expectation.HIGHER);
        assertThatThrownBy(() -> VerdictRule.read(2, 1, question))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerdictRule.read(Double.NaN, 1, question))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void takesTheOneThatSaysLessOfTwoVerdicts() {
        assertThat(Verdict.SUPPORTED.weakerOf(Verdict.BETTER_SIZE_OPEN))
                .isEqualTo(Verdict.BETTER_SIZE_OPEN);
        assertThat(Verdict.OPEN.weakerOf(Verdict.SUPPORTED)).isEqualTo(Verdict.OPEN);
        assertThat(Verdict.CONTRADICTED.weakerOf(Verdict.TOO_SMALL)).isEqualTo(Verdict.TOO_SMALL);
        assertThat(Verdict.SUPPORTED.weakerOf(Verdict.CONTRADICTED)).isEqualTo(Verdict.OPEN);
        for (Verdict one : Verdict.values()) {
            assertThat(one.weakerOf(one)).isEqualTo(one);
            for (Verdict other : Verdict.values()) {
                assertThat(one.weakerOf(other)).isEqualTo(other.weakerOf(one));
            }
        }
    }

    private static Question question(Expectation expectation) {
        return Question.of(Specimens.STRENGTH, Effect.RATIO, expectation);
    }
}
