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
import org.twinbar.planning.Allocation.Placed;
import org.twinbar.planning.Design.Changes;

class AllocationTest {

    private static final List<String> GROUPS = List.of("plain", "coated");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void putsEveryGroupIntoEveryRunAsEvenlyAsCanBe(long seed) {
        Allocation plan = Allocation.of(new Design(GROUPS, 11, 3, Changes.WITHIN_RUNS), seed);
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
        Allocation plan = Allocation.of(new Design(GROUPS, 10, 4, Changes.BETWEEN_RUNS), seed);
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
        Design design = new Design(GROUPS, 5, 1, Changes.WITHIN_RUNS);
        assertThat(Allocation.of(design, 3).seal())
                .isEqualTo(Allocation.of(design, 3).seal());
        assertThat(Allocation.of(design, 3).seal())
                .isNotEqualTo(Allocation.of(design, 4).seal());
    }

    /** Every group comes first about equally often: of 2000 seeds 1000 ± 4·√500. */
    @Test
    void favoursNoGroup() {
        Design design = new Design(GROUPS, 3, 1, Changes.WITHIN_RUNS);
        long first = IntStream.range(0, 2000)
                .mapToObj(seed -> Allocation.of(design, seed).specimens().get(0).group())
                .filter("plain"::equals)
                .count();
        assertThat(first).isBetween(910L, 1090L);
    }

    /** SHA-256 of "abc": FIPS 180-2, appendix B.1. */
    @Test
    void sealsByThePublishedDigest() {
        assertThat(Allocation.sealOf("abc"))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void writesThePlanWholeIntoItsText() {
        Allocation plan = Allocation.of(new Design(GROUPS, 2, 1, Changes.WITHIN_RUNS), 1);
        assertThat(plan.canonicalText())
                .startsWith("twinbar plan 1\ngroups\tplain\tcoated\nper group\t2\nruns\t1\n"
                        + "changes\twithin runs\nseed\t1\n1\t")
                .endsWith("\n")
                .hasLineCount(10);
        for (Placed one : plan.specimens()) {
            assertThat(plan.canonicalText())
                    .contains("%d\t%s\t%s\t1\t%d\n"
                            .formatted(one.test(), one.code(), one.group(), one.position()));
        }
        assertThat(plan.seal()).isEqualTo(Allocation.sealOf(plan.canonicalText()));
    }

    @Test
    void refusesWhatProvesNothing() {
        refuses(
                () -> new Design(GROUPS, 5, 2, Changes.BETWEEN_RUNS),
                "With 2 print runs a treatment can't be told from the run it was printed in: print at least 4 runs, two for each group in turn, and the run is then the unit.");
        refuses(
                () -> new Design(GROUPS, 5, 1, Changes.BETWEEN_RUNS),
                "With 1 print run a treatment can't be told from the run it was printed in: print at least 4 runs, two for each group in turn, and the run is then the unit.");
        refuses(
                () -> new Design(GROUPS, 5, 5, Changes.BETWEEN_RUNS),
                "5 print runs can't be shared out evenly among 2 groups: take 6.");
        refuses(
                () -> new Design(GROUPS, 2, 6, Changes.BETWEEN_RUNS),
                "2 specimens per group can't fill 3 print runs of each group.");
        refuses(
                () -> new Design(GROUPS, 2, 3, Changes.WITHIN_RUNS),
                "2 specimens per group can't be in each of 3 print runs: take fewer runs, so that every run holds every group.");
        refuses(
                () -> new Design(List.of("plain"), 2, 1, Changes.WITHIN_RUNS),
                "A plan compares at least two groups: a treated one and its control.");
        refuses(
                () -> new Design(List.of("a", "a"), 2, 1, Changes.WITHIN_RUNS),
                "Each group of a plan has a name of its own.");
        refuses(
                () -> new Design(GROUPS, 5000, 1, Changes.WITHIN_RUNS),
                "A plan has from 1 specimen per group to 2000 in all, not 5000 per group.");
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
