package org.twinbar.method.roughness;

/** The cut-off that ISO 21920-3 takes for a roughness, each a sampling length and a fifth. */
final class Cutoffs {

    /** Highest Ra (µm) of each step of the default table: ISO 21920-3:2021. */
    private static final double[] HIGHEST_RA = {0.02, 0.1, 2, 10};

    /** Its cut-off (mm); the last is for all that is rougher. */
    private static final double[] CUTOFF = {0.08, 0.25, 0.8, 2.5, 8};

    private Cutoffs() {}

    /** Returns λc (mm) for an Ra (µm). */
    static double forRoughness(double ra) {
        int step = 0;
        while (step < HIGHEST_RA.length && ra > HIGHEST_RA[step]) {
            step++;
        }
        return CUTOFF[step];
    }
}
