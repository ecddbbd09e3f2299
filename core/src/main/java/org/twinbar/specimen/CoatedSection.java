package org.twinbar.specimen;

/**
 * A rectangular bar with a film of even thickness on all four faces.
 *
 * <p>A coated bar is stiffer and carries more because there is more of it; here is by how much the
 * added section alone explains that. The film is bonded, the core solid: for sparse infill the
 * measured stiffness of untreated bars belongs in place of E_s·A₀ and E_s·I₀. Shrinkage stresses
 * and resin that soaked into the core are left aside. Source: METHODS.md H (beams of two materials,
 * transformed section: S. P. Timoshenko, Strength of materials I, 1955, chapter 8, from memory).
 *
 * @param width b₀ of the core (mm)
 * @param height h₀ of the core, in the direction of bending (mm)
 * @param film t, thickness of the film on each face (mm)
 * @param coreModulus E_s (MPa)
 * @param filmModulus E_c (MPa)
 */
public record CoatedSection(
        double width, double height, double film, double coreModulus, double filmModulus) {

    /** @throws IllegalArgumentException unless all are above zero and finite */
    public CoatedSection {
        Sizes.requirePositive(width, "width (mm)");
        Sizes.requirePositive(height, "height (mm)");
        Sizes.requirePositive(film, "film thickness (mm)");
        Sizes.requirePositive(coreModulus, "modulus of the core (MPa)");
        Sizes.requirePositive(filmModulus, "modulus of the film (MPa)");
    }

    /** A₀ = b₀·h₀ (mm²). */
    public double coreArea() {
        return width * height;
    }

    /** A₁ = (b₀ + 2t)(h₀ + 2t) (mm²). */
    public double coatedArea() {
        return (width + 2 * film) * (height + 2 * film);
    }

    /** A_c = A₁ − A₀ (mm²). */
    public double filmArea() {
        return 2 * film * (width + height + 2 * film);
    }

    /** R_A = 1 + (E_c/E_s)·A_c/A₀: how much stiffer in tension the coated bar is. */
    public double axialRatio() {
        return 1 + filmModulus / coreModulus * filmArea() / coreArea();
    }

    /** R_I = 1 + (E_c/E_s)·(I₁ − I₀)/I₀: how much stiffer in bending the coated bar is. */
    public double bendingRatio() {
        return bendingStiffness() / (coreModulus * coreSecondMoment());
    }

    /** EI = E_s·I₀ + E_c(I₁ − I₀), I₀ = b₀h₀³/12, I₁ = (b₀ + 2t)(h₀ + 2t)³/12 (N·mm²). */
    public double bendingStiffness() {
        return coreModulus * coreSecondMoment()
                + filmModulus * (coatedSecondMoment() - coreSecondMoment());
    }

    /** The modulus that a pull shows if the section before coating is put in (MPa). */
    public double axialModulusOnOriginal() {
        return coreModulus * axialRatio();
    }

    /** The modulus that a pull shows if the coated section is put in (MPa). */
    public double axialModulusOnCoated() {
        return coreModulus * axialRatio() * coreArea() / coatedArea();
    }

    /** The modulus that bending shows if the section before coating is put in (MPa). */
    public double flexuralModulusOnOriginal() {
        return bendingStiffness() / coreSecondMoment();
    }

    /** The modulus that bending shows if the coated section is put in (MPa). */
    public double flexuralModulusOnCoated() {
        return bendingStiffness() / coatedSecondMoment();
    }

    /**
     * M·E_s·(h₀/2)/EI: stress at the surface of the core (MPa).
     *
     * @param moment M (N·mm)
     */
    public double coreStress(double moment) {
        return moment * coreModulus * height / 2 / bendingStiffness();
    }

    /**
     * M·E_c·(h₀/2 + t)/EI: stress at the surface of the film (MPa).
     *
     * @param moment M (N·mm)
     */
    public double filmStress(double moment) {
        return moment * filmModulus * (height / 2 + film) / bendingStiffness();
    }

    /**
     * What the coated bar carries in tension.
     *
     * @param coreStrength σ_s* (MPa)
     * @param filmStrength σ_c* (MPa)
     * @throws IllegalArgumentException unless both are above zero and finite
     */
    public Loads loads(double coreStrength, double filmStrength) {
        Sizes.requirePositive(coreStrength, "strength of the core (MPa)");
        Sizes.requirePositive(filmStrength, "strength of the film (MPa)");
        double strain = Math.min(coreStrength / coreModulus, filmStrength / filmModulus);
        return new Loads(
                strain * (coreModulus * coreArea() + filmModulus * filmArea()),
                coreStrength * coreArea(),
                coreStrength * coreArea() + filmStrength * filmArea());
    }

    /**
     * Loads of a coated bar in tension (N).
     *
     * @param firstCrack ε*(E_s·A₀ + E_c·A_c), ε* the strain at which the first of the two breaks
     * @param coreAlone σ_s*·A₀, after the film has cracked without notching the core
     * @param bound σ_s*·A₀ + σ_c*·A_c, reached only where both break at one strain
     */
    public record Loads(double firstCrack, double coreAlone, double bound) {
        /** The load that is predicted: the larger of first crack and core alone. */
        public double predicted() {
            return Math.max(firstCrack, coreAlone);
        }
    }

    private double coreSecondMoment() {
        return width * height * height * height / 12;
    }

    private double coatedSecondMoment() {
        double thick = height + 2 * film;
        return (width + 2 * film) * thick * thick * thick / 12;
    }
}
