package org.twinbar.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.planning.Design.Batches;
import org.twinbar.planning.Design.Changes;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.specimen.PrintOrientation;

class AllocationTest {

    private static final List<String> GROUPS = List.of("plain", "coated");
    private static final PlannedGroup PLAIN = PlannedGroup.control("plain");
    private static final PlannedGroup COATED =
            PlannedGroup.treated("coated", "one coat of resin", Together.MIX);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void putsEveryGroupIntoEveryRunAsEvenlyAsCanBe(long seed) {
        Allocation plan = Allocation.of(design(11, 3, Changes.WITHIN_RUNS), seed);
        isWhole(plan, 22);
        for (int run = 1; run <= 3; run++) {
            for (String group : GROUPS) {
                assertThat(count(plan, run, group)).isBetween(3L, 4L);
            }
        }
        assertThat(plan.specimens())
                .as("tests run by run")
                .isSortedAccordingTo(Comparator.comparingInt(Placed::run));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void alternatesRunsWhereATreatmentTakesAWholeRun(long seed) {
        Allocation plan = Allocation.of(design(10, 4, Changes.BETWEEN_RUNS), seed);
        isWhole(plan, 20);
        for (int round = 0; round < 2; round++) {
            List<String> groups = IntStream.rangeClosed(2 * round + 1, 2 * round + 2)
                    .mapToObj(run -> groupsOf(plan, run))
                    .toList();
            assertThat(groups).containsExactlyInAnyOrderElementsOf(GROUPS);
        }
    }

    @Test
    void dealsTheSameFromTheSameSeedAndElseFromAnother() {
        Design design = design(5, 1, Changes.WITHIN_RUNS);
        assertThat(Allocation.of(design, 3).seal())
                .isEqualTo(Allocation.of(design, 3).seal());
        assertThat(Allocation.of(design, 3).seal())
                .isNotEqualTo(Allocation.of(design, 4).seal());
    }

    /** Every group comes first about equally often: of 2000 seeds 1000 ± 4·√500. */
    @Test
    void favoursNoGroup() {
        Design design = design(3, 1, Changes.WITHIN_RUNS);
        long first = IntStream.range(0, 2000)
                .mapToObj(seed -> Allocation.of(design, seed).specimens().get(0).group())
                .filter("plain"::equals)
                .count();
        assertThat(first).isBetween(910L, 1090L);
    }

    /** SHA-256 of "abc": FIPS 180-2, appendix B.1. */
    @Test
    void sealsByThePublishedDigest() {
        assertThat(Canonical.sealOf("abc"))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void writesThePlanWholeIntoItsText() {
        Allocation plan = Allocation.of(design(2, 1, Changes.WITHIN_RUNS), 1);
        assertThat(plan.canonicalText())
                .startsWith("twinbar plan 2\n"
                        + "group\tplain\tcontrol\t\n"
                        + "group\tcoated\ttreated\tone coat of resin\n"
                        + "series\tflat bars\ttensile\tiso-527-1ba\tflat\t2\t0\n"
                        + "changes\twithin runs\nbatches\t1\t1\t1\nseed\t1\nflat bars\t1\t")
                .endsWith("\n")
                .hasLineCount(11);
        for (Placed one : plan.specimens()) {
            assertThat(plan.canonicalText())
                    .contains("flat bars\t%d\t%s\t%s\t1\t%d\t%s\t-\n"
                            .formatted(
                                    one.test(),
                                    one.code(),
                                    one.group(),
                                    one.position(),
                                    one.group().equals("coated") ? "1" : "-"));
        }
        assertThat(plan.seal()).isEqualTo(Canonical.sealOf(plan.canonicalText()));
    }

    /** A mix that were one run's alone could not be told from the run. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void dealsMixesAcrossRunsToThoseThatAreCoated(long seed) {
        Design design = design(List.of(PLAIN, COATED), bars(12), new Batches(3, 2, 1));
        Allocation plan = Allocation.of(design, seed);
        for (int run = 1; run <= 3; run++) {
            for (int mix = 1; mix <= 2; mix++) {
                int inRun = run;
                int fromMix = mix;
                assertThat(plan.specimens().stream()
                                .filter(it -> it.run() == inRun)
                                .filter(it -> it.mix().orElse(0) == fromMix))
                        .hasSize(2)
                        .allMatch(it -> it.group().equals("coated"));
            }
        }
        assertThat(plan.specimens())
                .filteredOn(it -> it.group().equals("plain"))
                .allMatch(it -> it.mix().isEmpty() && it.load().isEmpty());
    }

    @Test
    void ordersTestsWithinEachSeriesAndPlacesAcrossThem() {
        Series upright = new Series(
                "upright bars", "tensile", "iso-527-1ba", PrintOrientation.UPRIGHT, 4, 2);
        Design design = new Design(
                List.of(PLAIN, COATED),
                List.of(bars(5), upright),
                Changes.WITHIN_RUNS,
                Batches.runs(2));
        Allocation plan = Allocation.of(design, 7);
        assertThat(plan.pilots())
                .as("untreated, before all runs, with codes of their own")
                .hasSize(2)
                .allMatch(it -> it.isPilot() && it.group().equals("plain"))
                .extracting(Placed::code)
                .doesNotContainAnyElementsOf(
                        plan.specimens().stream().map(Placed::code).toList());
        assertThat(plan.canonicalText())
                .contains("pilot\tupright bars\t1\t" + plan.pilots().get(0).code() + "\n");
        assertThat(Allocation.of(
                                new Design(
                                        design.groups(),
                                        List.of(bars(5), upright.withPilots(0)),
                                        design.changes(),
                                        design.batches()),
                                7)
                        .specimens())
                .as("pilots change nothing for the others")
                .isEqualTo(plan.specimens());
        assertThat(plan.of(upright).stream().map(Placed::test))
                .containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(plan.of(bars(5))).hasSize(10);
        assertThat(plan.inPrintOrder().stream().map(it -> it.run() + "/" + it.position()))
                .doesNotHaveDuplicates();
    }

    @Test
    void saysWhatLimitsTheWordingOfAVerdict() {
        assertThat(design(List.of(PLAIN, COATED), bars(6), new Batches(2, 1, 1)).limits())
                .extracting(finding -> finding.code())
                .containsExactly("plan-one-mix");
        assertThat(design(6, 4, Changes.BETWEEN_RUNS).limits().get(0).text())
                .isEqualTo("Each print run has one treatment, so the run is the unit: 2 runs per"
                        + " group count, not 6 specimens, and more specimens in a run add little.");
        assertThat(design(List.of(PLAIN, COATED), bars(6), new Batches(2, 2, 1)).limits())
                .isEmpty();
    }

    @Test
    void refusesWhatProvesNothing() {
        refuses(
                () -> design(5, 2, Changes.BETWEEN_RUNS),
                "With 2 print runs a treatment can't be told from the run it was printed in: print at least 4 runs, two for each group in turn, and the run is then the unit.");
        refuses(
                () -> design(5, 1, Changes.BETWEEN_RUNS),
                "With 1 print run a treatment can't be told from the run it was printed in: print at least 4 runs, two for each group in turn, and the run is then the unit.");
        refuses(
                () -> design(5, 5, Changes.BETWEEN_RUNS),
                "5 print runs can't be shared out evenly among 2 groups: take 6.");
        refuses(
                () -> design(2, 6, Changes.BETWEEN_RUNS),
                "2 specimens per group can't fill 3 print runs of each group.");
        refuses(
                () -> design(2, 3, Changes.WITHIN_RUNS),
                "2 specimens per group can't be in each of 3 print runs: take fewer runs, so that every run holds every group.");
        refuses(
                () -> design(List.of(PLAIN), bars(2), Batches.runs(1)),
                "A plan compares at least two groups: a treated one and its control.");
        refuses(
                () -> design(
                        List.of(PLAIN, PlannedGroup.treated("plain", "a coat")),
                        bars(2),
                        Batches.runs(1)),
                "Each group of a plan has a name of its own.");
        refuses(
                () -> design(List.of(PLAIN, COATED), bars(3), new Batches(1, 4, 1)),
                "3 specimens per group can't be in each of 4 mixes: take fewer, so that every one holds part of every group.");
        refuses(
                () -> design(
                        List.of(PLAIN, PlannedGroup.control("bare")), bars(3), Batches.runs(1)),
                "A plan has one control that all groups are held against, not 2.");
        refuses(() -> Batches.runs(0), "A plan has at least 1 print run, not 0.");
        refuses(
                () -> design(5000, 1, Changes.WITHIN_RUNS),
                "A plan has from 1 specimen per group to 2000 in all, not 5000 per group.");
    }

    private static Series bars(int perGroup) {
        return new Series(
                "flat bars", "tensile", "iso-527-1ba", PrintOrientation.FLAT, perGroup, 0);
    }

    private static Design design(int perGroup, int runs, Changes changes) {
        return new Design(
                List.of(PLAIN, COATED), List.of(bars(perGroup)), changes, Batches.runs(runs));
    }

    private static Design design(List<PlannedGroup> groups, Series series, Batches batches) {
        return new Design(groups, List.of(series), Changes.WITHIN_RUNS, batches);
    }

    private static void isWhole(Allocation plan, int number) {
        assertThat(plan.specimens()).hasSize(number);
        assertThat(plan.specimens().stream().map(Placed::code)).doesNotHaveDuplicates();
        assertThat(plan.specimens().stream().map(Placed::test))
                .isEqualTo(IntStream.rangeClosed(1, number).boxed().toList());
        assertThat(plan.inPrintOrder().stream().map(it -> it.run() + "/" + it.position()))
                .doesNotHaveDuplicates();
    }

    private static long count(Allocation plan, int run, String group) {
        return plan.specimens().stream()
                .filter(it -> it.run() == run && it.group().equals(group))
                .count();
    }

    private static String groupsOf(Allocation plan, int run) {
        return plan.specimens().stream()
                .filter(it -> it.run() == run)
                .map(Placed::group)
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    private static void refuses(ThrowingCallable call, String sentence) {
        assertThatThrownBy(call).isInstanceOf(PlanException.class).hasMessage(sentence);
    }
}
