package org.twinbar.uncertainty;

import org.apache.commons.rng.UniformRandomProvider;

/**
 * One error of measurement, with an identity: readings that name it share it.
 *
 * @param identity such as {@code load cell gain} or {@code A07 width resolution}
 * @param reach whether other specimens' readings may name it too
 * @param shape how it is distributed
 * @param standardUncertainty u, zero or more, in the unit of what it moves
 * @param degreesOfFreedom ν above zero, infinite where u is known
 */
public record Source(
        String identity,
        Reach reach,
        Shape shape,
        double standardUncertainty,
        double degreesOfFreedom) {

    /** Whose readings a source moves. */
    public enum Reach {
        /** One specimen's alone, afresh each time. */
        OWN,
        /** All that name it, alike. */
        SHARED
    }

    public Source {
        if (identity.isBlank()) {
            throw new IllegalArgumentException("a source of error needs an identity");
        }
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("standard uncertainty of %s is %s, not zero or more"
                    .formatted(identity, standardUncertainty));
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom of %s are %s, not above 0"
                    .formatted(identity, degreesOfFreedom));
        }
    }

    /** By identity alone, so that a map of sources is as quick as one of names. */
    @Override
    public int hashCode() {
        return identity.hashCode();
    }

    /** Returns a source that one specimen's reading has afresh, its size known. */
    public static Source own(String identity, Shape shape, double standardUncertainty) {
        return new Source(
                identity, Reach.OWN, shape, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /** Returns a source that every reading which names it shares, its size known. */
    public static Source shared(String identity, Shape shape, double standardUncertainty) {
        return new Source(
                identity, Reach.SHARED, shape, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /** Returns an error drawn at random: the shape's draw times the standard uncertainty. */
    double draw(UniformRandomProvider random) {
        return standardUncertainty * shape.draw(random, degreesOfFreedom);
    }
}
