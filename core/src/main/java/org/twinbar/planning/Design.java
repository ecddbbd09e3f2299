package org.twinbar.planning;

import java.util.HashSet;
import java.util.List;

/**
 * What is to be dealt out: groups, how many of each, and the print runs that they are made in.
 *
 * @param groups the control and the treated ones, each name once
 * @param perGroup specimens in each group
 * @param runs print runs, mixes or oven loads that they are made in
 * @param changes where what sets the groups apart can be changed
 */
public record Design(List<String> groups, int perGroup, int runs, Changes changes) {

    /** Where a treatment can be changed. */
    public enum Changes {
        /** From specimen to specimen, as a coat can: each run holds all groups. */
        WITHIN_RUNS,
        /**
         * Only from run to run, as a nozzle, a spool or a temperature: each run holds one group.
         */
        BETWEEN_RUNS
    }

    static final int MOST_SPECIMENS = 2000;

    /** One run for a group can't be told from the treatment itself. */
    static final int FEWEST_RUNS_PER_GROUP = 2;

    /**
     * @throws PlanException unless two or more groups, each at least once in every run, can be told
     *     from the runs
     */
    public Design {
        groups = List.copyOf(groups);
        requireGroups(groups);
        if (perGroup < 1 || (long) perGroup * groups.size() > MOST_SPECIMENS) {
            throw new PlanException(
                    "A plan has from 1 specimen per group to %s in all, not %s per group."
                            .formatted(MOST_SPECIMENS, perGroup));
        }
        if (runs < 1) {
            throw new PlanException("A plan has at least 1 print run, not %s.".formatted(runs));
        }
        if (changes == Changes.WITHIN_RUNS) {
            requireEveryGroupInEveryRun(perGroup, runs);
        } else {
            requireRunsOfEachGroup(groups, perGroup, runs);
        }
    }

    private static void requireGroups(List<String> groups) {
        if (groups.size() < 2) {
            throw new PlanException(
                    "A plan compares at least two groups: a treated one and its control.");
        }
        for (String group : groups) {
            if (group.isBlank() || group.indexOf('\n') >= 0 || group.indexOf('\t') >= 0) {
                throw new PlanException("A group needs a name on one line, without tabs.");
            }
        }
        if (new HashSet<>(groups).size() < groups.size()) {
            throw new PlanException("Each group of a plan has a name of its own.");
        }
    }

    private static void requireEveryGroupInEveryRun(int perGroup, int runs) {
        if (perGroup < runs) {
            throw new PlanException(
                    "%s specimens per group can't be in each of %s print runs: take fewer runs, so that every run holds every group."
                            .formatted(perGroup, runs));
        }
    }

    private static void requireRunsOfEachGroup(List<String> groups, int perGroup, int runs) {
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
        if (perGroup < runs / groups.size()) {
            throw new PlanException("%s specimens per group can't fill %s print runs of each group."
                    .formatted(perGroup, runs / groups.size()));
        }
    }
}
