package org.twinbar.planning;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** The smallest size at which a chance that grows with it reaches 80 %. */
public final class Threshold {

    /** Nobody reads a smallest effect to more figures. */
    private static final double NEAR = 1e-9;

    private Threshold() {}

    /**
     * Where to look.
     *
     * @param from a size that isn't tried itself
     * @param to the largest size
     * @param near distance to which the size is wanted
     */
    public record Range(double from, double to, double near) {

        /** A range that is halved until the last figure of its end is known. */
        public Range(double from, double to) {
            this(from, to, NEAR * to);
        }
    }

    /**
     * Returns the smallest size, by halving.
     *
     * @param chance that doesn't fall as the size grows
     * @return empty where the largest size has a lower chance too, or the range holds none
     */
    public static OptionalDouble of(DoubleUnaryOperator chance, Range range) {
        double few = range.from();
        double enough = Math.nextDown(range.to());
        if (!(few < enough) || chance.applyAsDouble(enough) < Sizing.USUAL_POWER) {
            return OptionalDouble.empty();
        }
        while (enough - few > range.near()) {
            double middle = few + (enough - few) / 2;
            if (chance.applyAsDouble(middle) < Sizing.USUAL_POWER) {
                few = middle;
            } else {
                enough = middle;
            }
        }
        return OptionalDouble.of(enough);
    }
}
