package org.twinbar.statistics.groups;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Distribution;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Roots;

/**
 * The range of k independent normal means over an independent estimate of their standard deviation.
 *
 * <p>P(Q ≤ q) = ∫f(s)·W(qs) ds with W(w) = k∫φ(z)(Φ(z) − Φ(z − w))^(k−1) dz and f the density of
 * √(χ²_ν/ν); both by Gauss and Legendre's rule, good to about 10⁻¹¹. Source: H. L. Harter, Tables
 * of range and studentized range (1960), doi:10.1214/aoms/1177705684.
 *
 * @param groups k, at least 2
 * @param df ν, degrees of freedom of the standard deviation; ∞ where it is known
 */
public record StudentizedRange(int groups, double df) implements Distribution {

    private static final double FARTHEST = 8.5;
    private static final Panels LARGEST =
            Panels.over(-FARTHEST, FARTHEST, 10).weightedBy(Normal.STANDARD::density);

    /** W by the number of groups; it hangs on nothing else. */
    private static final Map<Integer, Tabulated> RANGES = new ConcurrentHashMap<>();

    /** @throws IllegalArgumentException unless k ≥ 2 and ν ≥ 1 */
    public StudentizedRange {
        Arguments.requireAtLeast(groups, 2, "number of groups");
        if (!(df >= 1)) {
            throw new IllegalArgumentException(
                    "The degrees of freedom must be at least 1, not " + df + ".");
        }
    }

    @Override
    public double below(double q) {
        if (!(q > 0)) {
            return 0;
        }
        if (q == Double.POSITIVE_INFINITY) {
            return 1;
        }
        double share = df == Double.POSITIVE_INFINITY
                ? range(groups, q)
                : spread().average(s -> tabulated().applyAsDouble(q * s));
        return Math.min(1, share);
    }

    @Override
    public double above(double q) {
        return 1 - below(q);
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
        if (df == Double.POSITIVE_INFINITY) {
            return Roots.increasing(q -> below(q) - p, 3, 1);
        }
        PooledSpread spread = spread();
        Tabulated range = tabulated();
        return Roots.increasing(
                q -> spread.average(s -> range.applyAsDouble(Math.max(0, q * s))) - p, 3, 1);
    }

    /**
     * The mean of the range of k standard normal values, d₂ of control charts: ∫(1 − Φ(x)^k − (1 −
     * Φ(x))^k) dx.
     */
    public static double meanRange(int groups) {
        Arguments.requireAtLeast(groups, 2, "number of values");
        return Panels.over(-FARTHEST, FARTHEST, 20)
                .integral(x -> 1
                        - StrictMath.pow(Normal.STANDARD.below(x), groups)
                        - StrictMath.pow(Normal.STANDARD.above(x), groups));
    }

    private PooledSpread spread() {
        return PooledSpread.of(df);
    }

    private Tabulated tabulated() {
        return RANGES.computeIfAbsent(groups, k -> Tabulated.of(w -> range(k, w), 2 * FARTHEST));
    }

    /** W, the share of ranges of standard normal values up to w. */
    private static double range(int groups, double w) {
        return groups
                * LARGEST.integral(z -> StrictMath.pow(
                        Math.max(0, Normal.STANDARD.below(z) - Normal.STANDARD.below(z - w)),
                        groups - 1.0));
    }
}
