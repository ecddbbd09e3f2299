package org.twinbar.method.impact;

/**
 * What the swing loses without a specimen, found before the test.
 *
 * <p>Angles in degrees from hanging, moments in N·m, energies in J.
 */
final class Friction {

    private static final int HALF_SWINGS = 10;

    private Friction() {}

    /**
     * Returns the energy that one half swing loses to the pointer.
     *
     * <pre>p = M_H·(cos β₁ − cos β₂)</pre>
     *
     * @param first β₁, rise of a swing that took the pointer along
     * @param second β₂, rise of a swing with the pointer left where the first one put it
     */
    static double pointer(double momentNm, double first, double second) {
        return momentNm * (Hammer.cos(first) - Hammer.cos(second));
    }

    /**
     * Returns the energy that one half swing loses to air and bearing.
     *
     * <pre>p′ = M_H·(cos β₃ − cos β₂)/10</pre>
     *
     * @param third β₃, rise after ten more half swings
     */
    static double airAndBearing(double momentNm, double second, double third) {
        return momentNm * (Hammer.cos(third) - Hammer.cos(second)) / HALF_SWINGS;
    }

    /**
     * Returns the loss of a test that rose to an angle, by three readings.
     *
     * <pre>p_β = p·β/β₁ + p′·(α + β)/(α + β₂)</pre>
     *
     * <p>Source: scheme of ISO 148-1 and ISO 13802 as METHODS C.2 has it (the exact wording there
     * is from memory).
     */
    static double byThreeReadings(
            double momentNm,
            double release,
            double rise,
            double first,
            double second,
            double third) {
        return pointer(momentNm, first, second) * rise / first
                + airAndBearing(momentNm, second, third) * (release + rise) / (release + second);
    }

    /**
     * Returns the loss of a test that rose to an angle, by two readings.
     *
     * <pre>E_TC = (E_A − E_B/2)·β/β_max + E_B/2</pre>
     *
     * <p>E_A and E_B are the energies missing from the first and the second free swing, β_max the
     * rise of the first. Source: ASTM D256, annex A2, as METHODS C.2 has it (from memory).
     */
    static double byTwoReadings(
            double momentNm, double release, double rise, double first, double second) {
        double missingFirst = Hammer.absorbedJ(momentNm, release, first);
        double missingSecond = Hammer.absorbedJ(momentNm, release, second);
        return (missingFirst - missingSecond / 2) * rise / first + missingSecond / 2;
    }
}
