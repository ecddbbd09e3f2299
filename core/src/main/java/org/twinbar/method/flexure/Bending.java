package org.twinbar.method.flexure;

/**
 * A rectangular bar on two supports, loaded in the middle; N, mm and MPa.
 *
 * @param spanMm L
 * @param widthMm b
 * @param thicknessMm h, in the direction of the load
 */
record Bending(double spanMm, double widthMm, double thicknessMm) {

    /** Deflection at which ISO 178 agrees to give a stress, in thicknesses. */
    static final double CONVENTIONAL = 1.5;

    /** Returns the stress at the outer fibre: σ = 3FL/(2bh²) (ISO 178:2019, 9.1). */
    double stress(double forceN) {
        return 3 * forceN * spanMm / (2 * widthMm * thicknessMm * thicknessMm);
    }

    /** Returns the strain of the outer fibre: ε = 6sh/L² (ISO 178:2019, 9.2). */
    double strain(double deflectionMm) {
        return deflectionMm * strainPerMm();
    }

    double strainPerMm() {
        return 6 * thicknessMm / (spanMm * spanMm);
    }

    /** Returns the deflection (mm) at a strain. */
    double deflection(double strain) {
        return strain / strainPerMm();
    }

    /** Returns the modulus (MPa) from a slope (N/mm): E = L³m/(4bh³) (ISO 178:2019, 9.3). */
    double modulus(double slope) {
        return spanMm
                * spanMm
                * spanMm
                * slope
                / (4 * widthMm * thicknessMm * thicknessMm * thicknessMm);
    }

    double conventionalDeflection() {
        return CONVENTIONAL * thicknessMm;
    }

    /**
     * Returns by how much the stress at a long deflection is larger than the short formula's.
     *
     * <pre>1 + 6(D/L)² − 4(h/L)(D/L)</pre>
     *
     * <p>Source: ASTM D790, for spans above 16 h (from memory; METHODS B).
     */
    double longDeflectionFactor(double deflectionMm) {
        double share = deflectionMm / spanMm;
        return 1 + 6 * share * share - 4 * thicknessMm / spanMm * share;
    }

    /** Returns the speed (mm/min) of the nose for a strain rate (1/min): v = r·L²/(6h). */
    double speed(double strainRate) {
        return strainRate / strainPerMm();
    }
}
