package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.twinbar.quantity.Unit;

class QuestionTest {

    private static final Question STRONGER =
            Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER);
    private static final Question WEAKER =
            Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.LOWER);

    @Test
    void putsSizesOnTheEffectsScale() {
        assertThat(STRONGER.withWorth(0.05).worth()).isEqualTo(1.05);
        assertThat(WEAKER.withWorth(0.05).worth()).isEqualTo(0.95);
        assertThat(WEAKER.withClaimed(0.1).claimed()).hasValue(0.9);
        Question warmer = Question.of(
                new Subject("onset", Unit.of("°C"), "bars"), Effect.DIFFERENCE, Expectation.LOWER);
        assertThat(warmer.withWorth(3).worth()).isEqualTo(-3);
    }

    @Test
    void takesTheClaimedSizeForWorthWhereNoneIsGivenAndElseNone() {
        assertThat(STRONGER.withClaimed(0.1).worth()).isEqualTo(1.1);
        assertThat(STRONGER.withClaimed(0.1).withWorth(0.05).worth()).isEqualTo(1.05);
        assertThat(STRONGER.worth()).isEqualTo(1);
    }

    @Test
    void refusesInOneSentence() {
        refuses(() -> STRONGER.withWorth(-0.05), "must be a size above zero");
        refuses(() -> STRONGER.withWorth(Double.NaN), "must be a size above zero");
        refuses(() -> WEAKER.withWorth(1), "no ratio changes by more");
        refuses(
                () -> Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.SAME),
                "needs the smallest change that would matter");
        refuses(
                () -> Question.same(Specimens.STRENGTH, Effect.RATIO, 0.05).withClaimed(0.1),
                "has no claimed size");
        refuses(
                () -> Question.of(
                        Subject.of("onset temperature", Unit.of("°C")),
                        Effect.RATIO,
                        Expectation.HIGHER),
                "has no true zero");
        refuses(
                () -> Question.of(Specimens.STRENGTH, Effect.LEVEL, Expectation.HIGHER),
                "needs the level and the share");
        refuses(() -> new Level(60, 1), "lies between 0 and 1");
        refuses(() -> STRONGER.withErrorRate(0), "must lie between 0 and 1");
        refuses(() -> STRONGER.withResolution(-1), "zero or more");
        refuses(() -> IntervalKind.parse("wald"), "none of fieller, welch, log, bca, permutation");
    }

    private static void refuses(ThrowingCallable asking, String part) {
        assertThatThrownBy(asking)
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining(part)
                .satisfies(refusal ->
                        assertThat(refusal.getMessage()).doesNotContain("\n").endsWith("."));
    }
}
