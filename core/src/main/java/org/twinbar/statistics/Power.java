package org.twinbar.statistics;

import java.util.OptionalDouble;

/**
 * The chance that a comparison of two equal groups finds an effect.
 *
 * <p>P(T′ &gt; t), T′ noncentral t with 2n − 2 degrees of freedom and noncentrality √n ·
 * {@link PlannedEffect#perRootSpecimen}, t the 1 − α point of Student's t. Only the side of the
 * expected effect counts: a study that finds the opposite has not found it. n need not be whole.
 * Exact for normal scatter that is the same in both groups.
 *
 * <p>Sources: COMMANDS.md "size"; METHODS.md I.4; J. Cohen, Statistical power analysis for the
 * behavioral sciences (1988), chapter 2.
 */
public final class Power {

    /**
     * Two specimens estimate a scatter with one degree of freedom: too few for a verdict to hold
     * its error rate.
     */
    public static final int FEWEST_PER_GROUP = 3;

    /** Below two specimens per group nothing is left to estimate the scatter from. */
    private static final double FEWEST_EXACT = 2;

    private static final double MOST_PER_GROUP = 1e8;

    private Power() {}

    /**
     * The power with n specimens per group.
     *
     * @param perGroup n, not necessarily whole, at least 2
     * @param alphaOneSided error rate on the side of the effect; 0.025 where the verdict reads a 95
     *     % interval
     * @throws IllegalArgumentException unless 2 ≤ n ≤ 10⁸ and 0 < α < 1
     */
    public static double of(PlannedEffect effect, double perGroup, double alphaOneSided) {
        if (!(perGroup >= FEWEST_EXACT && perGroup <= MOST_PER_GROUP)) {
            throw Arguments.refused(
                    "The %s must lie from 2 to 1e8, not %s.", "number per group", perGroup);
        }
        return of(Math.sqrt(perGroup) * effect.perRootSpecimen(), 2 * perGroup - 2, alphaOneSided);
    }

    /**
     * The power of an estimate with a scatter of its own: of blocks, say, whose effects are
     * averaged.
     *
     * @param noncentrality distance from the effect to what is worth having, over the estimate's
     *     true standard error
     * @param df degrees of freedom of the scatter
     * @param alphaOneSided error rate on the side of the effect
     * @throws IllegalArgumentException unless df > 0 and 0 < α < 1
     */
    public static double ofEstimate(double noncentrality, double df, double alphaOneSided) {
        return of(noncentrality, df, alphaOneSided);
    }

    /**
     * The number per group that reaches a power.
     *
     * @param power wanted, 0.8 say
     * @param alphaOneSided error rate on the side of the effect
     * @throws IllegalArgumentException unless 0 < α < power < 1, or if more than 10⁸ per group are
     *     needed
     */
    public static SampleSize perGroup(PlannedEffect effect, double power, double alphaOneSided) {
        requirePowerAbove(power, alphaOneSided);
        if (of(effect, MOST_PER_GROUP, alphaOneSided) < power) {
            throw new IllegalArgumentException(
                    "More than 1e8 specimens per group are needed: the expected effect "
                            + effect.expected() + " lies too close to the one worth having, "
                            + effect.worth() + ".");
        }
        double exact = exactPerGroup(effect, power, alphaOneSided);
        int perGroup = (int) Math.max(FEWEST_PER_GROUP, Math.ceil(exact));
        // The root carries rounding; whether a whole number just reaches the power is asked of the
        // power itself.
        while (perGroup > FEWEST_PER_GROUP && of(effect, perGroup - 1, alphaOneSided) >= power) {
            perGroup--;
        }
        while (of(effect, perGroup, alphaOneSided) < power) {
            perGroup++;
        }
        return new SampleSize(
                perGroup,
                exact,
                of(effect, perGroup, alphaOneSided),
                smallestEffect(effect, perGroup, power, alphaOneSided));
    }

    /**
     * The smallest effect that n specimens per group find with a power, on the side of the expected
     * one.
     *
     * @param effect what is planned; its expected size only gives the side
     * @return the effect, in the scale of the expected one; empty where the scatter hides any ratio
     * @throws IllegalArgumentException unless n ≥ 2 and 0 < α < power < 1
     */
    public static OptionalDouble smallestEffect(
            PlannedEffect effect, int perGroup, double power, double alphaOneSided) {
        Arguments.requireAtLeast(perGroup, 2, "number per group");
        requirePowerAbove(power, alphaOneSided);
        double df = 2.0 * perGroup - 2;
        double noncentrality = Roots.increasing(nc -> of(nc, df, alphaOneSided) - power, 0, 1);
        return effect.effectOf(noncentrality / Math.sqrt(perGroup));
    }

    /**
     * The power of two one-sided tests for "no change": the chance that the interval of level 1 −
     * 2α lies inside the limits.
     *
     * <p>∫ max(0, Φ((high − truth)/u − t·s) − Φ((low − truth)/u + t·s)) f(s) ds over the estimated
     * scatter s, which is what Owen's Q gives. On logarithms for a ratio.
     *
     * @param limits of what counts as no change, and the true effect within them
     * @param standardError true standard error u of the estimated effect
     * @param df degrees of freedom of its estimate
     * @param alpha error rate of each of the two tests
     * @throws IllegalArgumentException unless u > 0, df > 0 and finite, and 0 < α < 0.5
     */
    public static double alike(Alike limits, double standardError, double df, double alpha) {
        Arguments.requirePositive(standardError, "standard error");
        Arguments.requirePositive(df, "degrees of freedom");
        if (!(alpha > 0 && alpha < 0.5)) {
            throw Arguments.refused(
                    "The %s must lie between 0 and 0.5, not %s.", "error rate", alpha);
        }
        double t = new StudentT(df).quantile(1 - alpha);
        double high = (limits.high() - limits.truth()) / standardError;
        double low = (limits.low() - limits.truth()) / standardError;
        return new ScaleError(df)
                .meanUpTo(
                        (high - low) / (2 * t),
                        s -> Math.max(
                                0,
                                Normal.STANDARD.below(high - t * s)
                                        - Normal.STANDARD.below(low + t * s)));
    }

    /**
     * What counts as no change, and the true effect.
     *
     * @param low least effect that still counts as none
     * @param high largest effect that still counts as none
     * @param truth true effect
     */
    public record Alike(double low, double high, double truth) {
        /** @throws IllegalArgumentException unless low < high and all are finite */
        public Alike {
            Arguments.requireFinite(low, "lower limit");
            Arguments.requireFinite(high, "upper limit");
            Arguments.requireFinite(truth, "true effect");
            if (!(low < high)) {
                throw new IllegalArgumentException(
                        "The lower limit " + low + " is not below the upper " + high + ".");
            }
        }
    }

    private static double exactPerGroup(PlannedEffect effect, double power, double alphaOneSided) {
        if (of(effect, FEWEST_EXACT, alphaOneSided) >= power) {
            return FEWEST_EXACT;
        }
        double logarithm = Roots.increasing(
                log -> of(effect, StrictMath.exp(log), alphaOneSided) - power,
                StrictMath.log(FEWEST_EXACT) + Math.ulp(1.0),
                1);
        return StrictMath.exp(logarithm);
    }

    private static double of(double noncentrality, double df, double alphaOneSided) {
        double t =
                new StudentT(df).quantile(1 - Arguments.requireInside(alphaOneSided, "error rate"));
        // Past 200 the noncentral t is above any t that a power hangs on by more than a hundred of
        // its deviations.
        return noncentrality > 200 && t < 40 ? 1 : new NoncentralT(df, noncentrality).above(t);
    }

    private static void requirePowerAbove(double power, double alphaOneSided) {
        Arguments.requireInside(power, "power");
        Arguments.requireInside(alphaOneSided, "error rate");
        if (!(power > alphaOneSided)) {
            throw Arguments.refused(
                    "The %s must lie above the error rate, not be %s.", "power", power);
        }
    }
}
