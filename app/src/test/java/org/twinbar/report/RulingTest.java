package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Question;
import org.twinbar.decision.Subject;
import org.twinbar.decision.Verdict;
import org.twinbar.quantity.Unit;

/** What the report says of an interval is the row of DESIGN.md's table that fits it. */
class RulingTest {

    private static final Subject STRENGTH = Subject.of("strength", Unit.of("MPa"));
    private static final double NONE = 1;
    private static final double WORTH = 1.05;

    /** The rule as DESIGN.md writes it, line by line. */
    private static Verdict table(double low, double high, double worth) {
        if (low >= worth && (worth > NONE || low > NONE)) {
            return Verdict.SUPPORTED;
        }
        if (high < NONE) {
            return Verdict.CONTRADICTED;
        }
        if (NONE <= high && high < worth) {
            return Verdict.TOO_SMALL;
        }
        return NONE < low && low < worth && worth <= high ? Verdict.BETTER_SIZE_OPEN : Verdict.OPEN;
    }

    @Test
    void fitsTheTableOverThePlaneOfIntervals() {
        Question upward =
                Question.of(STRENGTH, Effect.RATIO, Expectation.HIGHER).withWorth(0.05);
        Question anyGain = Question.of(STRENGTH, Effect.RATIO, Expectation.HIGHER);
        Set<Ruling> met = EnumSet.noneOf(Ruling.class);
        for (int i = 0; i <= 60; i++) {
            for (int j = i; j <= 60; j++) {
                double low = 0.9 + i * 0.0051;
                double high = 0.9 + j * 0.0051;
                Ruling ruling = Ruling.of(upward, low, high);
                met.add(ruling);
                assertThat(ruling.alone())
                        .as(low + " to " + high)
                        .isEqualTo(table(low, high, WORTH));
                assertThat(Ruling.of(anyGain, low, high).alone())
                        .as("no worth, " + low + " to " + high)
                        .isEqualTo(table(low, high, NONE));
            }
        }
        assertThat(met)
                .contains(
                        Ruling.BEYOND_WORTH,
                        Ruling.OTHER_SIDE,
                        Ruling.SHORT_OF_WORTH,
                        Ruling.AROUND_WORTH,
                        Ruling.AROUND_BOTH);
    }

    @Test
    void mirrorsForAClaimOfLess() {
        Question less = Question.of(STRENGTH, Effect.RATIO, Expectation.LOWER).withWorth(0.05);
        assertThat(Ruling.of(less, 0.8, 0.94)).isEqualTo(Ruling.BEYOND_WORTH);
        assertThat(Ruling.of(less, 1.01, 1.2)).isEqualTo(Ruling.OTHER_SIDE);
        assertThat(Ruling.of(less, 0.97, 1.2)).isEqualTo(Ruling.SHORT_OF_WORTH);
    }

    @Test
    void readsAClaimOfNoChangeOnBothSides() {
        Question same = Question.same(STRENGTH, Effect.RATIO, 0.05);
        assertThat(Ruling.of(same, 0.96, 1.04)).isEqualTo(Ruling.INSIDE);
        assertThat(Ruling.of(same, 1.06, 1.2)).isEqualTo(Ruling.OUTSIDE);
        assertThat(Ruling.of(same, 0.8, 0.9)).isEqualTo(Ruling.OUTSIDE);
        assertThat(Ruling.of(same, 0.96, 1.2)).isEqualTo(Ruling.ACROSS_EDGE);
    }

    @ParameterizedTest
    @EnumSource(Expectation.class)
    void readsNothingOffAnIntervalWithoutEnds(Expectation expectation) {
        Question question = expectation == Expectation.SAME
                ? Question.same(STRENGTH, Effect.RATIO, 0.05)
                : Question.of(STRENGTH, Effect.RATIO, expectation);
        assertThat(Ruling.of(question, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY))
                .isEqualTo(Ruling.ENDLESS);
    }
}
