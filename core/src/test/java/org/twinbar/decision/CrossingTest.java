package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

/** A treatment crossed with a factor. */
class CrossingTest {

    private static final Question RATIO =
            Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER).withResolution(0);
    private static final Question DIFFERENCE = Question.of(
                    Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER)
            .withResolution(0);

    private static Alike one(Question question, List<Crossing.Part> parts) {
        List<Alike> all = Crossing.of(question, parts, "plain", "coated");
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static List<Crossing.Part> parts(double[]... groups) {
        return List.of(
                new Crossing.Part("flat", Specimens.of("plain", groups[0], "coated", groups[1])),
                new Crossing.Part(
                        "upright", Specimens.of("plain", groups[2], "coated", groups[3])));
    }

    private static double[] times(double[] values, double factor) {
        return java.util.Arrays.stream(values).map(x -> factor * x).toArray();
    }

    @Test
    void seesATreatmentThatActsDifferently() {
        Alike alike = one(
                RATIO,
                parts(
                        Specimens.W_PLAIN,
                        Specimens.W_COATED,
                        times(Specimens.W_PLAIN, 0.5),
                        times(Specimens.W_COATED, 0.7)));
        assertThat(alike.answer()).isEqualTo(Alike.Answer.DIFFERENT);
        assertThat(alike.words())
                .startsWith("Tensile strength of coated against plain was 11\u2009% higher (flat)"
                        + " and 55\u2009% higher (upright): the treatment acts differently in the"
                        + " two (the first ratio is 29\u2009% lower than the second, 95\u2009%"
                        + " interval 2");
    }

    @Test
    void isAlikeOnlyWithinWhatIsWorthHaving() {
        List<Crossing.Part> same = parts(
                Specimens.W_PLAIN,
                Specimens.W_COATED,
                times(Specimens.W_PLAIN, 0.5),
                times(Specimens.W_COATED, 0.5));
        assertThat(one(RATIO, same).answer()).isEqualTo(Alike.Answer.OPEN);
        assertThat(one(RATIO.withWorth(0.02), same).answer()).isEqualTo(Alike.Answer.OPEN);
        Alike alike = one(RATIO.withWorth(0.1), same);
        assertThat(alike.answer()).isEqualTo(Alike.Answer.ALIKE);
        assertThat(alike.words()).contains("acts alike in the two within 10\u2009%");
        assertThat(alike.contrast().estimate().orElse(0)).isCloseTo(1, within(1e-12));
    }

    @Test
    void countsAnErrorThatAllShareOnce() {
        List<Crossing.Part> parts =
                parts(Specimens.W_PLAIN, Specimens.W_COATED, Specimens.W_PLAIN, Specimens.W_COATED);
        List<Crossing.Part> gain = new ArrayList<>();
        List<Crossing.Part> lag = new ArrayList<>();
        for (Crossing.Part part : parts) {
            gain.add(new Crossing.Part(
                    part.words(),
                    part.observations().stream()
                            .map(one -> one.withMoves(Map.of("load cell gain", 0.05 * value(one))))
                            .toList()));
            lag.add(new Crossing.Part(
                    part.words(),
                    part.observations().stream()
                            .map(one ->
                                    one.group().equals("coated") && part.words().equals("flat")
                                            ? one.withMoves(Map.of("film", 2.0))
                                            : one)
                            .toList()));
        }
        double plain = width(one(RATIO, parts));
        assertThat(width(one(RATIO, gain))).isCloseTo(plain, within(1e-9));
        assertThat(width(one(RATIO, lag))).isGreaterThan(1.2 * plain);
    }

    @Test
    void asksEveryTwoOfThreeLevelsAtASharedRate() {
        List<Crossing.Part> two =
                parts(Specimens.W_PLAIN, Specimens.W_COATED, Specimens.W_PLAIN, Specimens.W_COATED);
        List<Crossing.Part> three = new ArrayList<>(two);
        three.add(new Crossing.Part("edge", two.get(0).observations()));
        three.add(new Crossing.Part("none treated", Specimens.of("plain", 1, 2, 3)));
        List<Alike> all = Crossing.of(RATIO, three, "plain", "coated");
        assertThat(all)
                .extracting(it -> it.here() + "/" + it.there())
                .containsExactly("flat/upright", "flat/edge", "upright/edge");
        assertThat(width(all.get(0))).isGreaterThan(width(one(RATIO, two)));
        assertThat(all.get(0).contrast().level()).isEqualTo(0.95);
    }

    @Test
    void saysWhyItCannotTell() {
        Alike single = one(
                RATIO,
                parts(Specimens.W_PLAIN, Specimens.W_COATED, Specimens.W_PLAIN, new double[] {50}));
        assertThat(single.answer()).isEqualTo(Alike.Answer.OPEN);
        assertThat(single.words())
                .isEqualTo("Tensile strength: whether coated acts alike in flat and upright can't"
                        + " be told: a group of one specimen shows no scatter.");
        double[] fives = {5, 5, 5};
        assertThat(one(RATIO, parts(fives, fives, fives, fives)).words())
                .contains("nothing scatters");
        assertThat(Crossing.of(RATIO, List.of(), "plain", "coated")).isEmpty();
    }

    @Test
    void combinesTheIntervalsOfShares() {
        List<Crossing.Part> cups = List.of(cups("flat", 7, 1), cups("upright", 6, 5));
        Question dry = Question.of(
                new Subject("dry", org.twinbar.quantity.Unit.ONE, "cups"),
                Effect.SHARE,
                Expectation.HIGHER);
        Alike alike = one(dry, cups);
        Found here =
                Comparing.of(dry, cups.get(0).observations(), "plain", "coated").found();
        Found there =
                Comparing.of(dry, cups.get(1).observations(), "plain", "coated").found();
        double d = here.estimate().orElse(0) - there.estimate().orElse(0);
        double down = here.estimate().orElse(0) - here.lowest();
        double up = there.highest() - there.estimate().orElse(0);
        assertThat(alike.contrast().lowest()).isCloseTo(d - Math.hypot(down, up), within(1e-12));
    }

    private static Crossing.Part cups(String words, int coated, int plain) {
        List<Observation> all = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            all.add(Observation.of(words + "C" + i, "coated", new Observed.YesNo(i < coated)));
            all.add(Observation.of(words + "P" + i, "plain", new Observed.YesNo(i < plain)));
        }
        return new Crossing.Part(words, all);
    }

    static LongStream seeds() {
        return LongStream.range(1, 25);
    }

    private static List<Crossing.Part> drawn(long seed) {
        Random random = new Random(seed);
        double[][] groups = new double[4][];
        for (int i = 0; i < 4; i++) {
            double middle = 30 + 20 * random.nextDouble();
            groups[i] = random.doubles(3 + random.nextInt(5))
                    .map(x -> middle + 5 * x)
                    .toArray();
        }
        return parts(groups);
    }

    private static List<Crossing.Part> mapped(
            List<Crossing.Part> parts, DoubleUnaryOperator change) {
        return parts.stream()
                .map(part -> new Crossing.Part(
                        part.words(),
                        part.observations().stream()
                                .map(one -> one.with(
                                        new Observed.Number(change.applyAsDouble(value(one)))))
                                .toList()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void swappingPlacesOrGroupsInvertsTheContrast(long seed) {
        Found contrast = one(RATIO, drawn(seed)).contrast();
        List<Crossing.Part> turned = new ArrayList<>(drawn(seed));
        Collections.reverse(turned);
        Found places = one(RATIO, turned).contrast();
        Found groups = Crossing.of(RATIO, drawn(seed), "coated", "plain").get(0).contrast();
        for (Found other : List.of(places, groups)) {
            assertThat(other.lowest() * contrast.highest()).isCloseTo(1, within(1e-10));
            assertThat(other.highest() * contrast.lowest()).isCloseTo(1, within(1e-10));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void unitsConstantsAndRowsAreNothing(long seed) {
        Alike ratio = one(RATIO, drawn(seed));
        assertThat(one(RATIO, mapped(drawn(seed), x -> 145.0377 * x)).words())
                .isEqualTo(ratio.words());
        Found difference = one(DIFFERENCE, drawn(seed)).contrast();
        Found moved = one(DIFFERENCE, mapped(drawn(seed), x -> x + 273.15)).contrast();
        assertThat(moved.lowest()).isCloseTo(difference.lowest(), within(1e-9));
        List<Crossing.Part> shuffled = drawn(seed).stream()
                .map(part -> {
                    List<Observation> rows = new ArrayList<>(part.observations());
                    Collections.shuffle(rows, new Random(seed));
                    return new Crossing.Part(part.words(), rows);
                })
                .toList();
        assertThat(one(RATIO, shuffled)).isEqualTo(ratio);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void duplicatingEverySpecimenNeverWidens(long seed) {
        List<Crossing.Part> doubled = drawn(seed).stream()
                .map(part -> {
                    List<Observation> rows = new ArrayList<>(part.observations());
                    part.observations()
                            .forEach(one -> rows.add(
                                    Observation.of(one.specimen() + "b", one.group(), value(one))));
                    return new Crossing.Part(part.words(), rows);
                })
                .toList();
        assertThat(width(one(RATIO, doubled))).isLessThan(width(one(RATIO, drawn(seed))));
    }

    private static double value(Observation one) {
        return ((Observed.Number) one.observed()).value();
    }

    private static double width(Alike alike) {
        return alike.contrast().highest() - alike.contrast().lowest();
    }
}
