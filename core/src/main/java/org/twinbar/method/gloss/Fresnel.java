package org.twinbar.method.gloss;

/** How much light a perfectly smooth, clear surface throws back at the mirror's angle. */
final class Fresnel {

    /** Refractive index of the black glass that reads 100 (ISO 2813, at 587.6 nm). */
    static final double BLACK_GLASS = 1.567;

    private static final double FULL_SCALE = 100;

    private Fresnel() {}

    /**
     * Returns the share of unpolarised light that a smooth surface throws back.
     *
     * <pre>R = ½·[((cos θ − w)/(cos θ + w))² + ((n²·cos θ − w)/(n²·cos θ + w))²],
     * w = √(n² − sin² θ)</pre>
     *
     * <p>1 at grazing light, ((n − 1)/(n + 1))² at 0°. Holds for surfaces that take up no light.
     * Source: M. Born and E. Wolf, Principles of Optics, section 1.5.
     *
     * @param index n, refractive index, 1 or more
     * @param degrees θ, between the light and the surface's upright, 0 to 90
     * @throws IllegalArgumentException where n &lt; 1 or θ is not within 0 to 90
     */
    static double reflectance(double index, double degrees) {
        if (!(index >= 1) || !(degrees >= 0 && degrees <= 90)) {
            throw new IllegalArgumentException(
                    "refractive index %s must be 1 or more, the angle %s° within 0 to 90"
                            .formatted(index, degrees));
        }
        double cosine = StrictMath.cos(StrictMath.toRadians(degrees));
        double square = index * index;
        double inside = Math.sqrt(square - 1 + cosine * cosine);
        double upright = (cosine - inside) / (cosine + inside);
        double flat = (square * cosine - inside) / (square * cosine + inside);
        return (upright * upright + flat * flat) / 2;
    }

    /** Returns what a smooth surface of a refractive index reads at an angle (GU). */
    static double gloss(double index, double degrees) {
        return FULL_SCALE * reflectance(index, degrees) / reflectance(BLACK_GLASS, degrees);
    }
}
