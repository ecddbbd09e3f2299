package org.twinbar.statistics;

import java.util.Arrays;
import java.util.List;

/**
 * The Weibull distribution, F(x) = 1 − exp(−(x/scale)^shape), fitted to strengths or times by
 * maximum likelihood.
 *
 * <p>Source: METHODS.md I.7; NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.2.
 */
public sealed interface Weibull {

    /**
     * A fit.
     *
     * @param shape the exponent, as the likelihood has it: too large in the mean at few specimens,
     *     see {@link WeibullPivots#shapeBias}
     * @param scale the value that 63 % of parts stay below
     * @param logLikelihood of the data at the fit
     * @param failures specimens that failed
     * @param n specimens, those that outlasted the test included
     */
    record Fit(double shape, double scale, double logLikelihood, int failures, int n)
            implements Weibull {

        /**
         * The value that a share p of all parts stays below, scale · (−ln(1 − p))^(1/shape).
         *
         * @throws IllegalArgumentException unless 0 < p < 1
         */
        public double quantile(double p) {
            return scale
                    * StrictMath.exp(
                            logOfLog(Arguments.requireInside(p, "share of parts")) / shape);
        }
    }

    /**
     * No fit.
     *
     * @param reason a sentence
     */
    record NoFit(String reason) implements Weibull {}

    /**
     * The fit to specimens that all failed.
     *
     * @throws IllegalArgumentException if there is none, or unless each is above zero and finite
     */
    static Weibull fit(double... values) {
        return fit(Arrays.stream(values).mapToObj(Lifetime::event).toList());
    }

    /**
     * The fit to specimens of which some may have outlasted the test.
     *
     * <p>The shape m solves Σxᵐ ln x/Σxᵐ − 1/m − (mean ln x of the failures) = 0, sums over all
     * specimens; the scale is (Σxᵐ/failures)^(1/m). There is none with fewer than two failures, or
     * if all specimens failed at one value.
     *
     * @throws IllegalArgumentException if there is none, one lies between two looks, or unless each
     *     is above zero
     */
    static Weibull fit(List<Lifetime> lives) {
        Arguments.requireAtLeast(lives.size(), 1, "number of specimens");
        double[] logs = new double[lives.size()];
        int failures = 0;
        double sumOfFailed = 0;
        for (int i = 0; i < logs.length; i++) {
            Lifetime life = lives.get(i);
            if (life.isBetweenLooks()) {
                throw new IllegalArgumentException("A value that is only known to lie between "
                        + life.after() + " and " + life.until() + " can't be fitted.");
            }
            logs[i] = StrictMath.log(Arguments.requirePositive(life.after(), "value"));
            failures += life.isCensored() ? 0 : 1;
            sumOfFailed += life.isCensored() ? 0 : logs[i];
        }
        if (failures < 2) {
            return new NoFit("A Weibull distribution needs at least 2 failures; there "
                    + (failures == 1 ? "is 1." : "are none."));
        }
        double[] parameters = WeibullLikelihood.maximum(logs, failures, sumOfFailed / failures);
        if (parameters.length == 0) {
            return new NoFit(
                    "All specimens failed at one value, which leaves the shape without a bound.");
        }
        double shape = parameters[0];
        double logScale = parameters[1];
        double logLikelihood = failures * StrictMath.log(shape)
                - failures * shape * logScale
                + (shape - 1) * sumOfFailed
                - failures;
        return new Fit(shape, StrictMath.exp(logScale), logLikelihood, failures, lives.size());
    }

    /** ln(−ln(1 − p)). */
    static double logOfLog(double p) {
        return StrictMath.log(-StrictMath.log1p(-p));
    }
}
