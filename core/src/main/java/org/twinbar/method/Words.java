package org.twinbar.method;

import java.util.List;

/**
 * A word that is noted on each specimen.
 *
 * @param allowed the words that may stand there; empty where any text may
 * @param mean whether specimens that differ in it may share a mean
 */
public record Words(String name, String label, List<String> allowed, Mean mean) implements Named {

    /** Whether specimens that differ in a word may share a mean. */
    public enum Mean {
        SHARED,
        /** As types of break: a mean over them is of nothing. */
        APART,
        /** As oven loads: what is alike in it was treated together, and may be a block. */
        BLOCK
    }

    public Words {
        allowed = List.copyOf(allowed);
    }

    /** Returns a word in which specimens of one mean may differ. */
    public Words(String name, String label, List<String> allowed) {
        this(name, label, allowed, Mean.SHARED);
    }

    /** Returns this word as one in which the specimens of one mean must be alike. */
    public Words apart() {
        return new Words(name, label, allowed, Mean.APART);
    }

    /** Returns this word as one that names what specimens were treated together in. */
    public Words block() {
        return new Words(name, label, allowed, Mean.BLOCK);
    }

    /** Returns whether it parts specimens, so that groups may be compared within or by it. */
    public boolean parts() {
        return mean != Mean.SHARED;
    }
}
