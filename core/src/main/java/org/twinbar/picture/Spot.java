package org.twinbar.picture;

/**
 * A place on a picture, counted in its pixels from the upper left corner.
 *
 * @param xPx to the right (px)
 * @param yPx downwards (px)
 * @param stepPx by how much it could be moved at least when it was placed (px): a pixel, or more
 *     where the picture was shown smaller than it is
 */
public record Spot(double xPx, double yPx, double stepPx) {

    /** A step leaves anything within it equally likely: JCGM 100:2008, F.2.2.1. */
    private static final double STEP_TO_STANDARD = 1 / Math.sqrt(12);

    /**
     * @throws IllegalArgumentException unless both coordinates are finite and the step is above 0
     *     and finite
     */
    public Spot {
        if (!Double.isFinite(xPx) || !Double.isFinite(yPx)) {
            throw new IllegalArgumentException(
                    "a place on a picture is %s, %s px, must be finite".formatted(xPx, yPx));
        }
        if (!(stepPx > 0 && stepPx < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the step of a place is %s px, must be above 0".formatted(stepPx));
        }
    }

    /** Returns the standard uncertainty of each coordinate (px), step/√12. */
    public double standardUncertaintyPx() {
        return stepPx * STEP_TO_STANDARD;
    }
}
