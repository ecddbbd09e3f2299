package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.Power;
import org.twinbar.statistics.TwoMeans;

/**
 * The chance of "supported" for two means, by the noncentral t of {@link Power}, for normal scatter
 * as large as was seen.
 *
 * <p>What counts is the specimen, or the unit, mix or run where specimens repeat one another. A
 * claim of no change asks that the interval fits inside its limits ({@link Power#alike}), for a
 * ratio on logarithms.
 *
 * @param repeats specimens in each of what counts
 * @param variances of one of what counts, treated and control
 */
record MeansProspect(
        Question question, double truth, Repeats repeats, double controlMean, Variances variances)
        implements Prospect {

    /** Variances of one of what counts. */
    record Variances(double treated, double control) {}

    /** Returns nothing where the groups show no scatter to plan by. */
    static Optional<Prospect> of(Judge judge, Judge.Judged judged, double truth) {
        int fewest = Math.min(judged.treated().values().length, judged.control().values().length);
        if (fewest < 2) {
            return Optional.empty();
        }
        TwoMeans means =
                new Means(judge.question(), judge.step()).means(judged.treated(), judged.control());
        double treated = means.treated().variance() * means.treated().n();
        double control = means.control().variance() * means.control().n();
        if (judged.layout() == Layout.TREATED_IN_SEVERAL) {
            // As many control specimens are made as treated ones, each for itself.
            control /= judged.repeats().specimens();
        }
        double variation =
                Math.sqrt(treated + control) / Math.abs(means.control().mean());
        boolean ratio = judge.question().effect() == Effect.RATIO;
        if (!(treated + control > 0) || (ratio && !(variation < 1))) {
            return Optional.empty();
        }
        return Optional.of(new MeansProspect(
                judge.question(),
                truth,
                judged.repeats(),
                means.control().mean(),
                new Variances(treated, control)));
    }

    @Override
    public double supported(int n) {
        double alpha = question.errorRate() / 2;
        return question.expectation() == Expectation.SAME
                ? alike(n, alpha)
                : Power.of(planned(), n, alpha);
    }

    @Override
    public String method() {
        return question.expectation() == Expectation.SAME
                ? "exact for normal scatter, Owen's Q"
                : "exact for normal scatter, noncentral t";
    }

    @Override
    public Needed.Specimens needed(int n, double power, String assuming) {
        return new Needed.Specimens(
                n * repeats.specimens(),
                repeats.blocks(n),
                power,
                method(),
                assuming,
                Optional.empty());
    }

    private PlannedEffect planned() {
        double treated = variances.treated();
        double control = variances.control();
        double worth = question.worth();
        if (question.effect() != Effect.RATIO) {
            return new PlannedEffect.Difference(truth, worth, Math.sqrt((treated + control) / 2));
        }
        // The one coefficient of variation that gives this effect the same noncentrality.
        double variation =
                Math.sqrt((treated + worth * worth * control) / (truth * truth + worth * worth))
                        / controlMean;
        return new PlannedEffect.Ratio(truth, worth, variation);
    }

    private double alike(int n, double alpha) {
        double size = question.worthSize().orElseThrow();
        double low = question.none() - size;
        double high = question.none() + size;
        if (question.effect() != Effect.RATIO) {
            double error = Math.sqrt((variances.treated() + variances.control()) / n);
            return Power.alike(new Power.Alike(low, high, truth), error, 2.0 * n - 2, alpha);
        }
        double treated = variances.treated() / (controlMean * controlMean * truth * truth);
        double control = variances.control() / (controlMean * controlMean);
        Power.Alike limits = new Power.Alike(
                low > 0 ? StrictMath.log(low) : -Double.MAX_VALUE,
                StrictMath.log(high),
                StrictMath.log(truth));
        return Power.alike(limits, Math.sqrt((treated + control) / n), 2.0 * n - 2, alpha);
    }
}
