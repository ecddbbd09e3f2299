package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.quantity.Unit;

class LevelComparingTest {

    private static final Subject ONSET = new Subject("onset temperature", Unit.of("°C"), "bars");
    private static final Subject DRY = new Subject("time to leak", Unit.of("h"), "cups");

    private static Question withstands(double level, double share) {
        return Question.level(ONSET, new Level(level, share), Expectation.HIGHER);
    }

    private static Comparison compare(Question question, double... values) {
        return Comparing.level(question, Specimens.of("coated", values), "coated");
    }

    /** x̄ 62, s 1: the lower limit is 62 − 3.407 (METHODS.md I.7, n 5, 0.90/0.95). */
    private static final double[] FIVE = {
        62 - Math.sqrt(1.5), 62 - Math.sqrt(0.5), 62, 62 + Math.sqrt(0.5), 62 + Math.sqrt(1.5)
    };

    @Test
    void agreesWithTheHandbooksFactor() {
        // Values about zero have no Weibull fit, so that the normal limit stands alone.
        double[] aboutZero = FIVE.clone();
        for (int i = 0; i < aboutZero.length; i++) {
            aboutZero[i] -= 62;
        }
        Comparison comparison = compare(withstands(60, 0.9), aboutZero);
        Checks.of(ComparingReferenceTest.class)
                .row("tolerance-5")
                .expects(-comparison.found().low().orElse(0));
    }

    @Test
    void takesTheWorseOfNormalAndWeibull() {
        Found found = compare(withstands(60, 0.9), FIVE).found();
        assertThat(found.low().orElse(0)).isLessThanOrEqualTo(62 - 3.407);
        assertThat(found.method()).startsWith("the worse of normal and Weibull");
        assertThat(compare(withstands(60, 0.9), FIVE).found()).isEqualTo(found);
    }

    @Test
    void readsTheLevelOffItsLimits() {
        assertThat(compare(withstands(55, 0.9), FIVE).verdict()).isEqualTo(Verdict.SUPPORTED);
        assertThat(compare(withstands(60, 0.9), FIVE).verdict()).isEqualTo(Verdict.OPEN);
        assertThat(compare(withstands(63, 0.9), FIVE).verdict()).isEqualTo(Verdict.CONTRADICTED);
        Question below = Question.level(ONSET, new Level(68, 0.9), Expectation.LOWER);
        assertThat(compare(below, FIVE).verdict()).isEqualTo(Verdict.SUPPORTED);
        assertThat(compare(below, 80, 81, 79, 80.5, 80.2).verdict())
                .isEqualTo(Verdict.CONTRADICTED);
    }

    @Test
    void takesOffWhatAllSpecimensShare() {
        List<Observation> moved = Specimens.of("coated", FIVE).stream()
                .map(one -> one.withMoves(Map.of("thermometer", 0.5)))
                .toList();
        double with = Comparing.level(withstands(58, 0.9), moved, "coated")
                .found()
                .low()
                .orElse(0);
        double without = compare(withstands(58, 0.9), FIVE).found().low().orElse(0);
        assertThat(without - with).isBetween(0.82, 0.83);
    }

    @Test
    void countsSharesWhereSomeOnlyHeldSoFar() {
        List<Observation> cups = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            cups.add(Observation.of("C" + i, "coated", new Observed.AtLeast(24)));
        }
        Question question = Question.level(DRY, new Level(24, 0.9), Expectation.HIGHER);
        Comparison comparison = Comparing.level(question, cups, "coated");
        assertThat(comparison.verdict()).isEqualTo(Verdict.OPEN);
        assertThat(comparison.headline())
                .isEqualTo(
                        "Time to leak: 5 of 5 cups cleared 24\u2009h; with 95\u2009% confidence at least"
                                + " 55\u2009% of such cups do. Whether 90\u2009% of such cups clear 24\u2009h is open.");
        // METHODS.md E: 29 dry parts for 90 % with 95 % confidence.
        assertThat(((Needed.Specimens) comparison.needed()).perGroup()).isEqualTo(29);
        for (int i = 5; i < 29; i++) {
            cups.add(Observation.of("C" + i, "coated", new Observed.Number(30 + i)));
        }
        assertThat(Comparing.level(question, cups, "coated").verdict())
                .isEqualTo(Verdict.SUPPORTED);
    }

    @Test
    void opensWithOneSpecimenOrNone() {
        assertThat(compare(withstands(50, 0.9), 70).verdict()).isEqualTo(Verdict.OPEN);
        Comparison nothing = Comparing.level(
                withstands(50, 0.9),
                List.of(Observation.of("C1", "coated", new Observed.Unknown("the camera stopped"))),
                "coated");
        assertThat(nothing.verdict()).isEqualTo(Verdict.OPEN);
    }

    @Test
    void needsALevel() {
        Question ratio = Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER);
        assertThatThrownBy(() -> compare(ratio, FIVE)).isInstanceOf(QuestionException.class);
        assertThatThrownBy(() -> Comparing.of(
                        withstands(60, 0.9), Specimens.of("a", FIVE, "b", FIVE), "a", "b"))
                .isInstanceOf(QuestionException.class);
    }
}
