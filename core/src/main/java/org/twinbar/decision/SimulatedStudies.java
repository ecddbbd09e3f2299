package org.twinbar.decision;

import java.util.OptionalInt;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.TwoMeans;

/**
 * Studies drawn from a study's own scatter: how often the real verdict rule would say "supported".
 *
 * <p>Each group's specimens are drawn with replacement from the deviations seen in it, times √(n/(n
 * − 1)) so that their scatter is s, about its mean; the treated one's about the mean that the
 * assumed effect gives. A check on the power that normal scatter promises, rough where few
 * deviations were seen.
 *
 * @param truth the effect that is assumed, on its scale
 */
record SimulatedStudies(Judge judge, Judge.Judged judged, double truth) {

    static final int STUDIES = 400;

    /** Two standard errors of a share of 80 % in so many studies. */
    static final double NOISE = 0.04;

    /** More than this are past what a simulation is asked for; the power is exact there. */
    static final int MOST_PER_GROUP = 200;

    /** Steps by which more are tried, in proportion. */
    private static final double MORE = 1.15;

    /** Returns about the fewest above a number with which so many studies are supported. */
    OptionalInt enough(int above) {
        int n = above;
        while (n < MOST_PER_GROUP) {
            n = Math.min(MOST_PER_GROUP, Math.max(n + 1, (int) (MORE * n)));
            if (supported(n) >= Fewest.POWER) {
                return OptionalInt.of(n);
            }
        }
        return OptionalInt.empty();
    }

    double supported(int n) {
        UniformRandomProvider random =
                RandomSource.XO_SHI_RO_256_PP.create(judge.question().seed());
        double[] ours = deviations(judged.treated());
        double[] others = deviations(judged.control());
        double mean = judged.control().summary().mean();
        double changed = judge.question().effect() == Effect.RATIO ? truth * mean : mean + truth;
        double uTreated = judged.treated().resolution(judge.step());
        double uControl = judged.control().resolution(judge.step());
        Means calculation = new Means(judge.question(), judge.step());
        boolean ratio = judge.question().effect() == Effect.RATIO;
        int supported = 0;
        int judgedStudies = 0;
        for (int study = 0; study < STUDIES; study++) {
            MeanEstimate treated = drawn(changed, ours, n, random).withResolution(uTreated);
            MeanEstimate control = drawn(mean, others, n, random).withResolution(uControl);
            if (ratio && !(Math.min(treated.mean(), control.mean()) > 0)) {
                continue;
            }
            judgedStudies++;
            Found found = calculation.found(TwoMeans.of(treated, control));
            Verdict verdict = VerdictRule.read(found.lowest(), found.highest(), judge.question());
            supported += verdict == Verdict.SUPPORTED ? 1 : 0;
        }
        return judgedStudies == 0 ? 0 : (double) supported / judgedStudies;
    }

    private static double[] deviations(Sample sample) {
        double[] values = sample.values();
        double mean = Summary.of(values).mean();
        double widened = Math.sqrt(values.length / (values.length - 1.0));
        for (int i = 0; i < values.length; i++) {
            values[i] = (values[i] - mean) * widened;
        }
        return values;
    }

    private static MeanEstimate drawn(
            double mean, double[] deviations, int n, UniformRandomProvider random) {
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = mean + deviations[random.nextInt(deviations.length)];
        }
        return MeanEstimate.of(values);
    }
}
