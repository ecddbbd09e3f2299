package org.twinbar.method.leak;

/**
 * Water at 20 °C: how hard a head presses, and what a pore does about it.
 *
 * <p>Source: METHODS E; the laws of Hagen and Poiseuille and of Young and Laplace for a round pore.
 */
final class Water {

    private static final double G = 9.80665;

    /** kg/m³. */
    static final double DENSITY = 998.2;

    /** Pa·s. */
    static final double VISCOSITY = 1.002e-3;

    /** Surface tension (N/m). */
    static final double TENSION = 0.0728;

    private Water() {}

    /** Returns the pressure (Pa) under a head: p = ρ·g·H. */
    static double pressure(double headM) {
        return DENSITY * G * headM;
    }

    /**
     * Returns the flow (m³/s) through a round pore that is wetted: Q = π·d⁴·p/(128·η·L).
     *
     * @param diameterM d
     * @param wallM L
     * @param pressurePa p
     */
    static double flow(double diameterM, double wallM, double pressurePa) {
        double square = diameterM * diameterM;
        return Math.PI * square * square * pressurePa / (128 * VISCOSITY * wallM);
    }

    /** Returns the diameter (m) of the one round pore that lets a flow (m³/s) through. */
    static double poreFor(double flow, double wallM, double pressurePa) {
        double square = Math.sqrt(128 * VISCOSITY * wallM * flow / (Math.PI * pressurePa));
        return Math.sqrt(square);
    }

    /**
     * Returns the pressure (Pa) that a dry pore withstands whose wall repels water: 4γ·|cos θ|/d; 0
     * where the wall takes water in.
     *
     * @param diameterM d
     * @param contactDeg θ, above 90° where water is repelled
     */
    static double barrier(double diameterM, double contactDeg) {
        double cosine = StrictMath.cos(StrictMath.toRadians(contactDeg));
        return cosine < 0 ? -4 * TENSION * cosine / diameterM : 0;
    }
}
