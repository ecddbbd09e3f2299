package org.twinbar.planning.resolving;

import java.util.OptionalDouble;
import org.twinbar.method.Property;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.Power;

/**
 * The smallest difference between two groups that is found four times in five.
 *
 * @param amount in the property's unit; empty where the scatter hides any
 * @param share of the typical value; empty where that has no true zero, or any is hidden
 */
public record Smallest(OptionalDouble amount, OptionalDouble share) {

    private static final double POWER = 0.8;

    /** On one side: the verdict reads a two-sided interval of 95 %. */
    private static final double ALPHA_ONE_SIDED = 0.025;

    private static final Smallest NOTHING =
            new Smallest(OptionalDouble.of(0), OptionalDouble.of(0));

    /**
     * What scatter and errors leave to be found.
     *
     * <pre>variance of the difference = 2·v + e²,  v = max(s²/n, u²) where s &lt; √3·u, else s²/n
     * </pre>
     *
     * <p>The effect is the one of {@link Power#smallestEffect} for a scatter that gives that
     * variance, with 2n − 2 degrees of freedom: cautious where e, which is known, outweighs the
     * scatter. Sources: METHODS.md J.1 (what readings resolve), I.4.
     *
     * @param property whose scale says whether it is a ratio or a difference
     * @param value typical value
     * @param sd standard deviation of one result, its readings' errors included
     * @param own standard uncertainty of one result from errors of its own
     * @param apart standard uncertainty of the difference from what one group has and the other not
     * @param perGroup specimens per group, 2 or more
     */
    static Smallest of(
            Property property, double value, double sd, double own, double apart, int perGroup) {
        double ofMean = new MeanEstimate(value, sd * sd / perGroup, perGroup - 1.0, perGroup)
                .withResolution(own)
                .variance();
        double scatter = Math.sqrt(perGroup * (ofMean + apart * apart / 2));
        if (scatter == 0) {
            return NOTHING;
        }
        if (property.scale() == Property.Scale.RATIO && value > 0) {
            OptionalDouble ratio = Power.smallestEffect(
                    new PlannedEffect.Ratio(2, 1, scatter / value),
                    perGroup,
                    POWER,
                    ALPHA_ONE_SIDED);
            return ratio.isEmpty()
                    ? new Smallest(OptionalDouble.empty(), OptionalDouble.empty())
                    : new Smallest(
                            OptionalDouble.of((ratio.getAsDouble() - 1) * value),
                            OptionalDouble.of(ratio.getAsDouble() - 1));
        }
        return new Smallest(
                Power.smallestEffect(
                        new PlannedEffect.Difference(1, 0, scatter),
                        perGroup,
                        POWER,
                        ALPHA_ONE_SIDED),
                OptionalDouble.empty());
    }

    /** Returns the amount, or infinity where any is hidden. */
    double orHidden() {
        return amount.orElse(Double.POSITIVE_INFINITY);
    }
}
