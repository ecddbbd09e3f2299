package org.twinbar.planning;

/**
 * How many parts must all pass to show that a share of all parts passes.
 *
 * <p>If only the share p passed, n parts would all pass with the chance pⁿ; that is at most 1 − c
 * from n = ⌈ln(1 − c)/ln p⌉ on, c the confidence. Source: the exact limit of a share, C. J. Clopper
 * and E. S. Pearson, Biometrika 26 (1934), with no failure seen.
 */
public final class AllClear {

    /** The verdict on a level reads a one-sided limit of 95 %. */
    public static final double USUAL_CONFIDENCE = 0.95;

    private AllClear() {}

    /**
     * Returns the fewest parts that must all pass.
     *
     * @param share p of all parts that is to be shown
     * @param confidence c, one-sided
     * @throws PlanException unless 0 < p ≤ 0.9999 and 0 < c < 1
     */
    public static int parts(double share, double confidence) {
        if (!(share > 0 && share <= 0.9999)) {
            throw new PlanException(
                    "The share of parts must lie above 0 and up to 99.99 %%, not at %s %%."
                            .formatted(100 * share));
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new PlanException(
                    "The confidence must lie between 0 and 1, not at %s.".formatted(confidence));
        }
        return (int) Math.ceil(StrictMath.log(1 - confidence) / StrictMath.log(share) - 1e-9);
    }
}
