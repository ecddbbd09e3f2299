package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.finding.Finding;
import org.twinbar.quantity.Unit;

/** A property over an amount. */
class TrendingTest {

    private static final Subject FILM = Subject.of("film", Unit.of("µm"));
    private static final Question STRONGER =
            Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER).withResolution(0);

    private static Trend fit(Question question, List<Trending.Given> given) {
        return Trending.of(question, FILM, given, List.of());
    }

    private static Trending.Given given(String code, double amount, double value) {
        return new Trending.Given(
                Observation.of(code, amount == 0 ? "plain" : "coated", value), amount);
    }

    private static List<Trending.Given> films(double... perAmount) {
        double[] off = {-1.2, 0.4, 0.8};
        List<Trending.Given> all = new ArrayList<>();
        for (int i = 0; i < perAmount.length; i++) {
            for (int k = 0; k < off.length; k++) {
                all.add(given("F" + i + k, 100 * i, perAmount[i] + off[(k + i) % 3]));
            }
        }
        return all;
    }

    @Test
    void saysHowMuchMoreFilmGives() {
        Trend trend = fit(STRONGER, films(40, 43, 46, 49));
        assertThat(trend.verdict()).isEqualTo(Verdict.SUPPORTED);
        assertThat(trend.reasons().get(0))
                .startsWith(
                        "Tensile strength rose by 9.0\u2009MPa from 0 to 300\u2009µm of film (95");
        assertThat(trend.reasons().get(1)).isEqualTo("It goes up with film.");
        assertThat(trend.reasons().get(2)).startsWith("The slope is +0.03").contains("MPa/µm");
        assertThat(trend.findings()).isEmpty();
        assertThat(trend.line()).first().extracting(Trend.Band::amount).isEqualTo(0.0);
    }

    @Test
    void answersTheOtherExpectations() {
        List<Trending.Given> up = films(40, 43, 46);
        Question weaker = Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.LOWER);
        Question same = Question.same(Specimens.STRENGTH, Effect.RATIO, 0.05);
        assertThat(fit(weaker, up).reasons().get(1)).contains("goes up with film, not down");
        assertThat(fit(same, up).reasons().get(1)).contains("does not stay the same");
        assertThat(fit(weaker, films(46, 43, 40)).verdict()).isEqualTo(Verdict.SUPPORTED);
        assertThat(fit(STRONGER, films(40, 40, 40)).reasons().get(1))
                .isEqualTo("Whether it goes with film is open.");
    }

    @Test
    void seesABentLineAndTwoAmounts() {
        assertThat(codes(fit(STRONGER, films(40, 50, 50, 50)))).containsExactly("line-is-bent");
        assertThat(codes(fit(STRONGER, films(40, 50)))).containsExactly("two-amounts");
    }

    @Test
    void namesWhoTakesNoPart() {
        List<Trending.Given> all = new ArrayList<>(films(40, 43, 46));
        LeftOut before = new LeftOut(
                "Ida",
                ZonedDateTime.parse("2026-03-01T10:00:00Z"),
                "warped",
                LeftOut.Sight.BEFORE_VALUE_WAS_SEEN);
        all.add(new Trending.Given(Observation.of("X2", "coated", 99).leftOut(before), 100));
        all.add(new Trending.Given(
                Observation.of("X3", "coated", new Observed.Unknown("it slipped")), 100));
        Trend trend = Trending.of(STRONGER, FILM, all, List.of("X1"));
        assertThat(trend.slope()).isEqualTo(fit(STRONGER, films(40, 43, 46)).slope());
        assertThat(trend.findings().get(0).text()).contains("X1, X2, X3");
        assertThat(trend.points()).hasSize(9);
    }

    @Test
    void saysWhyThereIsNoLine() {
        List<Trending.Given> few = List.of(given("A", 0, 1), given("B", 1, 2));
        assertThat(fit(STRONGER, few).reasons().get(0)).contains("three specimens or more");
        assertThat(fit(STRONGER, few).verdict()).isEqualTo(Verdict.OPEN);
        assertThat(fit(STRONGER, films(40)).reasons().get(0)).contains("all amounts are the same");
        List<Trending.Given> confounded = films(40, 43, 46).stream()
                .map(one -> new Trending.Given(
                        one.specimen().inBlock(new Block("mix", "M" + one.amount())), one.amount()))
                .toList();
        assertThat(fit(STRONGER, confounded).reasons().get(0))
                .contains("the amount can't be told from the block");
        assertThatThrownBy(() ->
                        fit(Question.of(Specimens.STRENGTH, Effect.RANK, Expectation.HIGHER), few))
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining("needs numbers");
        assertThatThrownBy(() -> given("A", Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void countsWhatSharesOneTreatmentOnce() {
        List<Trending.Given> mixes = films(40, 43, 47, 49).stream()
                .map(one ->
                        new Trending.Given(one.specimen().inUnit("M" + one.amount()), one.amount()))
                .toList();
        Trend trend = fit(STRONGER, mixes);
        assertThat(trend.slope().df().orElse(0)).isEqualTo(2);
        assertThat(trend.reasons().get(0)).contains("12 specimens");
    }

    @Test
    void believesNoScatterBelowTheStepNorForgetsSharedErrors() {
        List<Trending.Given> exact = List.of(
                given("A", 0, 40), given("B", 0, 40), given("C", 100, 41), given("D", 100, 41));
        Found coarse = fit(STRONGER.withResolution(1), exact).slope();
        // n·u²/Σx'² with u² = 1/12 and Σx'² = 10 000; t of 2 degrees of freedom is 4.3027.
        double half = 4.302652729911275 * Math.sqrt(4 / 12.0 / 10_000);
        assertThat(coarse.highest() - coarse.estimate().orElse(0)).isCloseTo(half, within(1e-12));
        List<Trending.Given> gain = films(40, 43, 46).stream()
                .map(one -> new Trending.Given(
                        one.specimen().withMoves(Map.of("film gauge", one.amount() / 10)),
                        one.amount()))
                .toList();
        assertThat(width(fit(STRONGER, gain)))
                .isGreaterThan(2 * width(fit(STRONGER, films(40, 43, 46))));
    }

    static LongStream seeds() {
        return LongStream.range(1, 25);
    }

    private static List<Trending.Given> drawn(long seed) {
        Random random = new Random(seed);
        List<Trending.Given> all = new ArrayList<>();
        int n = 6 + random.nextInt(8);
        for (int i = 0; i < n; i++) {
            double amount = 50 * random.nextInt(4) + (i < 2 ? 25 * i : 0);
            all.add(given("F" + i, amount, 40 + amount / 50 + 3 * random.nextGaussian()));
        }
        return all;
    }

    private static List<Trending.Given> mapped(
            List<Trending.Given> all, DoubleUnaryOperator amounts, DoubleUnaryOperator values) {
        return all.stream()
                .map(one -> given(
                        one.specimen().specimen(),
                        amounts.applyAsDouble(one.amount()),
                        values.applyAsDouble(
                                ((Observed.Number) one.specimen().observed()).value())))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void unitsConstantsAndRowsAreNothingToASlope(long seed) {
        Trend trend = fit(STRONGER, drawn(seed));
        Trend inMillimetres = fit(STRONGER, mapped(drawn(seed), x -> x / 1000, y -> y));
        Trend moved = fit(STRONGER, mapped(drawn(seed), x -> x + 7, y -> y + 273.15));
        List<Trending.Given> shuffled = new ArrayList<>(drawn(seed));
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(inMillimetres.slope().lowest() / 1000)
                .isCloseTo(trend.slope().lowest(), within(1e-9));
        assertThat(inMillimetres.verdict()).isEqualTo(trend.verdict());
        assertThat(moved.slope().lowest()).isCloseTo(trend.slope().lowest(), within(1e-9));
        assertThat(moved.slope().highest()).isCloseTo(trend.slope().highest(), within(1e-9));
        assertThat(fit(STRONGER, shuffled)).isEqualTo(trend);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void turningTheAmountsTurnsTheSlope(long seed) {
        Found slope = fit(STRONGER, drawn(seed)).slope();
        Found turned = fit(STRONGER, mapped(drawn(seed), x -> -x, y -> y)).slope();
        assertThat(turned.lowest()).isCloseTo(-slope.highest(), within(1e-12));
        assertThat(turned.highest()).isCloseTo(-slope.lowest(), within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void duplicatingEverySpecimenNeverWidensASlope(long seed) {
        List<Trending.Given> doubled = new ArrayList<>(drawn(seed));
        drawn(seed)
                .forEach(one -> doubled.add(given(
                        one.specimen().specimen() + "b",
                        one.amount(),
                        ((Observed.Number) one.specimen().observed()).value())));
        assertThat(width(fit(STRONGER, doubled))).isLessThan(width(fit(STRONGER, drawn(seed))));
    }

    private static double width(Trend trend) {
        return trend.slope().highest() - trend.slope().lowest();
    }

    private static List<String> codes(Trend trend) {
        return trend.findings().stream().map(Finding::code).toList();
    }
}
