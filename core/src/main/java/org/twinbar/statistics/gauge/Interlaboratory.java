package org.twinbar.statistics.gauge;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.FisherF;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;

/**
 * How laboratories agree that each tested one material the same number of times.
 *
 * <p>s_r = √(mean of sᵢ²); s_R = √(max(s_r², s_x̄² + s_r²(n − 1)/n)); limits r = 2.8·s_r and R =
 * 2.8·s_R. h tells how far a laboratory's mean lies from all, k how its scatter compares. Source:
 * ASTM E691, ISO 5725-2.
 *
 * @param mean of all (the values' unit)
 * @param repeatability s_r, within one laboratory
 * @param reproducibility s_R, from one laboratory to another
 * @param laboratories each one's h and k, in order
 * @param values in each laboratory
 */
public record Interlaboratory(
        double mean,
        double repeatability,
        double reproducibility,
        List<Laboratory> laboratories,
        int values) {

    /**
     * One laboratory among the others.
     *
     * @param h (its mean − the mean of all)/standard deviation of the laboratories' means; 0 where
     *     these are equal
     * @param k its standard deviation over s_r; 0 where nothing varies
     */
    public record Laboratory(double h, double k) {}

    /** 1.96·√2, as the standards round it. */
    private static final double LIMIT = 2.8;

    public Interlaboratory {
        laboratories = List.copyOf(laboratories);
    }

    /**
     * The agreement of these laboratories.
     *
     * @throws IllegalArgumentException unless there are 3 laboratories at least, with 2 values or
     *     more each, all alike
     */
    public static Interlaboratory of(double[]... byLaboratory) {
        int p = Arguments.requireAtLeast(byLaboratory.length, 3, "number of laboratories");
        int n = Arguments.requireAtLeast(
                byLaboratory[0].length, 2, "number of values in each laboratory");
        double[] means = new double[p];
        double within = 0;
        for (int i = 0; i < p; i++) {
            if (byLaboratory[i].length != n) {
                throw new IllegalArgumentException("Every laboratory must have " + n
                        + " values, but one has " + byLaboratory[i].length + ".");
            }
            Summary summary = Summary.of(byLaboratory[i]);
            means[i] = summary.mean();
            within += summary.variance() / p;
        }
        Summary ofMeans = Summary.of(means);
        double repeatability = Math.sqrt(within);
        List<Laboratory> laboratories = new ArrayList<>();
        for (int i = 0; i < p; i++) {
            double off = means[i] - ofMeans.mean();
            double sd = Summary.of(byLaboratory[i]).sd();
            laboratories.add(new Laboratory(
                    off == 0 ? 0 : off / ofMeans.sd(), sd == 0 ? 0 : sd / repeatability));
        }
        double between = ofMeans.variance() + within * (n - 1) / n;
        return new Interlaboratory(
                ofMeans.mean(),
                repeatability,
                Math.sqrt(Math.max(within, between)),
                laboratories,
                n);
    }

    /** r: two results of one laboratory differ by more in 5 % of cases (the values' unit). */
    public double repeatabilityLimit() {
        return LIMIT * repeatability;
    }

    /** R: two results of two laboratories differ by more in 5 % of cases (the values' unit). */
    public double reproducibilityLimit() {
        return LIMIT * reproducibility;
    }

    /**
     * What |h| exceeds at this error rate for one laboratory: (p − 1)t/√(p(t² + p − 2)), t
     * two-sided on p − 2 degrees of freedom.
     *
     * @param errorRate 0.005 in E691
     * @throws IllegalArgumentException unless 0 < errorRate < 1
     */
    public double criticalH(double errorRate) {
        int p = laboratories.size();
        double t =
                new StudentT(p - 2).twoSided(1 - Arguments.requireInside(errorRate, "error rate"));
        return (p - 1) * t / Math.sqrt(p * (t * t + p - 2));
    }

    /**
     * What k exceeds at this error rate for one laboratory: √(p/(1 + (p − 1)/F)), F the upper point
     * with n − 1 and (p − 1)(n − 1) degrees of freedom.
     *
     * @param errorRate 0.005 in E691
     * @throws IllegalArgumentException unless 0 < errorRate < 1
     */
    public double criticalK(double errorRate) {
        int p = laboratories.size();
        Arguments.requireInside(errorRate, "error rate");
        double f = new FisherF(values - 1.0, (p - 1.0) * (values - 1)).quantile(1 - errorRate);
        return Math.sqrt(p / (1 + (p - 1) / f));
    }
}
