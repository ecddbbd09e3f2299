package org.twinbar.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.decision.Block;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Judgement;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Question;
import org.twinbar.decision.Subject;
import org.twinbar.decision.Verdict;
import org.twinbar.quantity.Unit;

/**
 * Studies of one kind, judged by the code that judges real ones.
 *
 * @param effect ratio or difference
 * @param scatter of the specimens
 * @param treated specimens of the treated group
 * @param control specimens of the control
 * @param runs print runs that hold both groups; 0 for none
 * @param worth smallest change worth having, as a share of the control's mean
 * @param truth true change, likewise
 */
record Cell(
        Effect effect,
        Scatter scatter,
        int treated,
        int control,
        int runs,
        double worth,
        double truth) {

    private static final Subject STRENGTH = new Subject("strength", Unit.of("MPa"), "bars");
    private static final double MEAN = 50;

    /** Scatter between print runs, as a share of the mean. */
    private static final double BETWEEN_RUNS = 0.1;

    /**
     * How often the verdict was what.
     *
     * @param studies how many were judged
     * @param supported how many were supported
     * @param contradicted how many were contradicted
     * @param covered how many intervals held the truth
     */
    record Tally(Cell cell, int studies, int supported, int contradicted, int covered) {

        double coverage() {
            return (double) covered / studies;
        }

        double supportedShare() {
            return (double) supported / studies;
        }

        double contradictedShare() {
            return (double) contradicted / studies;
        }

        /**
         * Returns whether "supported" is false here: the truth isn't above what is worth having.
         */
        boolean supportedIsFalse() {
            return cell.truth() <= cell.worth();
        }
    }

    /** Judges so many studies; the same seed gives the same ones. */
    Tally judge(int studies, long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(
                new long[] {seed, toString().hashCode(), 7, 11});
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        Question question = question();
        double truth = effect == Effect.RATIO ? 1 + this.truth : MEAN * this.truth;
        int supported = 0;
        int contradicted = 0;
        int covered = 0;
        for (int study = 0; study < studies; study++) {
            Judgement judgement =
                    Comparing.judge(question, specimens(random, normal), "control", "treated");
            supported += judgement.verdict() == Verdict.SUPPORTED ? 1 : 0;
            contradicted += judgement.verdict() == Verdict.CONTRADICTED ? 1 : 0;
            double low = judgement.found().low().orElse(Double.NEGATIVE_INFINITY);
            double high = judgement.found().high().orElse(Double.POSITIVE_INFINITY);
            covered += low <= truth && truth <= high ? 1 : 0;
        }
        return new Tally(this, studies, supported, contradicted, covered);
    }

    private Question question() {
        Question question = Question.of(STRENGTH, effect, Expectation.HIGHER)
                .withResolution(MEAN * scatter.step());
        double size = effect == Effect.RATIO ? worth : MEAN * worth;
        return worth > 0 ? question.withWorth(size) : question;
    }

    private List<Observation> specimens(
            UniformRandomProvider random, ZigguratSampler.NormalizedGaussian normal) {
        double[] run = new double[Math.max(1, runs)];
        for (int i = 0; i < runs; i++) {
            run[i] = BETWEEN_RUNS * normal.sample();
        }
        List<Observation> all = new ArrayList<>(treated + control);
        for (int i = 0; i < control; i++) {
            double value = scatter.draw(random, normal.sample()) + run[i % run.length];
            all.add(observation("C" + i, "control", value, i));
        }
        for (int i = 0; i < treated; i++) {
            double value = scatter.drawTreated(random, normal.sample()) + run[i % run.length];
            double changed = effect == Effect.RATIO ? (1 + truth) * value : value + truth;
            all.add(observation("T" + i, "treated", changed, i));
        }
        return all;
    }

    private Observation observation(String code, String group, double share, int index) {
        double step = MEAN * scatter.step();
        double value = MEAN * share;
        double read = step > 0 ? step * Math.rint(value / step) : value;
        Observation observation = Observation.of(code, group, read);
        return runs > 0
                ? observation.inBlock(new Block("print run", "R" + index % runs))
                : observation;
    }
}
