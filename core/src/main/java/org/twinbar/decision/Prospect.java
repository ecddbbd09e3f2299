package org.twinbar.decision;

/** The chance that a further study ends in "supported", if the effect were a certain one. */
interface Prospect {

    /** No study of parts has fewer: {@link org.twinbar.statistics.Power#FEWEST_PER_GROUP}. */
    int FEWEST = 3;

    /**
     * Returns the chance.
     *
     * @param n specimens in each group; blocks, where those are what was repeated
     */
    double supported(int n);

    /** Returns how the chance is reckoned, in the words of a report. */
    String method();

    /**
     * Returns what its specimens come in, for so many of what {@link #supported} counts.
     *
     * @param power that they have
     * @param assuming what is taken for true
     */
    default Needed.Specimens needed(int n, double power, String assuming) {
        return new Needed.Specimens(
                n,
                java.util.Optional.empty(),
                power,
                method(),
                assuming,
                java.util.Optional.empty());
    }
}
