package org.twinbar.method.heatdeflection;

/**
 * A rectangular bar on two supports, loaded in the middle; N, mm, MPa and g.
 *
 * @param spanMm L
 * @param widthMm b
 * @param thicknessMm h, in the direction of the load
 */
record LoadedBar(double spanMm, double widthMm, double thicknessMm) {

    /** Conventional acceleration of free fall, in mN/g: 9.80665 m/s² (CGPM 1901). */
    static final double NEWTON_PER_GRAM = 9.80665e-3;

    /** Returns the force (N) for a stress (MPa) at the surface: F = 2σbh²/(3L) (ISO 75-1). */
    double force(double stressMPa) {
        return 2 * stressMPa * widthMm * thicknessMm * thicknessMm / (3 * spanMm);
    }

    /**
     * Returns the mass (g) to lay on a rod: m = (F − F_gauge)/g − m_rod, below zero where rod and
     * gauge already press with more.
     */
    double addedMass(double stressMPa, double rodMassG, double gaugeForceN) {
        return (force(stressMPa) - gaugeForceN) / NEWTON_PER_GRAM - rodMassG;
    }

    /** Returns the deflection (mm) at which the surface strain has grown: Δs = L²Δε/(600h). */
    double deflection(double strainPercent) {
        return spanMm * spanMm * strainPercent / (600 * thicknessMm);
    }

    /** Returns the surface strain (%) at a deflection (mm): 600hs/L². */
    double strainPercent(double deflectionMm) {
        return 600 * thicknessMm * deflectionMm / (spanMm * spanMm);
    }
}
