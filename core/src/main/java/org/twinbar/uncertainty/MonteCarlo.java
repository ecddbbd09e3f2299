package org.twinbar.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Runs a model in worlds drawn at random, until its results stand still.
 *
 * <p>For models that bend within the uncertainty of their sources, where first order misleads.
 * Worlds are drawn block by block; after each block the mean, standard uncertainty and interval
 * ends of every result are compared between the blocks, and the run ends where twice the standard
 * deviation of each one's average is below half a unit of the last of two significant digits of the
 * uncertainty.
 *
 * <p>Source: JCGM 101:2008, 7.9 (adaptive procedure), 5.3.4 and 7.7 (coverage intervals).
 *
 * @param seed of the random numbers; the same seed gives the same worlds on every machine
 * @param coverage share of worlds that the interval holds, between 0 and 1
 * @param leastBlocks before which nothing counts as standing still, 2 or more: two blocks may agree
 *     by luck
 * @param mostBlocks at which the run ends unsettled
 */
public record MonteCarlo(long seed, double coverage, int leastBlocks, int mostBlocks) {

    private static final int LEAST_BLOCK = 10_000;
    private static final int LEAST_BLOCKS = 3;
    private static final int MOST_BLOCKS = 200;

    public MonteCarlo {
        if (!(coverage > 0 && coverage < 1)) {
            throw new IllegalArgumentException(
                    "coverage is %s, not between 0 and 1".formatted(coverage));
        }
        if (leastBlocks < 2 || mostBlocks < leastBlocks) {
            throw new IllegalArgumentException(
                    "blocks from %s to %s, must be from 2 or more to as many or more"
                            .formatted(leastBlocks, mostBlocks));
        }
    }

    /** Returns a run with intervals of 95 % that ends after two million worlds at the latest. */
    public static MonteCarlo of(long seed) {
        return new MonteCarlo(seed, 0.95, LEAST_BLOCKS, MOST_BLOCKS);
    }

    public MonteCarlo withCoverage(double newCoverage) {
        return new MonteCarlo(seed, newCoverage, leastBlocks, mostBlocks);
    }

    public MonteCarlo withBlocks(int newLeast, int newMost) {
        return new MonteCarlo(seed, coverage, newLeast, newMost);
    }

    /**
     * What the worlds gave for one result.
     *
     * @param mean y
     * @param u standard uncertainty
     * @param low lower end of the shortest interval that holds the coverage
     * @param high its upper end
     * @param symmetricLow end below which half of what is left lies
     * @param symmetricHigh end above which the other half lies
     * @param worlds in which there was a result
     * @param without worlds in which there was none
     * @param settled whether the run ended because the figures stood still
     */
    public record Drawn(
            double mean,
            double u,
            double low,
            double high,
            double symmetricLow,
            double symmetricHigh,
            long worlds,
            long without,
            boolean settled) {

        /**
         * Returns whether first order's interval agrees with the drawn one, both ends within half a
         * unit of the last of two digits of u (JCGM 101:2008, 8.1).
         *
         * @param factor t of the budget's degrees of freedom for the same coverage
         */
        public boolean agreesWith(Budget budget, double factor) {
            double half = factor * budget.u();
            double tolerance = tolerance(u);
            return Math.abs(budget.value() - half - symmetricLow) <= tolerance
                    && Math.abs(budget.value() + half - symmetricHigh) <= tolerance;
        }
    }

    /**
     * Draws worlds until every result stands still.
     *
     * @return what the worlds gave, in the model's order; NaN throughout where no world had a
     *     result
     */
    public List<Drawn> run(Model model, List<Source> sources) {
        Worlds worlds = new Worlds(sources, RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
        int block = Math.max(LEAST_BLOCK, (int) Math.ceil(100 / (1 - coverage)));
        List<Result> results = new ArrayList<>();
        boolean settled = false;
        for (int blocks = 0; blocks < mostBlocks && !settled; blocks++) {
            for (int i = 0; i < block; i++) {
                double[] values = model.at(worlds.next());
                while (results.size() < values.length) {
                    results.add(new Result(coverage, leastBlocks));
                }
                for (int k = 0; k < values.length; k++) {
                    results.get(k).add(values[k]);
                }
            }
            settled = true;
            for (Result result : results) {
                settled &= result.endBlock();
            }
        }
        boolean standStill = settled;
        return results.stream().map(result -> result.drawn(standStill)).toList();
    }

    /** Half a unit of the last of two significant digits (JCGM 101:2008, 7.9.2). */
    static double tolerance(double u) {
        if (!(u > 0)) {
            return 0;
        }
        int exponent = (int) Math.floor(StrictMath.log10(u)) - 1;
        // 99.6 has the two digits 10·10¹, not 100·10⁰.
        if (Math.rint(u / StrictMath.pow(10, exponent)) >= 100) {
            exponent++;
        }
        return StrictMath.pow(10, exponent) / 2;
    }

    /** Worlds one after the other; each is the same object with other errors in it. */
    private static final class Worlds {
        private final Source[] sources;
        private final double[][] slots;
        private final UniformRandomProvider random;
        private final Errors world;

        Worlds(List<Source> sources, UniformRandomProvider random) {
            this.sources = sources.toArray(new Source[0]);
            this.random = random;
            Map<String, double[]> byIdentity = new HashMap<>();
            this.slots = new double[this.sources.length][];
            for (int i = 0; i < slots.length; i++) {
                slots[i] = byIdentity.computeIfAbsent(
                        this.sources[i].identity(), identity -> new double[1]);
            }
            this.world = Errors.backedBy(byIdentity);
        }

        Errors next() {
            for (int i = 0; i < slots.length; i++) {
                slots[i][0] = sources[i].draw(random);
            }
            return world;
        }
    }

    /** The values of one result, and the figures of each block so far. */
    private static final class Result {
        private final double coverage;
        private final int leastBlocks;
        private final List<double[]> figures = new ArrayList<>();
        private double[] values = new double[LEAST_BLOCK];
        private int count;
        private int blockFrom;
        private long without;

        Result(double coverage, int leastBlocks) {
            this.coverage = coverage;
            this.leastBlocks = leastBlocks;
        }

        void add(double value) {
            if (!Double.isFinite(value)) {
                without++;
                return;
            }
            if (count == values.length) {
                values = Arrays.copyOf(values, 2 * count);
            }
            values[count++] = value;
        }

        /** Takes down the block's figures; returns whether they stand still. */
        boolean endBlock() {
            if (count == blockFrom) {
                return true;
            }
            double[] block = Arrays.copyOfRange(values, blockFrom, count);
            blockFrom = count;
            Tails.order(block, block.length - held(block.length));
            Drawn drawn = summary(block, 0, true);
            figures.add(new double[] {drawn.mean(), drawn.u(), drawn.low(), drawn.high()});
            if (figures.size() < leastBlocks) {
                return false;
            }
            double tolerance = tolerance(drawn.u());
            for (int k = 0; k < 4; k++) {
                if (2 * deviationOfAverage(k) > tolerance) {
                    return false;
                }
            }
            return true;
        }

        private double deviationOfAverage(int figure) {
            int n = figures.size();
            double mean = 0;
            for (double[] block : figures) {
                mean += block[figure] / n;
            }
            double sum = 0;
            for (double[] block : figures) {
                sum += (block[figure] - mean) * (block[figure] - mean);
            }
            return Math.sqrt(sum / ((n - 1.0) * n));
        }

        Drawn drawn(boolean settled) {
            double[] all = Arrays.copyOf(values, count);
            Tails.order(all, count - held(count));
            return summary(all, without, settled);
        }

        /** How many worlds the interval spans. */
        private int held(int n) {
            return Math.min(n - 1, (int) (coverage * n + 0.5));
        }

        /** The ends are among the lowest n − held and the highest: no others need be in order. */
        private Drawn summary(double[] sorted, long none, boolean settled) {
            int n = sorted.length;
            if (n == 0) {
                double nan = Double.NaN;
                return new Drawn(nan, nan, nan, nan, nan, nan, 0, none, settled);
            }
            double mean = Arrays.stream(sorted).sum() / n;
            double sum = 0;
            for (double value : sorted) {
                sum += (value - mean) * (value - mean);
            }
            int held = held(n);
            int from = 0;
            for (int i = 1; i + held < n; i++) {
                if (sorted[i + held] - sorted[i] < sorted[from + held] - sorted[from]) {
                    from = i;
                }
            }
            int left = (n - held) / 2;
            return new Drawn(
                    mean,
                    Math.sqrt(sum / Math.max(1, n - 1)),
                    sorted[from],
                    sorted[from + held],
                    sorted[Math.min(left, n - 1 - held)],
                    sorted[Math.min(left, n - 1 - held) + held],
                    n,
                    none,
                    settled);
        }
    }
}
