package org.twinbar.decision;

/** What would settle an open question. */
public sealed interface Needed {

    /**
     * So many specimens.
     *
     * @param perGroup specimens in each group
     * @param power chance that the verdict would be "supported" with them, if the assumption holds
     * @param assuming what the true effect and scatter are taken to be, in words
     */
    record Specimens(int perGroup, double power, String assuming) implements Needed {}

    /** No number of specimens, or none is needed, for this reason. */
    record None(String reason) implements Needed {}
}
