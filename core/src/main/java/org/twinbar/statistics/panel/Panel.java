package org.twinbar.statistics.panel;

import java.util.Arrays;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.ChiSquared;
import org.twinbar.statistics.MidRanks;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.Summary;

/** Several raters who each judged the same parts. */
public final class Panel {

    /** How ratings of one part become one value. */
    public enum Reduction {
        MEDIAN,
        MEAN
    }

    private Panel() {}

    /**
     * One value for each part: raters are repeats of a reading, not parts.
     *
     * @param byPart for each part its ratings; parts may have different numbers of them
     * @throws IllegalArgumentException if a part has no rating, or one isn't finite
     */
    public static double[] perPart(double[][] byPart, Reduction reduction) {
        return Arrays.stream(byPart)
                .mapToDouble(ratings -> {
                    Summary summary = Summary.of(ratings);
                    return reduction == Reduction.MEDIAN ? summary.median() : summary.mean();
                })
                .toArray();
    }

    /**
     * Kendall's W: how far raters rank the parts alike, from 0 (as chance has it) to 1 (all alike).
     *
     * <p>W = 12S/(m²(n³ − n) − mΣ(t³ − t)), S the squares of the parts' rank sums about their mean,
     * t the ties of each of m raters; p from χ² = m(n − 1)W with n − 1 degrees of freedom, fair
     * from seven parts on. Where every rater gave all parts one rating there is no ranking to agree
     * on, and W is 0 with p 1. Source: M. G. Kendall, Rank Correlation Methods, 4th ed. 1970.
     *
     * @param byRater for each rater the ratings of all parts, in one order
     * @throws IllegalArgumentException unless there are 2 raters and 2 parts at least, each part
     *     rated by each
     */
    public static Significance agreement(double[][] byRater) {
        RankSums ranks = RankSums.of(byRater, "raters", "parts");
        double n = ranks.sums().length;
        double m = ranks.blocks();
        double most = m * m * (n * n * n - n) - m * ranks.ties();
        double w = most > 0 ? 12 * ranks.squares() / most : 0;
        double statistic = m * (n - 1) * w;
        return new Significance(w, n - 1, new ChiSquared(n - 1).above(statistic), "Kendall's W");
    }

    /**
     * Friedman's test: do the treatments differ where each block (rater, pair, run) holds all of
     * them once?
     *
     * <p>χ² = m(k − 1)W with m blocks, k treatments and W of {@link #agreement}; k − 1 degrees of
     * freedom. Source: M. Friedman, The use of ranks to avoid the assumption of normality (1937),
     * doi:10.1080/01621459.1937.10503522.
     *
     * @param byBlock for each block the value of each treatment, in one order
     * @throws IllegalArgumentException unless there are 2 blocks and 2 treatments at least, each
     *     block complete
     */
    public static Significance friedman(double[][] byBlock) {
        Significance agreement = agreement(byBlock);
        double statistic = byBlock.length * agreement.df() * agreement.statistic();
        return new Significance(statistic, agreement.df(), agreement.p(), "Friedman");
    }

    /**
     * Kruskal and Wallis's test: do several groups differ in the ranks of their values?
     *
     * <p>H = (12/(N(N + 1))·ΣRᵢ²/nᵢ − 3(N + 1))/(1 − Σ(t³ − t)/(N³ − N)), on k − 1 degrees of
     * freedom; H is 0 where all values are equal. Source: W. H. Kruskal, W. A. Wallis, Use of ranks
     * in one-criterion variance analysis (1952), doi:10.1080/01621459.1952.10483441.
     *
     * @throws IllegalArgumentException unless there are 2 groups at least, none empty
     */
    public static Significance kruskalWallis(double[]... groups) {
        int k = Arguments.requireAtLeast(groups.length, 2, "number of groups");
        for (double[] group : groups) {
            Arguments.requireFinite(group, 1, "values of a group");
        }
        MidRanks ranks = MidRanks.among(groups);
        double n = Arrays.stream(groups).mapToInt(group -> group.length).sum();
        double squares = 0;
        for (double[] group : groups) {
            double sum = Arrays.stream(ranks.of(group)).sum();
            // About the middle rank nothing large is subtracted from something large.
            double off = sum / group.length - (n + 1) / 2;
            squares += group.length * off * off;
        }
        double[] all = Arrays.stream(groups).flatMapToDouble(Arrays::stream).toArray();
        double untied = 1 - RankSums.ties(all) / (n * n * n - n);
        double h = untied > 0 ? 12 * squares / (n * (n + 1)) / untied : 0;
        return new Significance(h, k - 1, new ChiSquared(k - 1).above(h), "Kruskal–Wallis");
    }
}
