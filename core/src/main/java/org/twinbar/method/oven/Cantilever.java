package org.twinbar.method.oven;

/**
 * A rectangular bar clamped at one end, loaded at its tip; N, mm and MPa.
 *
 * @param armMm L, from the clamp to the load
 * @param widthMm b
 * @param thicknessMm h, in the direction of the load
 */
record Cantilever(double armMm, double widthMm, double thicknessMm) {

    /** Conventional acceleration of free fall, in N/g: 9.80665 m/s² (CGPM 1901). */
    static final double NEWTON_PER_GRAM = 9.80665e-3;

    /** Returns whether there is a section left once ridges were taken off its sides. */
    boolean isThere() {
        return widthMm > 0 && thicknessMm > 0;
    }

    private double sectionModulus() {
        return widthMm * thicknessMm * thicknessMm / 6;
    }

    /** Returns the stress (MPa) at the clamp from a force (N) at the tip: σ = 6PL/(bh²). */
    double stress(double forceN) {
        return forceN * armMm / sectionModulus();
    }

    /** Returns the stress (MPa) at the clamp from a weight (N/mm) along it: σ = 3wL²/(bh²). */
    double stressOfWeight(double newtonPerMm) {
        return newtonPerMm * armMm * armMm / (2 * sectionModulus());
    }

    /** Returns the tip's deflection (mm) in a material of a modulus (MPa): δ = 4PL³/(Ebh³). */
    double deflection(double forceN, double modulusMPa) {
        return 4
                * forceN
                * armMm
                * armMm
                * armMm
                / (modulusMPa * widthMm * thicknessMm * thicknessMm * thicknessMm);
    }

    /** Returns the tip's deflection (mm) from a weight (N/mm) along it: δ = 3wL⁴/(2Ebh³). */
    double deflectionOfWeight(double newtonPerMm, double modulusMPa) {
        return deflection(newtonPerMm * armMm, modulusMPa) * 3 / 8;
    }

    /** Returns the surface strain at the clamp from the tip's deflection: ε = 3hδ/(2L²). */
    double strain(double deflectionMm) {
        return 3 * thicknessMm * deflectionMm / (2 * armMm * armMm);
    }

    /** Returns the deflection (mm) for a surface strain at the clamp: δ = 2L²ε/(3h). */
    double deflectionFor(double strain) {
        return 2 * armMm * armMm * strain / (3 * thicknessMm);
    }

    /** Returns the mass (g) at the tip for a stress (MPa): m = σbh²/(6gL). */
    double tipMass(double stressMPa) {
        return stressMPa * sectionModulus() / armMm / NEWTON_PER_GRAM;
    }
}
