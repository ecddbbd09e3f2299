package org.twinbar.benchmarks;

import java.util.List;
import java.util.function.Function;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Judgement;
import org.twinbar.decision.LevelJudging;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Question;
import org.twinbar.decision.Verdict;

/**
 * Studies of a kind other than two means, once at the edge of the claim and once well beyond it.
 *
 * @param section which table it belongs to
 * @param words what it is, in a table's row
 * @param numbers specimens of the treated and the control
 * @param dot number that stands beside its dot in the picture
 * @param edge where the claim is just not true, so that "supported" is false
 * @param beyond where it is true
 */
record Kind(Section section, String words, String numbers, int dot, Truth edge, Truth beyond) {

    /**
     * A simulated world.
     *
     * @param question that is asked in it
     * @param truth the true effect on the question's scale
     * @param drawn the specimens of a study
     */
    record Truth(
            Question question,
            double truth,
            Function<UniformRandomProvider, List<Observation>> drawn) {}

    /** How often the verdict was what: of so many studies at the edge, a quarter as many beyond. */
    record Tally(Kind kind, int studies, int supported, int contradicted, int covered, int beyond) {

        double supportedShare() {
            return (double) supported / studies;
        }

        double contradictedShare() {
            return (double) contradicted / studies;
        }

        double coverage() {
            return (double) covered / studies;
        }

        double beyondShare() {
            return (double) beyond / (studies / FEWER_BEYOND);
        }
    }

    /** What is found beyond is shown to whole per cents only. */
    private static final int FEWER_BEYOND = 4;

    /** Judges so many studies at the edge; the same seed gives the same ones. */
    Tally judge(int studies, long seed) {
        int[] edge = judge(this.edge, studies, seed);
        int[] beyond = judge(this.beyond, studies / FEWER_BEYOND, seed + 1);
        return new Tally(this, studies, edge[0], edge[1], edge[2], beyond[0]);
    }

    private int[] judge(Truth world, int studies, long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(
                new long[] {seed, (section + words + numbers).hashCode(), 13, 17});
        Function<List<Observation>, Judgement> judging = judging(world.question());
        int[] counts = new int[3];
        for (int study = 0; study < studies; study++) {
            Judgement judgement = judging.apply(world.drawn().apply(random));
            counts[0] += judgement.verdict() == Verdict.SUPPORTED ? 1 : 0;
            counts[1] += judgement.verdict() == Verdict.CONTRADICTED ? 1 : 0;
            double low = judgement.found().low().orElse(Double.NEGATIVE_INFINITY);
            double high = judgement.found().high().orElse(Double.POSITIVE_INFINITY);
            counts[2] += low <= world.truth() && world.truth() <= high ? 1 : 0;
        }
        return counts;
    }

    private static Function<List<Observation>, Judgement> judging(Question question) {
        if (question.level().isPresent()) {
            LevelJudging levels = new LevelJudging(question);
            return specimens -> levels.judge(specimens, "treated");
        }
        return specimens -> Comparing.judge(question, specimens, "control", "treated");
    }
}
