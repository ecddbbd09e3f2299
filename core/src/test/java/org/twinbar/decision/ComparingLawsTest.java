package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every comparison, on drawn specimens; the seed is the test's argument. */
class ComparingLawsTest {

    private static final Question RATIO =
            Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER).withResolution(0);
    private static final Question DIFFERENCE = Question.of(
                    Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER)
            .withResolution(0);

    static LongStream seeds() {
        return LongStream.range(1, 40);
    }

    private static List<Observation> drawn(long seed) {
        Random random = new Random(seed);
        int plain = 3 + random.nextInt(6);
        int coated = 3 + random.nextInt(6);
        double gain = 0.8 + 0.5 * random.nextDouble();
        return Specimens.of(
                "plain",
                random.doubles(plain).map(x -> 40 + 5 * x).toArray(),
                "coated",
                random.doubles(coated).map(x -> gain * (40 + 5 * x)).toArray());
    }

    private static Found found(Question question, List<Observation> specimens) {
        return Comparing.of(question, specimens, "plain", "coated").found();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void swappingGroupsInvertsARatioAndItsInterval(long seed) {
        Found one = found(RATIO, drawn(seed));
        Found other = Comparing.of(RATIO, drawn(seed), "coated", "plain").found();
        same(1 / one.estimate().orElse(0), other.estimate());
        same(1 / one.high().orElse(0), other.low());
        same(1 / one.low().orElse(0), other.high());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aChangeOfUnitChangesNoRatioAndNoVerdict(long seed) {
        Comparison one = Comparing.of(RATIO.withWorth(0.05), drawn(seed), "plain", "coated");
        Comparison other = Comparing.of(
                RATIO.withWorth(0.05), mapped(drawn(seed), x -> x * 145.0377), "plain", "coated");
        same(one.found().low().orElse(0), other.found().low());
        same(one.found().high().orElse(0), other.found().high());
        assertThat(other.verdict()).isEqualTo(one.verdict());
        assertThat(other.reasons()).isEqualTo(one.reasons());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void addingAConstantLeavesDifferences(long seed) {
        Found one = found(DIFFERENCE, drawn(seed));
        Found other = found(DIFFERENCE, mapped(drawn(seed), x -> x + 273.15));
        assertThat(other.low().orElse(0)).isCloseTo(one.low().orElse(1), within(1e-9));
        assertThat(other.high().orElse(0)).isCloseTo(one.high().orElse(1), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfRowsIsNothing(long seed) {
        List<Observation> shuffled = new ArrayList<>(drawn(seed));
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(Comparing.of(RATIO, shuffled, "plain", "coated"))
                .isEqualTo(Comparing.of(RATIO, drawn(seed), "plain", "coated"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void duplicatingEverySpecimenNeverWidens(long seed) {
        List<Observation> doubled = new ArrayList<>(drawn(seed));
        for (Observation one : drawn(seed)) {
            doubled.add(Observation.of(
                    one.specimen() + "b", one.group(), ((Observed.Number) one.observed()).value()));
        }
        for (Question question : List.of(RATIO, DIFFERENCE)) {
            Found once = found(question, drawn(seed));
            Found twice = found(question, doubled);
            assertThat(width(twice)).isLessThanOrEqualTo(width(once));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theVerdictAloneIsTheVerdictOfTheWhole(long seed) {
        for (Question question : List.of(RATIO.withWorth(0.05), DIFFERENCE.withWorth(2))) {
            Comparison whole = Comparing.of(question, drawn(seed), "plain", "coated");
            Judgement alone = Comparing.judge(question, drawn(seed), "plain", "coated");
            assertThat(alone).isEqualTo(new Judgement(whole.found(), whole.verdict()));
        }
    }

    private static double width(Found found) {
        return found.highest() - found.lowest();
    }

    private static List<Observation> mapped(List<Observation> all, DoubleUnaryOperator change) {
        return all.stream()
                .map(one -> one.with(new Observed.Number(
                        change.applyAsDouble(((Observed.Number) one.observed()).value()))))
                .toList();
    }

    private static void same(double expected, Amount actual) {
        assertThat(actual.orElse(0)).isCloseTo(expected, within(1e-10 * Math.abs(expected)));
    }
}
