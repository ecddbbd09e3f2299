package org.twinbar.planning;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.Fieller;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.RatioInterval;
import org.twinbar.statistics.TwoMeans;
import org.twinbar.statistics.Welch;

/**
 * How often simulated studies come out supported by the interval that the verdict reads.
 *
 * <p>Normal scatter, the same in both groups (the same share of the mean, for a ratio); Welch's
 * interval of a difference, Fieller's with unequal spread of a ratio; supported where the end on
 * the side of what is worth having is past it.
 *
 * @param share of the studies that were supported
 */
record SimulatedPower(double share) {

    static final int STUDIES = 4000;

    private static final double LEVEL = 1 - 2 * Sizing.ALPHA_ONE_SIDED;

    static SimulatedPower of(PlannedEffect effect, int perGroup, long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        int supported = 0;
        for (int study = 0; study < STUDIES; study++) {
            supported += isSupported(effect, perGroup, random) ? 1 : 0;
        }
        return new SimulatedPower((double) supported / STUDIES);
    }

    /**
     * Whether it lies below a power by more than two of the simulation's own deviations and 1 %.
     */
    boolean isBelow(double power) {
        double deviation = Math.sqrt(power * (1 - power) / STUDIES);
        return share < power - Math.max(0.01, 2 * deviation);
    }

    private static boolean isSupported(
            PlannedEffect effect, int perGroup, UniformRandomProvider random) {
        if (effect instanceof PlannedEffect.Ratio ratio) {
            double cv = ratio.coefficientOfVariation();
            MeanEstimate control = drawn(1, cv, perGroup, random);
            MeanEstimate treated = drawn(ratio.expected(), cv * ratio.expected(), perGroup, random);
            return Math.min(control.mean(), treated.mean()) > 0
                    && clears(Fieller.ratio(TwoMeans.of(treated, control), LEVEL), ratio);
        }
        PlannedEffect.Difference difference = (PlannedEffect.Difference) effect;
        MeanEstimate control = drawn(0, difference.scatter(), perGroup, random);
        MeanEstimate treated = drawn(difference.expected(), difference.scatter(), perGroup, random);
        var found = Welch.difference(TwoMeans.of(treated, control), LEVEL);
        return clears(found.low(), found.high(), difference);
    }

    private static boolean clears(RatioInterval interval, PlannedEffect effect) {
        return interval instanceof RatioInterval.Finite finite
                && clears(finite.estimate().low(), finite.estimate().high(), effect);
    }

    private static boolean clears(double low, double high, PlannedEffect effect) {
        return effect.expected() > effect.worth() ? low >= effect.worth() : high <= effect.worth();
    }

    private static MeanEstimate drawn(
            double mean, double deviation, int n, UniformRandomProvider random) {
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = mean + deviation * Normal.STANDARD.quantile(open(random));
        }
        return MeanEstimate.of(values);
    }

    /** A number strictly between 0 and 1, where the quantile is finite. */
    private static double open(UniformRandomProvider random) {
        double drawn = random.nextDouble();
        return drawn == 0 ? open(random) : drawn;
    }
}
