package org.twinbar.method.density;

/** Density of pure water without dissolved air, at atmospheric pressure. */
final class Water {

    private static final double A1 = -3.983035;
    private static final double A2 = 301.797;
    private static final double A3 = 522528.9;
    private static final double A4 = 69.34881;
    private static final double A5 = 0.999974950;

    /** Temperatures (°C) that the formula was fitted to. */
    static final double COLDEST = 0;

    static final double WARMEST = 40;

    private Water() {}

    /**
     * Returns the density of water (g/cm³) at a temperature.
     *
     * <pre>ρ = a₅·[1 − (t + a₁)²·(t + a₂)/(a₃·(t + a₄))]</pre>
     *
     * <p>t in °C, a₁ = −3.983035 °C, a₂ = 301.797 °C, a₃ = 522528.9 °C², a₄ = 69.34881 °C, a₅ =
     * 0.99997495 g/cm³. Good to 10⁻⁶ from 0 to 40 °C; beyond that it is carried on. Source: M.
     * Tanaka, G. Girard, R. Davis, A. Peuto, N. Bignell, Metrologia 38 (2001), 301 to 309,
     * doi:10.1088/0026-1394/38/4/3.
     */
    static double density(double celsius) {
        double fromDensest = celsius + A1;
        return A5 * (1 - fromDensest * fromDensest * (celsius + A2) / (A3 * (celsius + A4)));
    }
}
