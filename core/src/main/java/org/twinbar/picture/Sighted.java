package org.twinbar.picture;

/**
 * What one look at a picture gave.
 *
 * @param value in pixels, or in degrees for an angle
 * @param standardUncertainty from the steps of its places, in the same unit
 */
public record Sighted(double value, double standardUncertainty) {

    /** @throws IllegalArgumentException unless the value is finite and the uncertainty ≥ 0 */
    public Sighted {
        if (!Double.isFinite(value) || !(standardUncertainty >= 0)) {
            throw new IllegalArgumentException(
                    "%s ± %s is nothing that was seen".formatted(value, standardUncertainty));
        }
    }
}
