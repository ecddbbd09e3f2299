package org.twinbar.statistics.groups;

import java.util.Arrays;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Distribution;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Roots;

/**
 * The largest |t| of several groups compared with one control that they share.
 *
 * <p>Correlations are λᵢλⱼ with λᵢ = √(nᵢ/(nᵢ + n₀)), so that given the control's error z and the
 * spread s the comparisons are independent: P(max|T| ≤ d) = ∫f(s)∫φ(z)Π(Φ((ds + λᵢz)/√(1 − λᵢ²)) −
 * Φ((−ds + λᵢz)/√(1 − λᵢ²))) dz ds. Good to about 10⁻¹⁰. Source: C. W. Dunnett, A multiple
 * comparison procedure for comparing several treatments with a control (1955),
 * doi:10.1080/01621459.1955.10501294.
 */
public final class DunnettRange implements Distribution {

    private static final double FARTHEST = 8.5;
    private static final Panels CONTROL =
            Panels.over(-FARTHEST, FARTHEST, 10).weightedBy(Normal.STANDARD::density);

    private final double[] shared;
    private final Tabulated within;
    private final PooledSpread spread;

    private DunnettRange(double[] shared, Tabulated within, PooledSpread spread) {
        this.shared = shared;
        this.within = within;
        this.spread = spread;
    }

    private static DunnettRange of(double[] shared, double[] own, double df) {
        // √2 is the farthest that own and shared error reach together.
        Tabulated within = Tabulated.of(
                half -> CONTROL.integral(z -> within(shared, own, half, z)),
                Math.sqrt(2) * FARTHEST);
        return new DunnettRange(shared, within, PooledSpread.of(df));
    }

    /** Returns the same comparisons at other degrees of freedom, finite and at least 1. */
    public DunnettRange withDf(double df) {
        requireFinite(df);
        return new DunnettRange(shared, within, PooledSpread.of(df));
    }

    /**
     * The distribution for these numbers of specimens.
     *
     * @param controlCount n₀
     * @param treatedCounts nᵢ
     * @param df degrees of freedom of the pooled standard deviation, finite
     * @throws IllegalArgumentException unless every number is at least 1, there is a treated group,
     *     and 1 ≤ df < ∞
     */
    public static DunnettRange of(int controlCount, int[] treatedCounts, double df) {
        Arguments.requireAtLeast(controlCount, 1, "number of control specimens");
        Arguments.requireAtLeast(treatedCounts.length, 1, "number of treated groups");
        requireFinite(df);
        double[] shared = new double[treatedCounts.length];
        double[] own = new double[treatedCounts.length];
        for (int i = 0; i < shared.length; i++) {
            double n = Arguments.requireAtLeast(treatedCounts[i], 1, "number of treated specimens");
            shared[i] = Math.sqrt(n / (n + controlCount));
            own[i] = Math.sqrt(controlCount / (n + controlCount));
        }
        return of(shared, own, df);
    }

    /**
     * The distribution where each mean keeps its own variance: λᵢ = √(v₀/(vᵢ + v₀)).
     *
     * <p>Variances are put in as if they were known, and one comparison's own degrees of freedom
     * stand for all: its quantile is the critical |t| of that comparison. Source: M. Hasler, L. A.
     * Hothorn, Multiple contrast tests in the presence of heteroscedasticity (2008),
     * doi:10.1002/bimj.200710466.
     *
     * @param controlVariance v₀, variance of the control's mean; for ratios ρᵢ²v₀, ρᵢ the ratio
     *     seen, which makes vᵢ/ρᵢ² of each treated one (Source: G. Dilba, F. Bretz, V. Guiard,
     *     Simultaneous confidence sets and confidence intervals for multiple ratios, 2006,
     *     doi:10.1016/j.jspi.2004.11.009)
     * @param treatedVariances vᵢ, variance of each treated mean
     * @param df degrees of freedom of the comparison, finite
     * @throws IllegalArgumentException unless every variance is above zero and finite, there is a
     *     treated group, and 1 ≤ df < ∞
     */
    public static DunnettRange ofVariances(
            double controlVariance, double[] treatedVariances, double df) {
        Arguments.requirePositive(controlVariance, "variance of the control's mean");
        Arguments.requireAtLeast(treatedVariances.length, 1, "number of treated groups");
        requireFinite(df);
        double[] shared = new double[treatedVariances.length];
        double[] own = new double[treatedVariances.length];
        for (int i = 0; i < shared.length; i++) {
            double v = Arguments.requirePositive(treatedVariances[i], "variance of a treated mean");
            shared[i] = Math.sqrt(controlVariance / (v + controlVariance));
            own[i] = Math.sqrt(v / (v + controlVariance));
        }
        return of(shared, own, df);
    }

    private static void requireFinite(double df) {
        if (!(df >= 1 && df < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The degrees of freedom must be at least 1 and finite, not " + df + ".");
        }
    }

    @Override
    public double below(double d) {
        if (!(d > 0)) {
            return 0;
        }
        if (d == Double.POSITIVE_INFINITY) {
            return 1;
        }
        return Math.min(1, spread.average(s -> within.applyAsDouble(d * s)));
    }

    @Override
    public double above(double d) {
        return 1 - below(d);
    }

    @Override
    public double quantile(double p) {
        Arguments.requireShare(p, "probability");
        if (p == 0) {
            return 0;
        }
        if (p == 1) {
            return Double.POSITIVE_INFINITY;
        }
        return Roots.increasing(d -> below(d) - p, 2, 1);
    }

    private static double within(double[] shared, double[] own, double half, double z) {
        double product = 1;
        for (int i = 0; i < shared.length; i++) {
            double middle = shared[i] * z / own[i];
            double reach = half / own[i];
            product *=
                    Normal.STANDARD.below(middle + reach) - Normal.STANDARD.below(middle - reach);
        }
        return product;
    }

    @Override
    public String toString() {
        return "largest |t| against one control, correlations from " + Arrays.toString(shared);
    }
}
