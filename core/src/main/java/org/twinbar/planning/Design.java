package org.twinbar.planning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;
import org.twinbar.planning.PlannedGroup.Role;
import org.twinbar.planning.PlannedGroup.Together;

/**
 * What is to be dealt out: groups, how many of each, and what they are made in.
 *
 * @param groups one control and the others
 * @param series what is made of each group
 * @param changes where what sets the groups apart can be changed
 * @param batches print runs, mixes and oven loads
 */
public record Design(
        List<PlannedGroup> groups, List<Series> series, Changes changes, Batches batches) {

    /** Where a treatment can be changed. */
    public enum Changes {
        /** From specimen to specimen, as a coat can: each run holds all groups. */
        WITHIN_RUNS("within runs"),
        /**
         * Only from run to run, as a nozzle, a spool or a temperature: each run holds one group.
         */
        BETWEEN_RUNS("between runs");

        private final String word;

        Changes(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * In how many batches specimens are made.
     *
     * @param runs print runs
     * @param mixes cups of resin, each for specimens of every group that takes some
     * @param loads of the oven, likewise
     */
    public record Batches(int runs, int mixes, int loads) {

        static final int MOST = 100;

        /** @throws PlanException unless there are 1 to 100 of each */
        public Batches {
            require(runs, "print run");
            require(mixes, "mix");
            require(loads, "oven load");
        }

        public static Batches runs(int number) {
            return new Batches(number, 1, 1);
        }

        private static void require(int number, String what) {
            if (number < 1) {
                throw new PlanException(
                        "A plan has at least 1 %s, not %s.".formatted(what, number));
            }
            if (number > MOST) {
                throw new PlanException("A plan has at most %s of a kind of batch, not %s %s."
                        .formatted(MOST, number, what.equals("mix") ? "mixes" : what + "s"));
            }
        }
    }

    static final int MOST_SPECIMENS = 2000;

    /** One run for a group can't be told from the treatment itself. */
    static final int FEWEST_RUNS_PER_GROUP = 2;

    private static final Kind ONE_MIX = Kind.warning(
            "plan-one-mix",
            "All that is coated is coated from one mix, so the verdict will be about that mix: a mix that was off by chance would look like the treatment, so take two or more where you can.");
    private static final Kind ONE_LOAD = Kind.warning(
            "plan-one-load",
            "All that is heated is heated in one oven load, so the verdict will be about that load: take two or more, with part of each heated group in every one, where you can.");
    private static final Kind RUN_IS_UNIT = Kind.note(
            "plan-run-is-unit",
            "Each print run has one treatment, so the run is the unit: %s runs per group count, not %s specimens, and more specimens in a run add little.");
    private static final Kind ONE_RUN = Kind.note(
            "plan-one-run",
            "Everything comes from one print run: groups are compared fairly, and the verdict is about parts of that run.");

    /**
     * @throws PlanException unless two or more groups, one of them the control, each at least once
     *     in every batch, can be told from the runs
     */
    public Design {
        groups = List.copyOf(groups);
        series = List.copyOf(series);
        requireGroups(groups);
        requireSeries(series, groups.size());
        for (Series each : series) {
            if (changes == Changes.WITHIN_RUNS) {
                requireEveryGroupInEveryRun(each, batches.runs());
            } else {
                requireRunsOfEachGroup(groups, each, batches.runs());
            }
            requireEach(each, groups, Together.MIX, batches.mixes(), "mixes");
            requireEach(each, groups, Together.OVEN_LOAD, batches.loads(), "oven loads");
        }
    }

    /** Returns the group that the others are held against. */
    public PlannedGroup control() {
        return groups.stream()
                .filter(group -> group.role() == Role.CONTROL)
                .findFirst()
                .orElseThrow();
    }

    /** Returns the group of this name. */
    public PlannedGroup group(String name) {
        return named(groups, PlannedGroup::name, name, "group");
    }

    /** Returns the series of this name. */
    public Series series(String name) {
        return named(series, Series::name, name, "series");
    }

    /** Returns how many specimens there are, pilots not counted. */
    public int specimens() {
        return groups.size() * series.stream().mapToInt(Series::perGroup).sum();
    }

    /** Returns in how many batches of a kind specimens go together. */
    public int batchesOf(Together kind) {
        return kind == Together.MIX ? batches.mixes() : batches.loads();
    }

    /** Returns what limits the wording of a verdict, whatever is found. */
    public List<Finding> limits() {
        List<Finding> limits = new ArrayList<>();
        if (changes == Changes.BETWEEN_RUNS) {
            int runsPerGroup = batches.runs() / groups.size();
            limits.add(RUN_IS_UNIT.with(
                    runsPerGroup,
                    series.stream().mapToInt(Series::perGroup).max().orElseThrow()));
        } else if (batches.runs() == 1) {
            limits.add(ONE_RUN.with());
        }
        if (takes(groups, Together.MIX) && batches.mixes() == 1) {
            limits.add(ONE_MIX.with());
        }
        if (takes(groups, Together.OVEN_LOAD) && batches.loads() == 1) {
            limits.add(ONE_LOAD.with());
        }
        return limits;
    }

    private static <T> T named(List<T> all, Function<T, String> name, String wanted, String what) {
        return all.stream()
                .filter(one -> name.apply(one).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new PlanException("The plan has no %s '%s' among %s."
                        .formatted(
                                what,
                                wanted,
                                String.join(", ", all.stream().map(name).toList()))));
    }

    private static boolean takes(List<PlannedGroup> groups, Together kind) {
        return groups.stream().anyMatch(group -> group.together().contains(kind));
    }

    private static void requireGroups(List<PlannedGroup> groups) {
        if (groups.size() < 2) {
            throw new PlanException(
                    "A plan compares at least two groups: a treated one and its control.");
        }
        List<String> names = groups.stream().map(PlannedGroup::name).toList();
        if (new HashSet<>(names).size() < groups.size()) {
            throw new PlanException("Each group of a plan has a name of its own.");
        }
        long controls =
                groups.stream().filter(group -> group.role() == Role.CONTROL).count();
        if (controls != 1) {
            throw new PlanException(
                    "A plan has one control that all groups are held against, not %s."
                            .formatted(controls));
        }
    }

    private static void requireSeries(List<Series> series, int groups) {
        if (series.isEmpty()) {
            throw new PlanException("A plan needs specimens: say of which shape, for which test.");
        }
        if (new HashSet<>(series.stream().map(Series::name).toList()).size() < series.size()) {
            throw new PlanException("Each kind of specimen of a plan has a name of its own.");
        }
        long specimens =
                (long) groups * series.stream().mapToInt(Series::perGroup).sum();
        if (specimens > MOST_SPECIMENS) {
            throw new PlanException("A plan has from 1 specimen per group to %s in all, not %s."
                    .formatted(MOST_SPECIMENS, specimens));
        }
    }

    private static void requireEach(
            Series series, List<PlannedGroup> groups, Together kind, int batches, String words) {
        if (takes(groups, kind) && series.perGroup() < batches) {
            throw new PlanException(
                    "%s specimens per group can't be in each of %s %s: take fewer, so that every one holds part of every group."
                            .formatted(series.perGroup(), batches, words));
        }
    }

    private static void requireEveryGroupInEveryRun(Series series, int runs) {
        if (series.perGroup() < runs) {
            throw new PlanException(
                    "%s specimens per group can't be in each of %s print runs: take fewer runs, so that every run holds every group."
                            .formatted(series.perGroup(), runs));
        }
    }

    private static void requireRunsOfEachGroup(List<PlannedGroup> groups, Series series, int runs) {
        int needed = FEWEST_RUNS_PER_GROUP * groups.size();
        if (runs < needed) {
            throw new PlanException(
                    "With %s print %s a treatment can't be told from the run it was printed in: print at least %s runs, two for each group in turn, and the run is then the unit."
                            .formatted(runs, runs == 1 ? "run" : "runs", needed));
        }
        if (runs % groups.size() != 0) {
            throw new PlanException(
                    "%s print runs can't be shared out evenly among %s groups: take %s."
                            .formatted(
                                    runs,
                                    groups.size(),
                                    (runs / groups.size() + 1) * groups.size()));
        }
        if (series.perGroup() < runs / groups.size()) {
            throw new PlanException("%s specimens per group can't fill %s print runs of each group."
                    .formatted(series.perGroup(), runs / groups.size()));
        }
    }
}
