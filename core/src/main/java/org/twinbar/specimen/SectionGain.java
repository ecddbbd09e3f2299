package org.twinbar.specimen;

/**
 * What the added section alone should give, as a ratio, with its standard uncertainty.
 *
 * @param ratio coated over bare, R
 * @param standardUncertainty of R
 * @param degreesOfFreedom of that uncertainty; ∞ where it is known
 */
public record SectionGain(double ratio, double standardUncertainty, double degreesOfFreedom) {

    /** @throws IllegalArgumentException unless ratio > 0 and u ≥ 0, both finite, and df > 0 */
    public SectionGain {
        Sizes.requirePositive(ratio, "expected ratio");
        if (!(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The uncertainty of the expected ratio must be zero or more, not %s."
                            .formatted(standardUncertainty));
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "The degrees of freedom of the expected ratio must be above zero, not %s."
                            .formatted(degreesOfFreedom));
        }
    }

    /**
     * The gain of a coat, uncertain by what is not known of its film and moduli.
     *
     * <p>u(R) = (R − 1)·√(r_t² + r_Ec² + r_Es²): the gain goes nearly with thickness and with the
     * ratio of moduli. Good for films thin against the bar. Source: METHODS.md H.
     *
     * @param ratio R, {@link CoatedSection#axialRatio()} or {@link CoatedSection#bendingRatio()}
     * @param relativeFilm r_t, standard uncertainty of the film thickness over it
     * @param relativeFilmModulus r_Ec, likewise of the film's modulus
     * @param relativeCoreModulus r_Es, likewise of the core's modulus
     * @throws IllegalArgumentException unless all are zero or more and finite, and ratio > 0
     */
    public static SectionGain of(
            double ratio,
            double relativeFilm,
            double relativeFilmModulus,
            double relativeCoreModulus) {
        double squares = relativeFilm * relativeFilm
                + relativeFilmModulus * relativeFilmModulus
                + relativeCoreModulus * relativeCoreModulus;
        return new SectionGain(
                ratio, Math.abs(ratio - 1) * Math.sqrt(squares), Double.POSITIVE_INFINITY);
    }
}
