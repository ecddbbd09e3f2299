package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.finding.Finding;

/** Several treated groups against one control. */
class SeveralTest {

    private static final Question STRONGER = Question.of(
                    Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER)
            .withWorth(0.065)
            .withResolution(0);

    private static final List<String> TREATED = List.of("waxed", "coated", "baked");

    private static List<Observation> fittings() {
        List<Observation> all = new ArrayList<>(Specimens.of("plain", Specimens.W_PLAIN));
        all.addAll(Specimens.of("waxed", 42.9, 41.1, 44.2, 43.0, 42.0));
        all.addAll(Specimens.of("coated", Specimens.W_COATED));
        all.addAll(Specimens.of("baked", 44.9, 47.2, 46.0, 45.2, 48.8));
        return all;
    }

    @Test
    void oneTreatmentHasNoFellows() {
        List<Comparison> one =
                Several.of(STRONGER, fittings(), "plain", List.of("coated", "coated"));
        assertThat(one).hasSize(1);
        assertThat(one.get(0)).isEqualTo(Comparing.of(STRONGER, fittings(), "plain", "coated"));
    }

    @Test
    void saysWhatTheBestOfSeveralIsWorth() {
        List<Comparison> all = Several.of(STRONGER, fittings(), "plain", TREATED);
        assertThat(all).extracting(it -> it.treated().name()).containsExactlyElementsOf(TREATED);
        Comparison coated = all.get(1);
        assertThat(coated.verdict()).isEqualTo(Verdict.SUPPORTED);
        assertThat(last(coated).code()).isEqualTo("best-of-several");
        assertThat(last(coated).text())
                .startsWith("coated did best of 3 treatments held against plain")
                .endsWith(
                        "its interval is 6.0 to 15.9\u2009% and the verdict would be \"better, size"
                                + " open\".");
        assertThat(coated.reasons().get(coated.reasons().size() - 1))
                .isEqualTo("3 treatments were held against the same plain: judged so that all of"
                        + " them hold together, the verdict would be \"better, size open\""
                        + " (6.0 to 15.9\u2009%).");
        assertThat(coated.standing().falling())
                .contains(new Standing.View(
                        "judged together with all 3 treatments", Verdict.BETTER_SIZE_OPEN));
        assertThat(last(all.get(0)).code()).isEqualTo("one-of-several");
        assertThat(last(all.get(0)).text()).endsWith("and the verdict stays.");
        assertThat(all.get(0).reasons()).noneMatch(it -> it.contains("treatments"));
    }

    @Test
    void isBestAtNothingWhereNothingWasGained() {
        Question weaker = Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.LOWER);
        assertThat(Several.of(weaker, fittings(), "plain", TREATED))
                .allMatch(it -> last(it).code().equals("one-of-several"));
        Question same = Question.same(Specimens.STRENGTH, Effect.RATIO, 0.2);
        assertThat(Several.of(same, fittings(), "plain", TREATED))
                .allMatch(it -> last(it).code().equals("one-of-several"));
    }

    @Test
    void holdsEveryPairOnce() {
        List<Family.Pair> pairs = family(STRONGER, fittings()).pairs();
        assertThat(pairs)
                .extracting(it -> it.one() + " " + it.other())
                .containsExactly(
                        "waxed plain",
                        "coated plain",
                        "coated waxed",
                        "baked plain",
                        "baked waxed",
                        "baked coated");
        assertThat(pairs.get(0).found().method())
                .isEqualTo("Fieller, unequal spread, as wide as 6 pairs together need (Tukey)");
    }

    @Test
    void sharesTheErrorRateWhereNoMeansAreCompared() {
        List<Observation> cups = new ArrayList<>();
        List<String> groups = List.of("plain", "coated", "dipped");
        for (String group : groups) {
            for (int i = 0; i < 8; i++) {
                cups.add(Observation.of(
                        group + i,
                        group,
                        new Observed.YesNo(i >= (group.equals("plain") ? 6 : 1))));
            }
        }
        Question dry = Question.of(
                new Subject("dry", org.twinbar.quantity.Unit.ONE, "cups"),
                Effect.SHARE,
                Expectation.HIGHER);
        Family family = family(dry, cups, List.of("coated", "dipped"));
        Found alone =
                Comparing.of(dry.withErrorRate(0.025), cups, "plain", "coated").found();
        assertThat(family.of("coated").found().low()).isEqualTo(alone.low());
        assertThat(family.of("coated").found().level()).isEqualTo(0.95);
        assertThat(family.of("coated").found().method()).endsWith("together need (Bonferroni)");
        assertThatThrownBy(() -> family.of("waxed")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void sharesTheErrorRateWithinPrintRuns() {
        List<Observation> made = new ArrayList<>();
        for (Observation one : fittings()) {
            int number = Integer.parseInt(one.specimen().substring(1));
            made.add(one.inBlock(new Block("print run", "R" + number % 3)));
        }
        Found held = family(STRONGER, made).of("coated").found();
        assertThat(held.method()).contains("REML").endsWith("(Bonferroni)");
        Found alone = Comparing.of(STRONGER, made, "plain", "coated").found();
        assertThat(held.highest() - held.lowest()).isGreaterThan(alone.highest() - alone.lowest());
    }

    @ParameterizedTest
    @EnumSource(
            value = Effect.class,
            names = {"RATIO", "DIFFERENCE"})
    void takesEqualValuesWithoutAWord(Effect effect) {
        List<Observation> equal = new ArrayList<>();
        for (String group : List.of("plain", "waxed", "coated")) {
            equal.addAll(Specimens.of(group, 5, 5, 5));
        }
        Question question = Question.of(Specimens.STRENGTH, effect, Expectation.HIGHER);
        assertThat(Several.of(question, equal, "plain", List.of("waxed", "coated")))
                .allMatch(it -> it.verdict() == Verdict.OPEN);
        assertThat(Several.of(
                        question.withResolution(0), equal, "plain", List.of("waxed", "coated")))
                .hasSize(2);
    }

    static LongStream seeds() {
        return LongStream.range(1, 25);
    }

    private static List<Observation> drawn(long seed, double scale) {
        Random random = new Random(seed);
        List<Observation> all = new ArrayList<>();
        for (String group : List.of("plain", "waxed", "coated", "baked")) {
            int n = 3 + random.nextInt(5);
            double middle = 40 + 10 * random.nextDouble();
            double spread = 1 + 4 * random.nextDouble();
            all.addAll(Specimens.of(
                    group,
                    random.doubles(n).map(x -> scale * (middle + spread * x)).toArray()));
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void fellowsNeverNarrowAnInterval(long seed) {
        List<Observation> specimens = drawn(seed, 1);
        Family family = family(STRONGER, specimens);
        for (String treated : TREATED) {
            Found alone = Comparing.of(STRONGER, specimens, "plain", treated).found();
            Found held = family.of(treated).found();
            Found pair = family.pairs().stream()
                    .filter(it -> it.one().equals(treated) && it.other().equals("plain"))
                    .findFirst()
                    .orElseThrow()
                    .found();
            assertThat(held.lowest()).isLessThan(alone.lowest());
            assertThat(held.highest()).isGreaterThan(alone.highest());
            // All pairs ask more than the pairs with the control among them.
            assertThat(pair.lowest()).isLessThan(held.lowest());
            assertThat(pair.highest()).isGreaterThan(held.highest());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void unitsAndRowsAreNothingToAFamily(long seed) {
        Family family = family(STRONGER, drawn(seed, 1));
        Family scaled = family(STRONGER, drawn(seed, 145.0377));
        List<Observation> shuffled = new ArrayList<>(drawn(seed, 1));
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(family(STRONGER, shuffled)).isEqualTo(family);
        for (String treated : TREATED) {
            assertThat(scaled.of(treated).found().lowest())
                    .isCloseTo(family.of(treated).found().lowest(), within(1e-9));
            assertThat(scaled.of(treated).verdict())
                    .isEqualTo(family.of(treated).verdict());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void addingAConstantLeavesDifferencesOfAFamily(long seed) {
        Question difference = Question.of(Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER)
                .withResolution(0);
        List<Observation> moved = drawn(seed, 1).stream()
                .map(one -> one.with(
                        new Observed.Number(((Observed.Number) one.observed()).value() + 273.15)))
                .toList();
        Family family = family(difference, drawn(seed, 1));
        Family other = family(difference, moved);
        for (int i = 0; i < family.pairs().size(); i++) {
            assertThat(other.pairs().get(i).found().lowest())
                    .isCloseTo(family.pairs().get(i).found().lowest(), within(1e-8));
        }
    }

    private static Family family(Question question, List<Observation> specimens) {
        return family(question, specimens, TREATED);
    }

    private static Family family(
            Question question, List<Observation> specimens, List<String> treated) {
        return Several.of(question, specimens, "plain", treated)
                .get(0)
                .context()
                .family()
                .orElseThrow();
    }

    private static Finding last(Comparison comparison) {
        return comparison.findings().get(comparison.findings().size() - 1);
    }
}
