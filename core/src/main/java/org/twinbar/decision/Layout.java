package org.twinbar.decision;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * How the groups lie over print runs, mixes or oven loads; it decides what was repeated.
 *
 * <p>Where no block holds both groups the block is what was treated: bars of one run are repeats of
 * one another and say nothing of the next run. Source: METHODS.md I.6 (pseudo-replication).
 */
enum Layout {
    /** No blocks are told. */
    PLAIN,
    /** At least one block holds both groups; the treatment is seen within blocks. */
    CROSSED,
    /** Each group has blocks of its own, two or more: blocks are what was repeated. */
    SEPARATE,
    /** A group has one block of its own, so that the treatment can't be told from it. */
    CONFOUNDED,
    /** The treated alone have blocks, several mixes say: the mixes are what was repeated. */
    TREATED_IN_SEVERAL,
    /** The treated alone have blocks, and it is one: the verdict is about this mix. */
    TREATED_IN_ONE;

    /** Returns whether blocks are what was repeated, their specimens repeats of one another. */
    boolean countsBlocks() {
        return this == SEPARATE || this == TREATED_IN_SEVERAL;
    }

    static Layout of(Sample treated, Sample control) {
        Set<String> ours = names(treated);
        Set<String> others = names(control);
        if (ours.isEmpty()) {
            return PLAIN;
        }
        if (others.isEmpty()) {
            return ours.size() > 1 ? TREATED_IN_SEVERAL : TREATED_IN_ONE;
        }
        Set<String> both = new TreeSet<>(ours);
        both.retainAll(others);
        if (!both.isEmpty()) {
            return ours.size() == 1 && others.size() == 1 ? PLAIN : CROSSED;
        }
        return Math.min(ours.size(), others.size()) > 1 ? SEPARATE : CONFOUNDED;
    }

    /** Whether means of what was repeated are compared, with nothing else in the model. */
    boolean comparesMeansAlone() {
        return this == PLAIN || this == SEPARATE || this == TREATED_IN_ONE;
    }

    /** Returns how many blocks hold specimens of both groups. */
    static int holdingBoth(Sample treated, Sample control) {
        Set<String> both = names(treated);
        both.retainAll(names(control));
        return both.size();
    }

    /**
     * Returns whether one group alone lies over several blocks, with specimens that repeat each
     * other.
     */
    static boolean severalBlocks(Sample sample) {
        return names(sample).size() > 1;
    }

    /** Returns what the blocks are called, such as {@code print run}. */
    static String kind(Sample sample) {
        return first(sample).map(Block::kind).orElse("block");
    }

    static Optional<Block> first(Sample sample) {
        return sample.observations().stream()
                .map(Observation::block)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Set<String> names(Sample sample) {
        List<Observation> all = sample.observations();
        return all.stream()
                .map(Observation::block)
                .flatMap(Optional::stream)
                .map(Block::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
