package org.twinbar.specimen;

/**
 * A rectangular bar with a film on one wide face, as it comes from brushing one side.
 *
 * <p>Transformed section: ȳ = ΣE·A·y/ΣE·A from the bare face, EI = ΣE(I + A(y − ȳ)²). Source:
 * METHODS.md H.
 *
 * @param width b₀ (mm)
 * @param height h₀ of the core (mm)
 * @param film t (mm)
 * @param coreModulus E_s (MPa)
 * @param filmModulus E_c (MPa)
 */
public record OneSidedFilm(
        double width, double height, double film, double coreModulus, double filmModulus) {

    /** @throws IllegalArgumentException unless all are above zero and finite */
    public OneSidedFilm {
        Sizes.requirePositive(width, "width (mm)");
        Sizes.requirePositive(height, "height (mm)");
        Sizes.requirePositive(film, "film thickness (mm)");
        Sizes.requirePositive(coreModulus, "modulus of the core (MPa)");
        Sizes.requirePositive(filmModulus, "modulus of the film (MPa)");
    }

    /** ȳ, where the bar keeps its length in bending, from the bare face (mm). */
    public double neutralAxis() {
        double core = coreModulus * width * height;
        double coat = filmModulus * width * film;
        return (core * height / 2 + coat * (height + film / 2)) / (core + coat);
    }

    /** EI (N·mm²). */
    public double bendingStiffness() {
        double axis = neutralAxis();
        return coreModulus * secondMoment(height, height / 2 - axis)
                + filmModulus * secondMoment(film, height + film / 2 - axis);
    }

    /** EI over that of the bare bar. */
    public double bendingRatio() {
        return bendingStiffness() / (coreModulus * secondMoment(height, 0));
    }

    /** b·t³/12 + b·t·d² for a layer whose middle lies d off the axis. */
    private double secondMoment(double thickness, double off) {
        return width * thickness * thickness * thickness / 12 + width * thickness * off * off;
    }
}
