package org.twinbar.statistics;

/**
 * The ratio of two groups by way of logarithms, beside {@link Fieller}'s.
 *
 * <p>Source: METHODS.md I.2.
 */
public final class LogRatio {

    private LogRatio() {}

    /**
     * The ratio of the means, its interval from the linearised logarithm.
     *
     * <p>exp(ln r ± t·√(a + b + Σ(Δ_T/x̄_T − Δ_C/x̄_C)²)), a = v_T/x̄_T², b = v_C/x̄_C², with
     * Satterthwaite's degrees of freedom. Good where each mean is uncertain by less than a tenth of
     * itself.
     *
     * @throws IllegalArgumentException unless both means are above zero and 0 < level < 1
     */
    public static Estimate ofMeans(TwoMeans means, double level) {
        Arguments.requirePositive(means.treated().mean(), "mean of the treated group in a ratio");
        Arguments.requirePositive(means.control().mean(), "mean of the control in a ratio");
        TwoMeans relative = new TwoMeans(
                logarithm(means.treated()),
                logarithm(means.control()),
                means.shared().stream()
                        .map(shift -> new Shift(
                                shift.treated() / means.treated().mean(),
                                shift.control() / means.control().mean(),
                                shift.df()))
                        .toList());
        return back(Welch.difference(relative, level), "logarithm of the ratio of means");
    }

    /**
     * The ratio of the geometric means: Welch's interval on logarithms.
     *
     * <p>Exact in its shape for log-normal scatter, where a mean is no good summary (coefficients
     * of variation above 20 %).
     *
     * @throws IllegalArgumentException if a group has fewer than 2 values or one that isn't above
     *     zero and finite, or unless 0 < level < 1
     */
    public static Estimate ofGeometricMeans(double[] treated, double[] control, double level) {
        for (double[] group : new double[][] {treated, control}) {
            for (double value : group) {
                Arguments.requirePositive(value, "value whose logarithm is taken");
            }
        }
        TwoMeans means = TwoMeans.of(
                Summary.of(treated).logarithms(), Summary.of(control).logarithms());
        return back(
                Welch.difference(means, level), "Welch on logarithms, ratio of geometric means");
    }

    private static MeanEstimate logarithm(MeanEstimate mean) {
        double relative = mean.variance() / (mean.mean() * mean.mean());
        return new MeanEstimate(StrictMath.log(mean.mean()), relative, mean.df(), mean.n());
    }

    private static Estimate back(Estimate logarithm, String method) {
        Estimate ratio = logarithm.through(StrictMath::exp);
        return new Estimate(
                ratio.value(),
                ratio.low(),
                ratio.high(),
                ratio.level(),
                ratio.df(),
                ratio.n(),
                method);
    }
}
