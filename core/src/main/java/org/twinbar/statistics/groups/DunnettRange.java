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
    private final double[] own;
    private final PooledSpread spread;

    private DunnettRange(double[] shared, double[] own, PooledSpread spread) {
        this.shared = shared;
        this.own = own;
        this.spread = spread;
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
        if (!(df >= 1 && df < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The degrees of freedom must be at least 1 and finite, not " + df + ".");
        }
        double[] shared = new double[treatedCounts.length];
        double[] own = new double[treatedCounts.length];
        for (int i = 0; i < shared.length; i++) {
            double n = Arguments.requireAtLeast(treatedCounts[i], 1, "number of treated specimens");
            shared[i] = Math.sqrt(n / (n + controlCount));
            own[i] = Math.sqrt(controlCount / (n + controlCount));
        }
        return new DunnettRange(shared, own, PooledSpread.of(df));
    }

    @Override
    public double below(double d) {
        if (!(d > 0)) {
            return 0;
        }
        if (d == Double.POSITIVE_INFINITY) {
            return 1;
        }
        return Math.min(1, spread.average(s -> CONTROL.integral(z -> within(d * s, z))));
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

    private double within(double half, double z) {
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
