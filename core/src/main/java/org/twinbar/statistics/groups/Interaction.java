package org.twinbar.statistics.groups;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.Shift;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.TwoMeans;

/**
 * Whether a treatment does in one place what it does in another: flat against upright, this
 * material against that.
 *
 * <p>Each of the four groups keeps its own spread; degrees of freedom are Welch and
 * Satterthwaite's, (Σvᵢ)²/Σ(vᵢ²/νᵢ), v the variance of a mean. An error that both places share
 * moves both by what it does to each, and cancels as far as it does the same; the shared errors of
 * the two places are given in one order.
 */
public final class Interaction {

    private Interaction() {}

    /**
     * The treated less control here, less the same there: 0 where the treatment adds alike.
     *
     * @throws IllegalArgumentException if the places differ in their shared errors, nothing varies,
     *     or level is not within (0, 1)
     */
    public static Estimate ofDifferences(TwoMeans here, TwoMeans there, double level) {
        return contrast(
                Contrast.of(here, there), level, "difference of differences, unequal spread");
    }

    /**
     * The ratio of means here over the ratio there: 1 where the treatment multiplies alike.
     *
     * <p>On logarithms of the means, the variance of each v/x̄², a shared error's move Δ/x̄. Good
     * where each mean is uncertain by less than a tenth of itself.
     *
     * @throws IllegalArgumentException under the conditions of {@link #ofDifferences}, or if a mean
     *     is ≤ 0
     */
    public static Estimate ofRatios(TwoMeans here, TwoMeans there, double level) {
        Estimate log = contrast(
                Contrast.of(logarithms(here), logarithms(there)),
                level,
                "ratio of ratios of means, unequal spread");
        return new Estimate(
                StrictMath.exp(log.value()),
                StrictMath.exp(log.low()),
                StrictMath.exp(log.high()),
                level,
                log.df(),
                log.n(),
                log.method());
    }

    private record Contrast(double value, List<MeanEstimate> means, List<Shift> moves) {

        /** The control of a move is what the error does there. */
        static Contrast of(TwoMeans here, TwoMeans there) {
            Arguments.requireAtLeast(
                    there.shared().size(), here.shared().size(), "number of errors shared there");
            Arguments.requireAtLeast(
                    here.shared().size(), there.shared().size(), "number of errors shared here");
            List<Shift> moves = new ArrayList<>();
            for (int i = 0; i < here.shared().size(); i++) {
                Shift one = here.shared().get(i);
                Shift other = there.shared().get(i);
                moves.add(new Shift(
                        one.treated() - one.control(),
                        other.treated() - other.control(),
                        one.df()));
            }
            return new Contrast(
                    here.treated().mean()
                            - here.control().mean()
                            - there.treated().mean()
                            + there.control().mean(),
                    List.of(here.treated(), here.control(), there.treated(), there.control()),
                    moves);
        }
    }

    private static Estimate contrast(Contrast contrast, double level, String method) {
        double variance = 0;
        double squares = 0;
        int n = 0;
        for (MeanEstimate mean : contrast.means()) {
            variance += mean.variance();
            squares += mean.variance() * mean.variance() / mean.df();
            n += mean.n();
        }
        for (Shift shift : contrast.moves()) {
            double move = shift.treated() - shift.control();
            variance += move * move;
            squares += move * move * move * move / shift.df();
        }
        if (!(variance > 0)) {
            throw new IllegalArgumentException(
                    "Four groups of equal values show no scatter to judge by.");
        }
        double df = squares > 0 ? variance * variance / squares : Double.POSITIVE_INFINITY;
        double half = new StudentT(df).twoSided(Arguments.requireInside(level, "level"))
                * Math.sqrt(variance);
        double value = contrast.value();
        return new Estimate(value, value - half, value + half, level, df, n, method);
    }

    private static TwoMeans logarithms(TwoMeans means) {
        double treated = positive(means.treated());
        double control = positive(means.control());
        List<Shift> relative = means.shared().stream()
                .map(shift ->
                        new Shift(shift.treated() / treated, shift.control() / control, shift.df()))
                .toList();
        return new TwoMeans(logarithm(means.treated()), logarithm(means.control()), relative);
    }

    private static double positive(MeanEstimate mean) {
        return Arguments.requirePositive(mean.mean(), "mean of each group");
    }

    private static MeanEstimate logarithm(MeanEstimate mean) {
        double relative = mean.variance() / (mean.mean() * mean.mean());
        return new MeanEstimate(StrictMath.log(mean.mean()), relative, mean.df(), mean.n());
    }
}
