package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.assumption.Outliers;
import org.twinbar.statistics.assumption.Outliers.Side;
import org.twinbar.statistics.assumption.Outliers.Suspect;

/**
 * The specimen of a group that lies so far from its fellows that chance does so one time in twenty
 * or less, by Grubbs's test; it is named, never dropped.
 *
 * <p>With five specimens it sees gross errors only, and two bad ones hide each other. Source:
 * {@link Outliers#grubbs}; METHODS.md I.5.
 */
final class Doubts {

    private static final double ALPHA_TWO_SIDED = 0.05;
    private static final int FEWEST = 3;

    private Doubts() {}

    /** Returns the doubted specimen of a group, where there is one. */
    static Optional<Observation> doubted(Sample sample) {
        double[] values = sample.values();
        if (values.length < FEWEST) {
            return Optional.empty();
        }
        Suspect suspect = Outliers.grubbs(values, Side.EITHER, ALPHA_TWO_SIDED);
        return suspect.isBeyondChance()
                ? Optional.of(sample.numbers().get(suspect.index()))
                : Optional.empty();
    }
}
