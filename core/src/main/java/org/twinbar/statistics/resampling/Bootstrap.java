package org.twinbar.statistics.resampling;

import java.util.function.ToDoubleFunction;
import org.apache.commons.numbers.arrays.Selection;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.twinbar.statistics.TwoGroups;

/**
 * Bias-corrected and accelerated (BCa) bootstrap intervals.
 *
 * <p>Ends are the quantiles of the resampled statistics at Φ(z₀ + (z₀ ± z)/(1 − a(z₀ ± z))); z₀ =
 * Φ⁻¹ of the share of resamples below the estimate, ties counting half; a = Σd³/(6(Σd²)^1.5) from
 * the jackknife, where two groups are resampled each value of a group of n weighing 1/n. Quantiles
 * are interpolated between the order statistics at (B − 1)p.
 *
 * <p>With few values the interval is too narrow: of normal values with n = 5 a group, 88.5 %
 * instead of 95 % (METHODS.md I.2). It stands beside a verdict and never carries it. A median of
 * few values takes few distinct values, and its jackknife is rough.
 *
 * <p>Source: B. Efron, Better bootstrap confidence intervals, JASA 82 (1987) 171; B. Efron and R.
 * J. Tibshirani, An Introduction to the Bootstrap, 1993, ch. 14.
 */
public final class Bootstrap {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int RESAMPLES = 100_000;

    private final int resamples;
    private final long seed;

    private Bootstrap(int resamples, long seed) {
        this.resamples = resamples;
        this.seed = seed;
    }

    /** A hundred thousand resamples drawn with this seed. */
    public static Bootstrap seeded(long seed) {
        return new Bootstrap(RESAMPLES, seed);
    }

    /**
     * The same with so many resamples.
     *
     * @throws IllegalArgumentException if {@code count} &lt; 1000
     */
    public Bootstrap withResamples(int count) {
        if (count < 1000) {
            throw new IllegalArgumentException(
                    "At least 1000 resamples are needed, not " + count + ".");
        }
        return new Bootstrap(count, seed);
    }

    /**
     * The effect of a treatment; each group is resampled for itself.
     *
     * @throws IllegalArgumentException if a group has fewer than 2 values, if level is not within
     *     (0, 1), or if a value is ≤ 0 for a ratio
     */
    public BootstrapInterval twoGroups(
            TwoGroups groups, TwoGroupStatistic statistic, double level) {
        groups.holdingEach(2);
        if (statistic.isRatio()) {
            groups.aboveZero();
        }
        double[] treated = groups.treated();
        double[] control = groups.control();
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        double[] drawn = statistic.centre(treated).resampled(resamples, random);
        double[] drawnControl = statistic.centre(control).resampled(resamples, random);
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = statistic.effect(drawn[i], drawnControl[i]);
        }
        double centre = statistic.centre(treated).value();
        double controlCentre = statistic.centre(control).value();
        double[] leftOut = statistic.centre(treated).leavingOutEach();
        double[] leftOutControl = statistic.centre(control).leavingOutEach();
        for (int i = 0; i < leftOut.length; i++) {
            leftOut[i] = statistic.effect(leftOut[i], controlCentre);
        }
        for (int i = 0; i < leftOutControl.length; i++) {
            leftOutControl[i] = statistic.effect(centre, leftOutControl[i]);
        }
        return interval(
                statistic.effect(centre, controlCentre),
                drawn,
                acceleration(leftOut, leftOutControl),
                level,
                treated.length + control.length,
                "BCa bootstrap, " + statistic.words());
    }

    /**
     * Any statistic of rows drawn together, told by their indexes: a correlation, a fitted slope.
     *
     * @param rows how many rows there are
     * @param statistic calculates from row indexes, each in [0, rows), repeats included; it must
     *     not keep the array
     * @param level share of studies whose interval should hold the truth
     * @throws IllegalArgumentException if {@code rows} &lt; 3, or if level is not within (0, 1)
     */
    public BootstrapInterval rows(int rows, ToDoubleFunction<int[]> statistic, double level) {
        if (rows < 3) {
            throw new IllegalArgumentException("At least 3 rows are needed, not " + rows + ".");
        }
        int[] indexes = new int[rows];
        for (int i = 0; i < rows; i++) {
            indexes[i] = i;
        }
        double estimate = statistic.applyAsDouble(indexes);
        double[] leftOut = new double[rows];
        for (int out = 0; out < rows; out++) {
            int[] others = new int[rows - 1];
            for (int i = 0; i < others.length; i++) {
                others[i] = i < out ? i : i + 1;
            }
            leftOut[out] = statistic.applyAsDouble(others);
        }
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        double[] drawn = new double[resamples];
        for (int draw = 0; draw < resamples; draw++) {
            for (int i = 0; i < rows; i++) {
                indexes[i] = random.nextInt(rows);
            }
            drawn[draw] = statistic.applyAsDouble(indexes);
        }
        return interval(
                estimate, drawn, acceleration(leftOut), level, rows, "BCa bootstrap of rows");
    }

    private BootstrapInterval interval(
            double estimate,
            double[] drawn,
            double acceleration,
            double level,
            int n,
            String method) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException(
                    "The level must lie between 0 and 1, not " + level + ".");
        }
        double below = 0;
        double sum = 0;
        double squares = 0;
        for (double value : drawn) {
            double difference = value - estimate;
            sum += difference;
            squares += difference * difference;
            if (difference < 0) {
                below++;
            } else if (difference == 0) {
                below += 0.5;
            }
        }
        int count = drawn.length;
        // Half a resample from either end, so that a one-sided heap of resamples has a finite
        // quantile.
        double share = Math.min(1 - 0.5 / count, Math.max(0.5 / count, below / count));
        double bias = NORMAL.inverseCumulativeProbability(share);
        double z = NORMAL.inverseCumulativeProbability((1 - level) / 2);
        double[] ends =
                quantiles(drawn, shifted(bias, acceleration, z), shifted(bias, acceleration, -z));
        return new BootstrapInterval(
                estimate,
                ends[0],
                ends[1],
                level,
                Math.sqrt(Math.max(0, squares - sum * sum / count) / (count - 1)),
                bias,
                acceleration,
                count,
                n,
                method,
                seed);
    }

    private static double shifted(double bias, double acceleration, double z) {
        double at = bias + z;
        return NORMAL.cumulativeProbability(bias + at / (1 - acceleration * at));
    }

    private static double[] quantiles(double[] values, double low, double high) {
        double atLow = (values.length - 1) * low;
        double atHigh = (values.length - 1) * high;
        int last = values.length - 1;
        int belowLow = (int) atLow;
        int belowHigh = (int) atHigh;
        Selection.select(values, new int[] {
            belowLow, Math.min(last, belowLow + 1), belowHigh, Math.min(last, belowHigh + 1)
        });
        return new double[] {
            between(values[belowLow], values[Math.min(last, belowLow + 1)], atLow - belowLow),
            between(values[belowHigh], values[Math.min(last, belowHigh + 1)], atHigh - belowHigh)
        };
    }

    private static double between(double below, double above, double part) {
        return below + part * (above - below);
    }

    /** One array of leave-one-out statistics for each group. */
    private static double acceleration(double[]... leftOutByGroup) {
        double cubes = 0;
        double squares = 0;
        for (double[] leftOut : leftOutByGroup) {
            int n = leftOut.length;
            double mean = Design.sum(leftOut) / n;
            for (double value : leftOut) {
                double influence = (n - 1) * (mean - value) / n;
                squares += influence * influence;
                cubes += influence * influence * influence;
            }
        }
        return squares > 0 ? cubes / (6 * squares * Math.sqrt(squares)) : 0;
    }
}
