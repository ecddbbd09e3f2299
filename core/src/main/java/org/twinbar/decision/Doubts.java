package org.twinbar.decision;

import java.util.List;
import org.twinbar.statistics.assumption.Outliers;
import org.twinbar.statistics.assumption.Outliers.Side;
import org.twinbar.statistics.assumption.Outliers.Suspect;

/**
 * The specimens of a group that lie so far from their fellows that chance puts one there in one
 * group of twenty or fewer; they are named, never dropped.
 *
 * <p>Grubbs's test sees one, and two odd ones hide each other from it; from ten specimens on the
 * generalized extreme studentized deviate looks for as many as one in five. With five specimens
 * either sees gross errors only. Sources: {@link Outliers#grubbs}, {@link Outliers#generalized};
 * METHODS.md I.5.
 */
final class Doubts {

    private static final double ALPHA_TWO_SIDED = 0.05;
    private static final int FEWEST = 3;
    private static final int FEWEST_FOR_SEVERAL = 10;
    private static final int ONE_IN = 5;

    private Doubts() {}

    /** Returns the doubted specimens of a group, the farthest first. */
    static List<Observation> doubted(Sample sample) {
        double[] values = sample.values();
        if (values.length < FEWEST) {
            return List.of();
        }
        List<Suspect> suspects = values.length < FEWEST_FOR_SEVERAL
                ? List.of(Outliers.grubbs(values, Side.EITHER, ALPHA_TWO_SIDED))
                : Outliers.generalized(values, values.length / ONE_IN, ALPHA_TWO_SIDED);
        return suspects.subList(0, Outliers.beyondChance(suspects)).stream()
                .map(suspect -> sample.numbers().get(suspect.index()))
                .toList();
    }
}
