package org.twinbar.method.uptake;

/** Diffusion into a flat part through both of its faces. */
final class Fick {

    /** Below this the square-root law is good to 10⁻¹⁰, and the series needs many terms. */
    private static final double EARLY = 0.01;

    private static final int TERMS = 12;

    /** By then all but 10⁻²⁰ of the water is in. */
    private static final double LATE = 5;

    private static final int HALVINGS = 100;

    private Fick() {}

    /**
     * Returns the share of the saturated uptake that is reached.
     *
     * <pre>M/M∞ = 1 − (8/π²)·Σ exp[−(2k+1)²π²x]/(2k+1)²,  x = D·t/d²</pre>
     *
     * <p>D diffusion coefficient (mm²/s), t time (s), d thickness (mm); for small x it is
     * (4/√π)·√x. Edges don't count: the part is much wider than thick. Source: J. Crank, The
     * mathematics of diffusion (1975), equations 4.18 and 4.20 (numbers from memory); METHODS E.
     *
     * @param x zero or more
     */
    static double share(double x) {
        if (x < EARLY) {
            return 4 * Math.sqrt(x / Math.PI);
        }
        double left = 0;
        for (int k = 0; k < TERMS; k++) {
            double odd = 2.0 * k + 1;
            left += StrictMath.exp(-odd * odd * Math.PI * Math.PI * x) / (odd * odd);
        }
        return 1 - 8 / (Math.PI * Math.PI) * left;
    }

    /** Returns D·t/d² at which a share is reached; NaN unless the share lies between 0 and 1. */
    static double at(double share) {
        if (!(share > 0 && share < 1)) {
            return Double.NaN;
        }
        double low = 0;
        double high = LATE;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (share(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
