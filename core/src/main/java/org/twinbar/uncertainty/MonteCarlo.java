package org.twinbar.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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

    /** Values more of a tail than a quarter, so that small tails reach as far as those of all. */
    private static final int SPARE = 25;

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
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        Errors world = Errors.toBeDrawn(sources);
        int block = Math.max(LEAST_BLOCK, (int) Math.ceil(100 / (1 - coverage)));
        List<Result> results = new ArrayList<>();
        boolean settled = false;
        for (int blocks = 0; blocks < mostBlocks && !settled; blocks++) {
            drawBlock(model, world, random, results, block);
            settled = true;
            for (Result result : results) {
                settled &= result.endBlock();
            }
        }
        boolean standStill = settled;
        return results.stream().map(result -> result.drawn(standStill)).toList();
    }

    private void drawBlock(
            Model model,
            Errors world,
            UniformRandomProvider random,
            List<Result> results,
            int worlds) {
        for (int i = 0; i < worlds; i++) {
            world.draw(random);
            double[] values = model.at(world);
            while (results.size() < values.length) {
                results.add(new Result(this, worlds));
            }
            for (int k = 0; k < values.length; k++) {
                results.get(k).add(values[k]);
            }
        }
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

    /**
     * The values of one result in one block of worlds.
     *
     * @param squares sum of their squared distances from the mean
     * @param tails somewhat longer ones than its own interval needs, for that of all blocks
     */
    private record Block(double[] values, double mean, double squares, Tails tails) {

        static Block of(double[] values, int outside) {
            // About one of them, so that a large mean doesn't swallow small differences.
            double sum = 0;
            for (double value : values) {
                sum += value - values[0];
            }
            double mean = values[0] + sum / values.length;
            double squares = 0;
            for (double value : values) {
                squares += (value - mean) * (value - mean);
            }
            int kept = Math.min(values.length, outside + outside / 4 + SPARE);
            return new Block(values, mean, squares, Tails.of(List.of(values), kept));
        }
    }

    /** The values of one result, and the figures of each block so far. */
    private static final class Result {
        private final MonteCarlo run;
        private final double[] block;
        private final List<Block> blocks = new ArrayList<>();
        private final List<double[]> figures = new ArrayList<>();
        private int count;
        private long without;

        Result(MonteCarlo run, int block) {
            this.run = run;
            this.block = new double[block];
        }

        void add(double value) {
            if (Double.isFinite(value)) {
                block[count++] = value;
            } else {
                without++;
            }
        }

        /** Takes down the block's figures; returns whether they stand still. */
        boolean endBlock() {
            if (count == 0) {
                return true;
            }
            Block ended = Block.of(Arrays.copyOf(block, count), outside(count));
            count = 0;
            blocks.add(ended);
            Drawn drawn = summary(List.of(ended), 0, true);
            figures.add(new double[] {drawn.mean(), drawn.u(), drawn.low(), drawn.high()});
            if (figures.size() < run.leastBlocks) {
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
            for (double[] each : figures) {
                mean += each[figure] / n;
            }
            double sum = 0;
            for (double[] each : figures) {
                sum += (each[figure] - mean) * (each[figure] - mean);
            }
            return Math.sqrt(sum / ((n - 1.0) * n));
        }

        Drawn drawn(boolean settled) {
            return summary(blocks, without, settled);
        }

        /** Returns how many worlds the interval leaves out. */
        private int outside(int n) {
            return n - Math.min(n - 1, (int) (run.coverage * n + 0.5));
        }

        /** The ends are among the lowest and the highest that may lie outside. */
        private Drawn summary(List<Block> of, long none, boolean settled) {
            if (of.isEmpty()) {
                double nan = Double.NaN;
                return new Drawn(nan, nan, nan, nan, nan, nan, 0, none, settled);
            }
            int n = of.stream().mapToInt(each -> each.values().length).sum();
            int outside = outside(n);
            Tails tails = of.size() == 1
                    ? of.get(0).tails().shortened(outside)
                    : Tails.joined(of.stream().map(Block::tails).toList(), outside)
                            .orElseGet(() ->
                                    Tails.of(of.stream().map(Block::values).toList(), outside));
            double[] low = tails.lowest();
            double[] high = tails.highest();
            int shortest = 0;
            for (int i = 1; i < outside; i++) {
                if (high[i] - low[i] < high[shortest] - low[shortest]) {
                    shortest = i;
                }
            }
            int half = Math.min(outside / 2, outside - 1);
            double mean = mean(of, n);
            return new Drawn(
                    mean,
                    Math.sqrt(squares(of, mean) / Math.max(1, n - 1)),
                    low[shortest],
                    high[shortest],
                    low[half],
                    high[half],
                    n,
                    none,
                    settled);
        }

        private static double mean(List<Block> of, int n) {
            double sum = 0;
            for (Block each : of) {
                sum += each.values().length * (each.mean() - of.get(0).mean());
            }
            return of.get(0).mean() + sum / n;
        }

        private static double squares(List<Block> of, double mean) {
            double sum = 0;
            for (Block each : of) {
                double apart = each.mean() - mean;
                sum += each.squares() + each.values().length * apart * apart;
            }
            return sum;
        }
    }
}
