package org.twinbar.planning;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Specimens that are made alike.
 *
 * @param name on one line, its own within the plan
 * @param role what it is compared as
 * @param treatment what is done to it, in a few words; empty where nothing is
 * @param together what several specimens of it go through at once
 */
public record PlannedGroup(String name, Role role, String treatment, Set<Together> together) {

    /** What a group is compared as. */
    public enum Role {
        /** What the treated groups are held against. */
        CONTROL("control"),
        /** Has the treatment that the claim is about. */
        TREATED("treated"),
        /** Has a part of the treatment, to tell which part did it. */
        FURTHER_CONTROL("further control");

        private final String word;

        Role(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** What several specimens go through at once, so that it can make them alike. */
    public enum Together {
        MIX("mix"),
        OVEN_LOAD("oven load");

        private final String word;

        Together(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** @throws PlanException unless the name stands on one line, without tabs */
    public PlannedGroup {
        if (name.isBlank() || name.indexOf('\n') >= 0 || name.indexOf('\t') >= 0) {
            throw new PlanException("A group needs a name on one line, without tabs.");
        }
        EnumSet<Together> inOrder = EnumSet.noneOf(Together.class);
        inOrder.addAll(together);
        together = Collections.unmodifiableSet(inOrder);
    }

    public static PlannedGroup control(String name) {
        return new PlannedGroup(name, Role.CONTROL, "", Set.of());
    }

    public static PlannedGroup treated(String name, String treatment, Together... together) {
        return new PlannedGroup(name, Role.TREATED, treatment, Set.of(together));
    }

    public static PlannedGroup further(String name, String treatment, Together... together) {
        return new PlannedGroup(name, Role.FURTHER_CONTROL, treatment, Set.of(together));
    }
}
