package org.twinbar.statistics;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * How Weibull fits scatter about the truth at a given number of specimens, by simulation.
 *
 * <p>m̂/m and m̂·ln(scalê/scale) are pivotal: their distribution is the same for every true shape
 * and scale. So is m̂·(ln x̂_p − ln x_p), which gives exact limits of a quantile (up to the error
 * of the simulation) where all specimens failed, or the test ended at a set number of failures.
 * Where it ended at a set time they hold nearly.
 *
 * <p>Source: D. R. Thoman, L. J. Bain, C. E. Antle, Inferences on the parameters of the Weibull
 * distribution (1969), doi:10.1080/00401706.1969.10490706; METHODS.md I.7.
 */
public final class WeibullPivots {

    private final int n;
    private final int failures;
    private final long seed;
    private final double[] shapes;
    private final double[] logScales;

    private WeibullPivots(int n, int failures, long seed, double[] shapes, double[] logScales) {
        this.n = n;
        this.failures = failures;
        this.seed = seed;
        this.shapes = shapes;
        this.logScales = logScales;
    }

    /**
     * Simulated fits to n specimens of which the weakest failed and the others outlasted the last
     * of those.
     *
     * @param n specimens
     * @param failures how many of them failed, at least 2
     * @param trials simulated samples; 10,000 give the 95 % point to about 1 % of its size
     * @param seed of the random numbers
     * @throws IllegalArgumentException unless 2 ≤ failures ≤ n and trials ≥ 100
     */
    public static WeibullPivots simulate(int n, int failures, int trials, long seed) {
        Arguments.requireAtLeast(failures, 2, "number of failures");
        Arguments.requireAtLeast(n, failures, "number of specimens");
        Arguments.requireAtLeast(trials, 100, "number of trials");
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        double[] shapes = new double[trials];
        double[] logScales = new double[trials];
        double[] logs = new double[n];
        for (int trial = 0; trial < trials; trial++) {
            double[] fit = {};
            while (fit.length == 0) {
                for (int i = 0; i < n; i++) {
                    logs[i] = StrictMath.log(-StrictMath.log1p(-random.nextDouble()));
                }
                fit = fit(logs, failures);
            }
            shapes[trial] = fit[0];
            logScales[trial] = fit[1];
        }
        return new WeibullPivots(n, failures, seed, shapes, logScales);
    }

    private static double[] fit(double[] logs, int failures) {
        Arrays.sort(logs);
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            if (i < failures) {
                sum += logs[i];
            } else {
                logs[i] = logs[failures - 1];
            }
        }
        return Double.isFinite(sum)
                ? WeibullLikelihood.maximum(logs, failures, sum / failures)
                : new double[0];
    }

    /** The mean of m̂/m: divide a fitted shape by it. 1.45 at five specimens, 1.17 at ten. */
    public double shapeBias() {
        return Sum.of(shapes) / shapes.length;
    }

    /**
     * The value that a share p of all parts stays below, with a lower and an upper limit, each
     * one-sided.
     *
     * <p>ln x_p lies above ln x̂_p − Z/m̂ with the confidence at which Z lies below its quantile, Z
     * = m̂·(ln x̂_p − ln x_p) over the simulated samples. "90 % of parts withstand it" asks for p =
     * 0.10 and its lower limit.
     *
     * @param fit to as many specimens and failures as were simulated
     * @param p share of parts below the value, 0.10 say
     * @param confidence of each limit alone, 0.95 say; the level of both together is 2 · confidence
     *     − 1
     * @throws IllegalArgumentException unless numbers agree, 0 < p < 1 and 0.5 < confidence < 1
     */
    public Estimate quantile(Weibull.Fit fit, double p, double confidence) {
        if (fit.n() != n || fit.failures() != failures) {
            throw new IllegalArgumentException("The fit has " + fit.failures() + " failures of "
                    + fit.n() + ", the simulation " + failures + " of " + n + ".");
        }
        Arguments.requireInside(p, "share of parts");
        double level = NormalLevel.bothSided(confidence);
        double[] pivots = sorted(p);
        double middle = StrictMath.log(fit.quantile(p));
        double low = StrictMath.exp(middle - at(pivots, confidence) / fit.shape());
        double high = StrictMath.exp(middle - at(pivots, 1 - confidence) / fit.shape());
        return new Estimate(
                fit.quantile(p),
                low,
                high,
                level,
                Double.POSITIVE_INFINITY,
                n,
                "Weibull, pivotal limits, each one-sided at " + Arguments.perCent(confidence) + ", "
                        + shapes.length + " samples, seed " + seed);
    }

    /**
     * The point of Z below which it lies with a confidence: what {@link #quantile} takes off,
     * divided by the fitted shape, from the logarithm of the fitted quantile.
     *
     * @param p share of parts below the value
     * @throws IllegalArgumentException unless 0 < p < 1 and 0 < confidence < 1
     */
    public double point(double p, double confidence) {
        return at(
                sorted(Arguments.requireInside(p, "share of parts")),
                Arguments.requireInside(confidence, "confidence"));
    }

    private double[] sorted(double p) {
        double truth = Weibull.logOfLog(p);
        double[] pivots = new double[shapes.length];
        for (int i = 0; i < pivots.length; i++) {
            pivots[i] = shapes[i] * (logScales[i] - truth) + truth;
        }
        Arrays.sort(pivots);
        return pivots;
    }

    /** The quantile of sorted values, straight between neighbours, at p(N + 1). */
    private static double at(double[] sorted, double p) {
        double place = p * (sorted.length + 1) - 1;
        int before = (int) Math.max(0, Math.min(sorted.length - 2, Math.floor(place)));
        double part = Math.max(0, Math.min(1, place - before));
        return sorted[before] + part * (sorted[before + 1] - sorted[before]);
    }
}
