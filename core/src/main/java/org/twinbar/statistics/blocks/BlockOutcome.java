package org.twinbar.statistics.blocks;

import java.util.List;
import org.twinbar.statistics.Estimate;

/** What blocks tell of a treatment's effect. */
public sealed interface BlockOutcome {

    /**
     * The effect: treated less control.
     *
     * @param estimate with its interval, on Kenward and Roger's degrees of freedom
     * @param standardError adjusted by Kenward and Roger
     * @param p two-sided probability of an estimate as far from zero, if there is no effect
     * @param components the variances, the residual last
     */
    record Effect(Estimate estimate, double standardError, double p, List<Component> components)
            implements BlockOutcome {

        public Effect {
            components = List.copyOf(components);
        }
    }

    /**
     * No answer.
     *
     * @param reason why, as part of a sentence
     */
    record Undetermined(String reason) implements BlockOutcome {}

    /**
     * A variance of the model.
     *
     * @param name what shares it: runs, the treatment from run to run, units, mixes, or the
     *     residual
     * @param variance in the values' unit squared; 0 where no more was seen than the others
     *     explain, or less
     * @param levels in how many runs, units, mixes or specimens it was seen
     */
    record Component(String name, double variance, int levels) {

        /** Whether no scatter was seen beyond what the other variances explain. */
        public boolean isZero() {
            return variance == 0;
        }
    }
}
