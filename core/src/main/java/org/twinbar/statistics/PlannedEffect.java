package org.twinbar.statistics;

import java.util.OptionalDouble;

/** An effect that a study of two equal groups is to find, against the one that is worth having. */
public sealed interface PlannedEffect {

    /** The effect that is expected. */
    double expected();

    /** The smallest effect worth having; none (0 or 1) where any will do. */
    double worth();

    /** The noncentrality of Student's t with n specimens per group is √n times this. */
    double perRootSpecimen();

    /**
     * The effect, on the side of the expected one, whose {@link #perRootSpecimen} is this; empty
     * where none is: a ratio cannot be told from the worth by more than one over the coefficient of
     * variation.
     */
    OptionalDouble effectOf(double perRootSpecimen);

    /**
     * A difference of means.
     *
     * <p>(expected − worth)/(scatter · √2)
     *
     * @param expected expected difference, in the unit of the scatter
     * @param worth difference worth having
     * @param scatter standard deviation of one specimen, the same in both groups
     */
    record Difference(double expected, double worth, double scatter) implements PlannedEffect {

        /**
         * @throws IllegalArgumentException unless all are finite, expected ≠ worth, and scatter > 0
         */
        public Difference {
            Arguments.requirePositive(scatter, "scatter");
            requireApart(expected, worth);
        }

        @Override
        public double perRootSpecimen() {
            return Math.abs(expected - worth) / (scatter * Math.sqrt(2));
        }

        @Override
        public OptionalDouble effectOf(double perRootSpecimen) {
            return OptionalDouble.of(worth
                    + Math.signum(expected - worth) * perRootSpecimen * scatter * Math.sqrt(2));
        }
    }

    /**
     * A ratio of means with equal coefficients of variation.
     *
     * <p>|θ − m|/(cv · √(θ² + m²)), θ expected, m worth: what Fieller's test of the ratio m sees.
     *
     * @param expected expected ratio θ, 1.15 for 15 % more
     * @param worth ratio worth having m, 1 where any gain will do
     * @param coefficientOfVariation standard deviation of one specimen over the mean, in each group
     */
    record Ratio(double expected, double worth, double coefficientOfVariation)
            implements PlannedEffect {

        /**
         * @throws IllegalArgumentException unless all are above zero and finite, and expected ≠
         *     worth
         */
        public Ratio {
            Arguments.requirePositive(expected, "expected ratio");
            Arguments.requirePositive(worth, "ratio worth having");
            Arguments.requirePositive(coefficientOfVariation, "coefficient of variation");
            requireApart(expected, worth);
        }

        @Override
        public double perRootSpecimen() {
            return Math.abs(expected - worth)
                    / (coefficientOfVariation * Math.sqrt(expected * expected + worth * worth));
        }

        /** Solves (θ − m)² = q(θ² + m²), q = (k · cv)². */
        @Override
        public OptionalDouble effectOf(double perRootSpecimen) {
            double root = perRootSpecimen * coefficientOfVariation;
            double rest = 1 - root * root;
            if (!(rest > 0)) {
                return OptionalDouble.empty();
            }
            double spread = Math.sqrt(1 - rest * rest);
            double up = (1 + spread) / rest;
            return OptionalDouble.of(expected > worth ? worth * up : worth / up);
        }
    }

    private static void requireApart(double expected, double worth) {
        Arguments.requireFinite(expected, "expected effect");
        Arguments.requireFinite(worth, "effect worth having");
        if (expected == worth) {
            throw new IllegalArgumentException("The expected effect is the one worth having, "
                    + worth + ": no number of specimens tells them apart.");
        }
    }
}
