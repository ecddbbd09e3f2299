package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Fieller;
import org.twinbar.statistics.LogRatio;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.RatioInterval;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.TwoMeans;
import org.twinbar.statistics.resampling.Bootstrap;
import org.twinbar.statistics.resampling.BootstrapInterval;
import org.twinbar.statistics.resampling.TwoGroupStatistic;

/** How often intervals hold the truth, against the simulations of METHODS.md; seeds are fixed. */
class CoverageReferenceTest {

    private static final int STUDIES = 3_000;

    private final Checks checks = Checks.of(getClass());

    private static double[] normal(Random random, int n, double mean, double sd) {
        return IntStream.range(0, n)
                .mapToDouble(i -> mean + sd * random.nextGaussian())
                .toArray();
    }

    /** Why Fieller's interval is the default and BCa stands beside. */
    @Test
    void agreesOnRatiosOfFiveAndFive() {
        Random random = new Random(172);
        int fieller = 0;
        int log = 0;
        int bca = 0;
        for (int study = 0; study < STUDIES; study++) {
            double[] ours = normal(random, 5, 110, 11);
            double[] others = normal(random, 5, 100, 10);
            TwoMeans means = TwoMeans.of(MeanEstimate.of(ours), MeanEstimate.of(others));
            RatioInterval interval = Fieller.ratio(means, 0.95);
            fieller += interval instanceof RatioInterval.Finite finite
                            && finite.estimate().holds(1.1)
                    ? 1
                    : 0;
            Estimate logs = LogRatio.ofMeans(means, 0.95);
            log += logs.holds(1.1) ? 1 : 0;
            BootstrapInterval drawn = Bootstrap.seeded(study)
                    .withResamples(1_000)
                    .twoGroups(TwoGroups.of(ours, others), TwoGroupStatistic.RATIO_OF_MEANS, 0.95);
            bca += drawn.low() <= 1.1 && 1.1 <= drawn.high() ? 1 : 0;
        }
        checks.row("M-172-fieller").expects((double) fieller / STUDIES);
        checks.row("M-172-log").expects((double) log / STUDIES);
        checks.row("M-172-bca").expects((double) bca / STUDIES);
    }

    /** Five bars of one batch are repeats of one another: taken for more, they mislead. */
    @Test
    void agreesOnTheErrorOfTakingOneBatchForFive() {
        Random random = new Random(173);
        Question question = Question.of(Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER)
                .withResolution(0);
        int apart = 0;
        int supported = 0;
        int studies = 10_000;
        for (int study = 0; study < studies; study++) {
            List<Observation> told = new ArrayList<>();
            List<Observation> untold = new ArrayList<>();
            for (String group : List.of("plain", "coated")) {
                double batch = 50 + 5 * random.nextGaussian();
                for (Observation one : Specimens.of(group, normal(random, 5, batch, 3))) {
                    untold.add(one);
                    told.add(one.inBlock(new Block("print run", group)));
                }
            }
            Judgement naive = Comparing.judge(question, untold, "plain", "coated");
            apart += naive.found().lowest() > 0 || naive.found().highest() < 0 ? 1 : 0;
            supported += Comparing.judge(question, told, "plain", "coated").verdict()
                            == Verdict.SUPPORTED
                    ? 1
                    : 0;
        }
        checks.row("M-173").expects((double) apart / studies);
        checks.row("M-173-units").expects((double) supported / studies);
    }
}
