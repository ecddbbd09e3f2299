package org.twinbar.statistics.resampling;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.apache.commons.numbers.arrays.Selection;
import org.twinbar.statistics.TwoGroups;

/**
 * Permutation test and interval for two groups: what would dealing out the labels by chance have
 * given?
 *
 * <p>All splits of the values into groups of the sizes seen are listed where they are few enough;
 * otherwise splits are drawn from a seed. Within blocks, labels move only inside their block. The
 * test is exact where labels were dealt out at random, or where the groups are alike but for the
 * effect; where their spreads differ, use {@link Statistic#WELCH_T}, which then holds for larger
 * groups.
 *
 * <p>Source: E. S. Edgington and P. Onghena, Randomization Tests, 4th ed. 2007; for the interval P.
 * H. Garthwaite, Confidence intervals from randomization tests, Biometrics 52 (1996) 1387; for
 * (b+1)/(B+1) B. Phipson and G. K. Smyth, Permutation p-values should never be zero, Stat. Appl.
 * Genet. Mol. Biol. 9 (2010) 39.
 */
public final class Permutation {

    /** What is calculated for each split. */
    public enum Statistic {
        /**
         * Difference of means; in blocks, the mean of the blocks' differences weighted by
         * n₁n₂/(n₁+n₂).
         */
        DIFFERENCE_OF_MEANS,
        /** Welch's t; in blocks, of the values less their block's mean. */
        WELCH_T,
        /**
         * Logarithm of the ratio of means, values above zero; in blocks, of the means weighted
         * likewise.
         */
        LOG_RATIO_OF_MEANS
    }

    /** What the treatment is taken to do to a value. */
    public enum Effect {
        /** It adds to it. */
        DIFFERENCE,
        /** It multiplies it. */
        RATIO
    }

    /** C(22, 11) is 705,432: all splits of 11 + 11 are listed. */
    private static final int MOST_SPLITS = 1_000_000;

    private static final int DRAWS = 99_999;

    private final int mostSplits;
    private final int draws;
    private final long seed;

    private Permutation(int mostSplits, int draws, long seed) {
        this.mostSplits = mostSplits;
        this.draws = draws;
        this.seed = seed;
    }

    /** Lists up to a million splits, draws 99,999 beyond that, with this seed. */
    public static Permutation seeded(long seed) {
        return new Permutation(MOST_SPLITS, DRAWS, seed);
    }

    /** The same, listing up to so many splits. */
    public Permutation withMostSplits(int most) {
        return new Permutation(most, draws, seed);
    }

    /**
     * The same, drawing so many splits where they are too many to list.
     *
     * @throws IllegalArgumentException if {@code count} &lt; 1
     */
    public Permutation withDraws(int count) {
        if (count < 1) {
            throw new IllegalArgumentException(
                    "At least 1 split must be drawn, not " + count + ".");
        }
        return new Permutation(mostSplits, count, seed);
    }

    /** Tests one treated group against its control. */
    public PermutationTest test(TwoGroups groups, Statistic statistic) {
        return test(List.of(groups), statistic);
    }

    /**
     * Tests for an effect, labels moving within their block.
     *
     * <p>p = #{T* ≥ T}/C over all C splits, or (1 + #{T* ≥ T})/(B + 1) over B drawn ones; two-sided
     * by |T|. Values equal but for rounding count as equal. The smallest two-sided p of 3 + 3
     * values is 0.1.
     *
     * @throws IllegalArgumentException if no block holds both groups, or if a value is ≤ 0 for a
     *     ratio
     */
    public PermutationTest test(List<TwoGroups> blocks, Statistic statistic) {
        Design design = Design.of(blocks, statistic == Statistic.LOG_RATIO_OF_MEANS);
        SplitStatistic calculated = switch (statistic) {
            case DIFFERENCE_OF_MEANS -> SplitStatistic.sum(design);
            case WELCH_T -> SplitStatistic.welch(design);
            case LOG_RATIO_OF_MEANS -> SplitStatistic.logRatio(design);
        };
        boolean all = Splits.count(design.blocks()) <= mostSplits;
        if (all) {
            calculated.splits().visitAll(calculated);
        } else {
            calculated.splits().visitDrawn(draws, seed, calculated);
        }
        // Of drawn splits the observed one is counted beside them; among all of them it is.
        int beside = all ? 0 : 1;
        double total = calculated.visited() + beside;
        return new PermutationTest(
                statistic == Statistic.LOG_RATIO_OF_MEANS ? design.ratio() : design.difference(),
                (calculated.asFar() + beside) / total,
                (calculated.asLarge() + beside) / total,
                (calculated.asSmall() + beside) / total,
                (long) total,
                design.treatedCount(),
                design.controlCount(),
                describe(words(statistic), blocks.size(), all),
                all ? OptionalLong.empty() : OptionalLong.of(seed));
    }

    /** The interval of one treated group against its control. */
    public PermutationInterval interval(TwoGroups groups, Effect effect, double level) {
        return interval(List.of(groups), effect, level);
    }

    /**
     * Inverts the test: the effects that neither one-sided test rejects at (1 − level)/2.
     *
     * <p>A split that hands the values O of the treated group over for the values I of the control
     * is at least as extreme as the observed one exactly when the effect is at least (ΣO − ΣI)/k, k
     * values being exchanged, or ΣO/ΣI for a ratio. The ends are therefore the m-th smallest and
     * the m-th largest of these thresholds, m = ⌊C·(1 − level)/2⌋.
     *
     * <p>Where m is 0 (3 + 3 values at 95 %) there is no finite interval. The two-sided p of
     * {@link #test} counts |T|; with groups of unequal size it may part from these equal-tailed
     * ends by a hair.
     *
     * @throws IllegalArgumentException if no block holds both groups, if level is not within (0,
     *     1), or if a value is ≤ 0 for a ratio
     */
    public PermutationInterval interval(List<TwoGroups> blocks, Effect effect, double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException(
                    "The level must lie between 0 and 1, not " + level + ".");
        }
        boolean ratio = effect == Effect.RATIO;
        Design design = Design.of(blocks, ratio);
        long count = Splits.count(design.blocks());
        boolean all = count <= mostSplits;
        Thresholds thresholds =
                new Thresholds(design.treatedSum(), ratio, all ? (int) count : draws);
        Splits splits = Splits.of(design.blocks(), new double[design.size()]);
        if (all) {
            splits.visitAll(thresholds);
        } else {
            splits.visitDrawn(draws, seed, thresholds);
        }
        long total = all ? count : draws + 1L;
        // Splits without exchange count at every effect, as the observed one does.
        int rank = (int) Math.floor(total * (1 - level) / 2 + 1e-9)
                - (int) (total - 1 - thresholds.size);
        double none = ratio ? 0 : Double.NEGATIVE_INFINITY;
        double low = none;
        double high = Double.POSITIVE_INFINITY;
        if (rank >= 1) {
            double[] sorted = Arrays.copyOf(thresholds.values, thresholds.size);
            int[] wanted = {rank - 1, thresholds.size - rank};
            Selection.select(sorted, wanted.clone());
            low = sorted[wanted[0]];
            high = sorted[wanted[1]];
        }
        return new PermutationInterval(
                ratio ? design.ratio() : design.difference(),
                low,
                high,
                level,
                total,
                design.treatedCount(),
                design.controlCount(),
                describe(ratio ? "ratio of means" : "difference of means", blocks.size(), all),
                all ? OptionalLong.empty() : OptionalLong.of(seed));
    }

    private static String words(Statistic statistic) {
        return switch (statistic) {
            case DIFFERENCE_OF_MEANS -> "difference of means";
            case WELCH_T -> "Welch's t";
            case LOG_RATIO_OF_MEANS -> "logarithm of the ratio of means";
        };
    }

    private static String describe(String statistic, int blocks, boolean all) {
        return (all ? "permutation of all splits, " : "permutation of drawn splits, ")
                + statistic
                + (blocks > 1 ? ", within blocks" : "");
    }

    private static final class Thresholds implements Splits.Visitor {
        private final double treatedSum;
        private final boolean ratio;
        private final double[] values;
        private int size;

        Thresholds(double treatedSum, boolean ratio, int most) {
            this.treatedSum = treatedSum;
            this.ratio = ratio;
            this.values = new double[most];
        }

        @Override
        public void split(double fromTreated, double fromControl, double second, int exchanged) {
            if (exchanged > 0) {
                double handedOver = treatedSum - fromTreated;
                values[size++] =
                        ratio ? handedOver / fromControl : (handedOver - fromControl) / exchanged;
            }
        }
    }
}
