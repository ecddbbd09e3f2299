package org.twinbar.decision;

/** What a treatment does to a property, as a number. */
public enum Effect {
    /** Mean of the treated over mean of the control. */
    RATIO("ratio", 1),
    /** Mean of the treated minus mean of the control: for scales without a true zero. */
    DIFFERENCE("difference", 0),
    /** Share of the treated that are "yes" minus share of the control. */
    SHARE("share", 0),
    /** Hazard of the treated over hazard of the control: how fast it happens. */
    RATE("rate", 1),
    /** Chance that a treated specimen lies above one of the control, ties halved. */
    RANK("rank", 0.5),
    /** What a stated share of the treated parts reaches; it has no control. */
    LEVEL("level", 0);

    private final String word;
    private final double none;

    Effect(String word, double none) {
        this.word = word;
        this.none = none;
    }

    public String word() {
        return word;
    }

    /**
     * Returns the effect's value for no change.
     *
     * @throws IllegalStateException for a level, which has no control to differ from
     */
    public double none() {
        if (this == LEVEL) {
            throw new IllegalStateException(
                    "a level is held against itself, not against no change");
        }
        return none;
    }

    /** Returns whether sizes of this effect are shares of the control's value or of all parts. */
    public boolean sizedInPercent() {
        return this != DIFFERENCE && this != LEVEL;
    }

    /** Returns whether it goes by how far values lie apart, not by their order alone. */
    boolean readsDistances() {
        return this != RATE && this != RANK;
    }

    /** Returns the effect that a change of this size, in this direction, has on this scale. */
    double of(double size, Expectation direction) {
        return direction == Expectation.LOWER ? none - size : none + size;
    }
}
