package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.quantity.Unit;

/** What a comparison takes for granted; no doubt ever changes its verdict. */
class GroundsTest {

    private static final Question STRONGER =
            Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER).withResolution(0);

    private static Comparison compare(List<Observation> specimens) {
        return Comparing.of(STRONGER, specimens, "plain", "coated");
    }

    private static Optional<String> doubt(List<Observation> specimens, String code) {
        return compare(specimens).findings().stream()
                .filter(it -> it.code().equals(code))
                .map(Finding::text)
                .findFirst();
    }

    private static Ground ground(List<Observation> specimens, String what) {
        return compare(specimens).context().grounds().stream()
                .filter(it -> it.what().equals(what))
                .findFirst()
                .orElseThrow();
    }

    /** Plain and coated by turns, values by number, each with what it was made and tested with. */
    private static List<Observation> byTurns(
            int count, IntFunction<Double> value, IntFunction<Circumstances> told) {
        List<Observation> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String group = i % 2 == 0 ? "plain" : "coated";
            all.add(Observation.of("S%02d".formatted(i), group, value.apply(i))
                    .with(told.apply(i)));
        }
        return all;
    }

    private static double scattered(int i) {
        return 50 + (i % 2) * 8 + new double[] {0.3, -1.1, 0.9, -0.2, 1.2, -0.8, 0.1}[i * 3 % 7];
    }

    @Test
    void sayNothingOfWhatNobodyTold() {
        List<Observation> all = byTurns(12, GroundsTest::scattered, i -> Circumstances.UNTOLD);
        assertThat(ground(all, "no drift over the tests").words()).startsWith("Nobody told");
        assertThat(ground(all, "no difference over the plate").words()).startsWith("Nobody told");
        assertThat(ground(all, "shape of scatter").words()).contains("eight specimens");
        assertThat(ground(all, "equal spread").words()).startsWith("The groups scatter alike");
        assertThat(compare(all).context().grounds()).allMatch(it -> it.doubt().isEmpty());
    }

    @Test
    void seeUnequalSpread() {
        List<Observation> all = Specimens.of(
                "plain", new double[] {50.1, 50.3, 49.9, 50.0, 50.2, 49.8}, "coated", new double[] {
                    51, 61, 55, 44, 66, 58
                });
        assertThat(doubt(all, "spread-differs").orElseThrow())
                .isEqualTo("coated scatters 41.3 times as much as plain (standard deviations"
                        + " 7.7\u2009MPa and 0.19\u2009MPa). The interval allows for that; the cause"
                        + " is worth looking for.");
        assertThat(doubt(
                        Specimens.of("plain", Specimens.W_PLAIN, "coated", new double[] {1, 2, 3}),
                        "spread-differs"))
                .isEmpty();
    }

    @Test
    void seeAShapeFromEightSpecimensOn() {
        double[] weights = {148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236};
        List<Observation> all = Specimens.of("plain", Specimens.W_PLAIN, "coated", weights);
        // METHODS.md I.5: W = 0.78881, p = 0.0067.
        assertThat(doubt(all, "shape-of-scatter").orElseThrow())
                .startsWith("The values of coated lie too unevenly");
        assertThat(ground(all, "shape of scatter").p().orElse(1)).isBetween(0.0066, 0.0068);
    }

    @Test
    void seeADriftThatFellowsShare() {
        List<Observation> all = byTurns(
                12, i -> scattered(i) + 0.9 * i, i -> Circumstances.UNTOLD.testedAs(100 + i));
        assertThat(doubt(all, "drift-over-tests").orElseThrow())
                .startsWith("In the order of testing the values rise within the groups, by about");
        assertThat(doubt(
                        byTurns(12, GroundsTest::scattered, i -> Circumstances.UNTOLD.testedAs(i)),
                        "drift-over-tests"))
                .isEmpty();
        assertThat(compare(all).verdict())
                .isEqualTo(
                        compare(byTurns(12, i -> scattered(i) + 0.9 * i, i -> Circumstances.UNTOLD))
                                .verdict());
    }

    @Test
    void seeGroupsThatWereTestedInTurn() {
        List<Observation> all = byTurns(
                8, GroundsTest::scattered, i -> Circumstances.UNTOLD.testedAs(i % 2 * 100 + i));
        assertThat(doubt(all, "tested-in-turn").orElseThrow())
                .startsWith("All of plain was tested before all of coated");
        // 2 of C(8, 4) = 70 orders part the groups.
        assertThat(ground(all, "mixed order").p().orElse(1)).isEqualTo(2.0 / 70);
    }

    @Test
    void seeWhereOnThePlateASpecimenWasPrinted() {
        List<Observation> measured = byTurns(
                12,
                i -> scattered(i) + (i / 2 % 3) * 4,
                i -> Circumstances.UNTOLD.printedAt(new Spot.Measured(i / 2 % 3 * 50, i / 6 * 40)));
        assertThat(doubt(measured, "place-on-plate")).isPresent();
        List<Observation> named = byTurns(
                12,
                i -> scattered(i) + (i / 2 % 2) * 6,
                i -> Circumstances.UNTOLD.printedAt(
                        new Spot.Named(i / 2 % 2 == 0 ? "front" : "back")));
        assertThat(doubt(named, "place-on-plate").orElseThrow())
                .contains("by about 6.")
                .contains("between places");
        List<Observation> even = byTurns(
                12,
                GroundsTest::scattered,
                i -> Circumstances.UNTOLD.printedAt(
                        new Spot.Named(i / 2 % 2 == 0 ? "front" : "back")));
        assertThat(doubt(even, "place-on-plate")).isEmpty();
    }

    @Test
    void seePlacesThatPartTheGroups() {
        List<Observation> all = byTurns(
                8,
                GroundsTest::scattered,
                i -> Circumstances.UNTOLD.printedAt(new Spot.Named(i % 2 == 0 ? "front" : "back")));
        assertThat(doubt(all, "place-is-group")).isPresent();
        List<Observation> eachItsOwn = byTurns(
                8,
                GroundsTest::scattered,
                i -> Circumstances.UNTOLD.printedAt(new Spot.Named("place " + i)));
        assertThat(doubt(eachItsOwn, "place-is-group")).isEmpty();
        assertThat(ground(eachItsOwn, "no difference over the plate").words())
                .contains("too few specimens");
    }

    @Test
    void lookAtMeansAlone() {
        List<Observation> cups = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            cups.add(Observation.of(
                    "S" + i, i % 2 == 0 ? "plain" : "coated", new Observed.YesNo(i > 5)));
        }
        Question dry =
                Question.of(new Subject("dry", Unit.ONE, "cups"), Effect.SHARE, Expectation.HIGHER);
        assertThat(Comparing.of(dry, cups, "plain", "coated").context().grounds())
                .isEmpty();
    }

    /** Each look may doubt one study of twenty that has nothing to be doubted. */
    @Test
    void doubtOneSoundStudyOfTwentyAtMost() {
        Random random = new Random(20261125);
        Map<String, Integer> doubted = new TreeMap<>();
        int studies = 300;
        for (int study = 0; study < studies; study++) {
            double run = random.nextGaussian();
            List<Observation> all = byTurns(
                    20,
                    i -> 50 + 5 * run + 3 * random.nextGaussian(),
                    i -> Circumstances.UNTOLD
                            .testedAs(random.nextDouble())
                            .printedAt(new Spot.Named("place " + i / 2 % 3)));
            compare(all).findings().forEach(it -> doubted.merge(it.code(), 1, Integer::sum));
        }
        // Four standard errors of 300 studies at one in twenty are 0.050.
        for (String code : List.of(
                "drift-over-tests", "place-on-plate", "spread-differs", "shape-of-scatter")) {
            assertThat(doubted.getOrDefault(code, 0) / (double) studies)
                    .as(code)
                    .isBetween(0.001, 0.1);
        }
    }
}
