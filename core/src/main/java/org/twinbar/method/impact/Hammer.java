package org.twinbar.method.impact;

/**
 * A pendulum hammer: what it swings with and how long its ideal twin is.
 *
 * @param momentNm M_H = m·g·l_c (N·m), above 0
 * @param reducedLengthM L_P, the length of the string pendulum that swings in the same time (m),
 *     above 0
 */
public record Hammer(double momentNm, double reducedLengthM) {

    /** Conventional acceleration of free fall (m/s²), CGPM 1901. */
    public static final double G = 9.80665;

    public Hammer {
        if (!(momentNm > 0) || !(reducedLengthM > 0)) {
            throw new IllegalArgumentException(
                    "a hammer needs a moment and a reduced length above 0, not %s N·m and %s m"
                            .formatted(momentNm, reducedLengthM));
        }
    }

    /**
     * Returns the hammer of a slender rod from the pivot on, with a bob that is small against it.
     *
     * <pre>M_H = g·(m_r·l/2 + m_b·r_b),  I = m_r·l²/3 + m_b·r_b²,  L_P = I·g/M_H</pre>
     *
     * <p>Source: METHODS C.6, elementary mechanics.
     *
     * @param rodKg m_r, 0 or more
     * @param rodM l, above 0
     * @param bobKg m_b, above 0
     * @param bobAtM r_b, from the pivot, above 0
     * @throws IllegalArgumentException where moment or reduced length is not above 0
     */
    public static Hammer ofRodAndBob(double rodKg, double rodM, double bobKg, double bobAtM) {
        double moment = G * (rodKg * rodM / 2 + bobKg * bobAtM);
        double inertia = rodKg * rodM * rodM / 3 + bobKg * bobAtM * bobAtM;
        return new Hammer(moment, inertia * G / moment);
    }

    /**
     * Returns the reduced length (m) from timed small swings.
     *
     * <pre>L_P = g·T²/(4π²),  T = T_measured / (1 + θ²/16 + 11θ⁴/3072)</pre>
     *
     * <p>θ is the amplitude; the series is good to 1e-6 up to 20°. Source: METHODS C.1.
     *
     * @param periodS T_measured, one full swing to and fro (s)
     * @param amplitudeDeg θ, the mean over the swings (°)
     */
    public static double reducedLength(double periodS, double amplitudeDeg) {
        double small = periodS / amplitudeFactor(amplitudeDeg);
        return G * small * small / (4 * Math.PI * Math.PI);
    }

    /** Returns by how much a swing of an amplitude (°) takes longer than a small one. */
    static double amplitudeFactor(double amplitudeDeg) {
        double square = StrictMath.toRadians(amplitudeDeg) * StrictMath.toRadians(amplitudeDeg);
        return 1 + square / 16 + 11 * square * square / 3072;
    }

    /** Returns the period of small swings: T = 2π·√(L_P/g) (s). */
    public double periodS() {
        return 2 * Math.PI * Math.sqrt(reducedLengthM / G);
    }

    /** Returns the moment of inertia about the pivot: I = M_H·L_P/g (kg·m²). */
    public double inertia() {
        return momentNm * reducedLengthM / G;
    }

    /** Returns the energy at the lowest point: E₀ = M_H·(1 − cos α) (J). */
    public double availableJ(double releaseDeg) {
        return absorbedJ(releaseDeg, 0);
    }

    /** Returns the energy that is missing from a rise: W = M_H·(cos β − cos α) (J). */
    public double absorbedJ(double releaseDeg, double riseDeg) {
        return absorbedJ(momentNm, releaseDeg, riseDeg);
    }

    /**
     * Returns the energy that is missing from a rise.
     *
     * <pre>W = M_H·(cos β − cos α)</pre>
     *
     * <p>Source: METHODS C.1.
     *
     * @param momentNm M_H (N·m)
     * @param releaseDeg α from hanging (°)
     * @param riseDeg β from hanging (°)
     */
    static double absorbedJ(double momentNm, double releaseDeg, double riseDeg) {
        return momentNm * (cos(riseDeg) - cos(releaseDeg));
    }

    /** Returns the speed at a radius (m) as the hammer passes its lowest point (m/s). */
    public double speed(double releaseDeg, double radiusM) {
        return radiusM * Math.sqrt(2 * G * (1 - cos(releaseDeg)) / reducedLengthM);
    }

    /** Returns the height (m) that a speed (m/s) takes to fall from: v²/(2g). */
    public static double fallHeight(double speed) {
        return speed * speed / (2 * G);
    }

    static double cos(double degrees) {
        return StrictMath.cos(StrictMath.toRadians(degrees));
    }
}
