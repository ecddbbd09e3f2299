package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.Power;
import org.twinbar.statistics.StudentT;

/**
 * The chance of "supported" for so many blocks that hold both groups, as many specimens of each in
 * every one.
 *
 * <p>From three blocks on the effect is the mean of the blocks' own effects on their scatter, 2σ²ᵦ
 * + σ²(1/k_T + 1/k_C), with one degree of freedom fewer than blocks: exact for normal scatter and
 * equal numbers, by the noncentral t. On logarithms for a ratio. Source: METHODS.md I.6.
 *
 * @param truth effect that is assumed, on the model's scale
 * @param scatter of one block's effect
 */
record BlocksProspect(Question question, double truth, WithinBlocks.Scatter scatter, String kind)
        implements Prospect {

    /** Returns nothing where the blocks leave no scatter to plan by. */
    static Optional<Prospect> of(Judge judge, Judge.Judged judged, double effect) {
        return new WithinBlocks(judge.question(), judge.step())
                .scatter(judged.treated(), judged.control())
                .filter(scatter -> scatter.ofOneBlock() > 0)
                .map(scatter -> new BlocksProspect(
                        judge.question(),
                        scale(judge.question(), effect),
                        scatter,
                        Layout.kind(judged.treated())));
    }

    @Override
    public double supported(int blocks) {
        double error = Math.sqrt(scatter.ofOneBlock() / blocks);
        double df = blocks - 1;
        double alpha = question.errorRate() / 2;
        if (question.expectation() == Expectation.SAME) {
            double size = question.worthSize().orElseThrow();
            double least = scale(question, question.none() - size);
            double most = scale(question, question.none() + size);
            return Power.alike(new Power.Alike(least, most, truth), error, df, alpha);
        }
        double away = truth - scale(question, question.worth());
        double towards = question.expectation() == Expectation.HIGHER ? away : -away;
        // So far out the estimate's own scatter can't bring it back.
        double certain = 40 * new StudentT(df).quantile(1 - alpha);
        return Power.ofEstimate(Math.min(certain, towards / error), df, alpha);
    }

    @Override
    public String method() {
        return "exact for normal scatter and equal numbers, noncentral t of the "
                + Written.plural(kind);
    }

    @Override
    public Needed.Specimens needed(int blocks, double power, String assuming) {
        return new Needed.Specimens(
                blocks * scatter.perBlock(),
                Optional.of(new Needed.InBlocks(blocks, kind, Needed.Holding.BOTH_GROUPS)),
                power,
                method(),
                scatter.ofEffectSeen()
                        ? assuming
                        : assuming + ", the treatment acting alike in every " + kind,
                Optional.empty());
    }

    private static double scale(Question question, double effect) {
        return question.effect() == Effect.RATIO
                ? StrictMath.log(Math.max(effect, Double.MIN_NORMAL))
                : effect;
    }
}
