package org.twinbar.statistics;

import java.util.List;
import java.util.Locale;

/**
 * The ratio of two means, treated over control.
 *
 * <p>The interval holds every ratio ρ at which x̄_T − ρ·x̄_C is not told from zero: (x̄_T − ρx̄_C)²
 * ≤ t²·v(ρ), with v(ρ) = v_T + ρ²v_C + Σ(Δ_T − ρΔ_C)² and t the two-sided point of Student's t. In
 * ρ this is Aρ² − 2Bρ + C ≤ 0 with A = x̄_C² − t²(v_C + ΣΔ_C²), B = x̄_T·x̄_C − t²ΣΔ_TΔ_C, C =
 * x̄_T² − t²(v_T + ΣΔ_T²). The degrees of freedom of t are Satterthwaite's at the estimated ratio,
 * the same for every ρ. For A ≤ 0 (g ≥ 1) no finite interval exists.
 *
 * <p>Sources: E. C. Fieller, Some problems in interval estimation (1954),
 * doi:10.1111/j.2517-6161.1954.tb00159.x; METHODS.md I.2 (degrees of freedom), J.5 (shared errors).
 */
public final class Fieller {

    static final String UNEQUAL = "Fieller, unequal spread";
    static final String POOLED = "Fieller, pooled spread";

    private Fieller() {}

    /**
     * The ratio with its two-sided interval, each group with its own spread.
     *
     * @param level of the interval, 0.95 say
     * @throws IllegalArgumentException unless both means are above zero and 0 < level < 1: the
     *     ratio of other means says nothing
     */
    public static RatioInterval ratio(TwoMeans means, double level) {
        return interval(means, means.df(ratio(means)), level, UNEQUAL);
    }

    /**
     * The ratio of two groups that are held to have one common spread, n_T + n_C − 2 degrees of
     * freedom.
     *
     * @throws IllegalArgumentException under the conditions of {@link #ratio(TwoMeans, double)}, or
     *     if a group has fewer than 2 values
     */
    public static RatioInterval pooled(double[] treated, double[] control, double level) {
        Summary t = Summary.of(Arguments.requireFinite(treated, 2, "treated values"));
        Summary c = Summary.of(Arguments.requireFinite(control, 2, "control's values"));
        double df = t.n() + c.n() - 2;
        double variance = ((t.n() - 1) * t.variance() + (c.n() - 1) * c.variance()) / df;
        TwoMeans means = TwoMeans.of(
                new MeanEstimate(t.mean(), variance / t.n(), df, t.n()),
                new MeanEstimate(c.mean(), variance / c.n(), df, c.n()));
        ratio(means);
        return interval(means, df, level, POOLED);
    }

    /**
     * How surprising the means are if the ratio is {@code none}, on both sides: t = (x̄_T −
     * ρx̄_C)/√v(ρ), with the degrees of freedom of the interval, so that p is below 1 − level
     * exactly where the interval leaves {@code none} out.
     *
     * @throws IllegalArgumentException unless both means are above zero and none is finite
     */
    public static Significance twoSided(TwoMeans means, double none) {
        Arguments.requireFinite(none, "ratio to test against");
        double df = means.df(ratio(means));
        double excess = means.treated().mean() - none * means.control().mean();
        double t = excess == 0 ? 0 : excess / Math.sqrt(means.variance(none));
        return new Significance(t, df, new StudentT(df).twoSidedP(t), UNEQUAL + ", two-sided");
    }

    private static double ratio(TwoMeans means) {
        Arguments.requirePositive(means.treated().mean(), "mean of the treated group in a ratio");
        Arguments.requirePositive(means.control().mean(), "mean of the control in a ratio");
        return means.treated().mean() / means.control().mean();
    }

    private static RatioInterval interval(TwoMeans means, double df, double level, String method) {
        double t = new StudentT(df).twoSided(level);
        double meanT = means.treated().mean();
        double meanC = means.control().mean();
        double varianceT = means.treated().variance();
        double varianceC = means.control().variance();
        double covariance = 0;
        for (Shift shift : means.shared()) {
            varianceT += shift.treated() * shift.treated();
            varianceC += shift.control() * shift.control();
            covariance += shift.treated() * shift.control();
        }
        double a = meanC * meanC - t * t * varianceC;
        double b = meanT * meanC - t * t * covariance;
        double c = meanT * meanT - t * t * varianceT;
        double g = t * t * varianceC / (meanC * meanC);
        double ratio = meanT / meanC;
        // b² − ac, by way of the ratio so that two nearly equal products are not subtracted.
        double spread = varianceT - 2 * ratio * covariance + ratio * ratio * varianceC;
        double core =
                spread * meanC * meanC - t * t * (varianceT * varianceC - covariance * covariance);
        double root = t * Math.sqrt(Math.max(0, core));
        if (a > 0) {
            Estimate estimate = new Estimate(
                    ratio,
                    Math.min(ratio, b >= 0 ? c / (b + root) : (b - root) / a),
                    Math.max(ratio, (b + root) / a),
                    level,
                    df,
                    means.n(),
                    method);
            return new RatioInterval.Finite(estimate, g);
        }
        return new RatioInterval.Unbounded(
                ratio,
                ends(a, b, c, core, root),
                level,
                df,
                means.n(),
                method,
                g,
                reason(level, meanC, t * Math.sqrt(varianceC)));
    }

    private static List<Double> ends(double a, double b, double c, double core, double root) {
        if (a == 0) {
            return b == 0 ? List.of() : List.of(c / (2 * b));
        }
        if (core < 0) {
            return List.of();
        }
        double one = (b + root) / a;
        double other = (b - root) / a;
        return List.of(Math.min(one, other), Math.max(one, other));
    }

    private static String reason(double level, double mean, double half) {
        return String.format(
                Locale.ROOT,
                "The control's mean of %.4g is uncertain by ±%.4g at %s, so that no ratio to it has a finite interval.",
                mean,
                half,
                Arguments.perCent(level));
    }
}
