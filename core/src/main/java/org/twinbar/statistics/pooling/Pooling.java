package org.twinbar.statistics.pooling;

import java.util.List;
import java.util.Optional;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.ChiSquared;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Roots;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.StudentT;

/**
 * Pools effects of several studies.
 *
 * <p>Fixed: Σyᵢ/vᵢ / Σ1/vᵢ on the normal distribution. Random: weights 1/(vᵢ + τ²), τ² by
 * restricted maximum likelihood or by Paule and Mandel, interval by Hartung and Knapp on Student's
 * t with k − 1 degrees of freedom, their factor never below 1. Next study: μ ± t_(k−2)√(τ² + se²).
 * Q = Σ(yᵢ − ȳ)²/vᵢ; I² = τ²/(τ² + v̄), v̄ = (k − 1)Σw/((Σw)² − Σw²), w = 1/vᵢ.
 *
 * <p>Studies' variances are taken as known, which a study of three specimens is far from: with such
 * studies the interval is somewhat too narrow. Source: J. P. T. Higgins, S. G. Thompson, D. J.
 * Spiegelhalter, A re-evaluation of random-effects meta-analysis (2009),
 * doi:10.1111/j.1467-985X.2008.00552.x; J. Hartung, G. Knapp (2001), doi:10.1002/sim.1009; C.
 * Röver, G. Knapp, T. Friede, on the factor (2015), doi:10.1186/s12874-015-0091-1.
 */
public final class Pooling {

    /** How the variance between studies is estimated. */
    public enum Between {
        RESTRICTED_LIKELIHOOD("REML"),
        PAULE_MANDEL("Paule–Mandel");

        private final String words;

        Between(String words) {
            this.words = words;
        }
    }

    /**
     * One study.
     *
     * @param effect its effect; a logarithm for a ratio
     * @param standardError its standard uncertainty, above zero (the effect's unit)
     * @param n its specimens
     */
    public record Study(double effect, double standardError, int n) {

        /**
         * @throws IllegalArgumentException unless effect is finite, standardError > 0 and finite, n
         *     ≥ 1
         */
        public Study {
            Arguments.requireFinite(effect, "effect of a study");
            Arguments.requirePositive(standardError, "standard error of a study");
            Arguments.requireAtLeast(n, 1, "number of specimens in a study");
        }

        double variance() {
            return standardError * standardError;
        }
    }

    private static final int MOST_STEPS = 1000;
    private static final double SETTLED = 1e-13;

    private final List<Study> studies;

    private Pooling(List<Study> studies) {
        this.studies = studies;
    }

    /**
     * The studies taken together.
     *
     * @throws IllegalArgumentException if there are fewer than 2 studies, or level is not within
     *     (0, 1)
     * @throws ArithmeticException if restricted likelihood does not settle within 1000 steps
     */
    public static Pooled of(List<Study> studies, Between between, double level) {
        int k = Arguments.requireAtLeast(studies.size(), 2, "number of studies");
        Arguments.requireInside(level, "level");
        Pooling pooling = new Pooling(List.copyOf(studies));
        double tau2 = switch (between) {
            case RESTRICTED_LIKELIHOOD -> pooling.restrictedLikelihood();
            case PAULE_MANDEL -> pooling.pauleMandel();
        };
        int n = studies.stream().mapToInt(Study::n).sum();
        double fixed = pooling.mean(0);
        double fixedHalf =
                Normal.STANDARD.quantile((1 + level) / 2) / Math.sqrt(pooling.weights(0, 1));
        double q = pooling.scatter(0);
        double mean = pooling.mean(tau2);
        double factor = Math.max(1, pooling.scatter(tau2) / (k - 1));
        double variance = factor / pooling.weights(tau2, 1);
        double half = new StudentT(k - 1).twoSided(level) * Math.sqrt(variance);
        double sum = pooling.weights(0, 1);
        double typical = (k - 1) * sum / (sum * sum - pooling.weights(0, 2));
        return new Pooled(
                new Estimate(
                        fixed,
                        fixed - fixedHalf,
                        fixed + fixedHalf,
                        level,
                        Double.POSITIVE_INFINITY,
                        n,
                        "fixed effect"),
                new Estimate(
                        mean,
                        mean - half,
                        mean + half,
                        level,
                        k - 1,
                        n,
                        "random effects, " + between.words + ", Hartung–Knapp"),
                tau2,
                new Significance(q, k - 1, new ChiSquared(k - 1).above(q), "heterogeneity, Q"),
                tau2 / (tau2 + typical),
                next(mean, tau2 + variance, k, n, level));
    }

    private static Optional<Estimate> next(
            double mean, double variance, int k, int n, double level) {
        if (k < 3) {
            return Optional.empty();
        }
        double half = new StudentT(k - 2).twoSided(level) * Math.sqrt(variance);
        return Optional.of(
                new Estimate(mean, mean - half, mean + half, level, k - 2, n, "one further study"));
    }

    /** Σ 1/(vᵢ + τ²)^power. */
    private double weights(double tau2, int power) {
        double sum = 0;
        for (Study study : studies) {
            double weight = 1 / (study.variance() + tau2);
            sum += power == 1 ? weight : weight * weight;
        }
        return sum;
    }

    private double mean(double tau2) {
        double sum = 0;
        for (Study study : studies) {
            sum += study.effect() / (study.variance() + tau2);
        }
        return sum / weights(tau2, 1);
    }

    /** Σ(yᵢ − μ)²/(vᵢ + τ²). */
    private double scatter(double tau2) {
        double mean = mean(tau2);
        double sum = 0;
        for (Study study : studies) {
            double off = study.effect() - mean;
            sum += off * off / (study.variance() + tau2);
        }
        return sum;
    }

    /**
     * The τ² at which the weighted scatter is what k − 1 degrees of freedom expect; 0 if it is less
     * already.
     */
    private double pauleMandel() {
        double expected = studies.size() - 1;
        if (scatter(0) <= expected) {
            return 0;
        }
        double start = studies.stream().mapToDouble(Study::variance).average().orElseThrow();
        return Math.max(
                0,
                Roots.increasing(tau2 -> tau2 < 0 ? -1 : expected - scatter(tau2), start, start));
    }

    /** Fisher's scoring: τ² += (score)/(information), held at zero. */
    private double restrictedLikelihood() {
        double unit = studies.stream().mapToDouble(Study::variance).average().orElseThrow();
        double tau2 = Math.max(0, pauleMandel());
        for (int step = 0; step < MOST_STEPS; step++) {
            double next = Math.max(0, tau2 + scoring(tau2));
            if (Math.abs(next - tau2) <= SETTLED * (unit + tau2)) {
                return next;
            }
            tau2 = next;
        }
        throw new ArithmeticException("The variance between studies did not settle.");
    }

    private double scoring(double tau2) {
        double mean = mean(tau2);
        double squares = 0;
        double sum = 0;
        double sumOfSquares = 0;
        double sumOfCubes = 0;
        for (Study study : studies) {
            double weight = 1 / (study.variance() + tau2);
            double off = study.effect() - mean;
            squares += weight * weight * off * off;
            sum += weight;
            sumOfSquares += weight * weight;
            sumOfCubes += weight * weight * weight;
        }
        double trace = sum - sumOfSquares / sum;
        double traceOfSquare =
                sumOfSquares - 2 * sumOfCubes / sum + sumOfSquares * sumOfSquares / (sum * sum);
        return (squares - trace) / traceOfSquare;
    }
}
