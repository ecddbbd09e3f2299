package org.twinbar.decision;

/** The default interval of one kind of effect. */
interface Calculation {

    /**
     * Returns the effect of two groups; where the data cannot give an interval, the reason stands
     * in place of its ends.
     *
     * @throws QuestionException if the effect is no sensible question of these values
     */
    Found found(Sample treated, Sample control);
}
