package org.twinbar.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.resampling.Bootstrap;
import org.twinbar.statistics.resampling.BootstrapInterval;
import org.twinbar.statistics.resampling.Permutation;
import org.twinbar.statistics.resampling.PermutationInterval;
import org.twinbar.statistics.resampling.PermutationTest;
import org.twinbar.statistics.resampling.TwoGroupStatistic;

/** All 184,756 splits of 10 + 10 values, and 100,000 resamples of them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ResamplingBenchmark {

    /** Invented strengths, the same as in side-by-side.py. */
    static final TwoGroups TEN_AND_TEN = TwoGroups.of(
            new double[] {50.3, 49.1, 51.8, 50.9, 48.7, 52.2, 49.9, 50.6, 51.1, 50.0},
            new double[] {48.9, 49.6, 47.5, 50.2, 48.1, 49.0, 50.7, 48.4, 49.3, 47.9});

    @Benchmark
    public PermutationTest allSplits() {
        return Permutation.seeded(1).test(TEN_AND_TEN, Permutation.Statistic.DIFFERENCE_OF_MEANS);
    }

    @Benchmark
    public PermutationTest allSplitsStudentized() {
        return Permutation.seeded(1).test(TEN_AND_TEN, Permutation.Statistic.WELCH_T);
    }

    @Benchmark
    public PermutationInterval permutationInterval() {
        return Permutation.seeded(1).interval(TEN_AND_TEN, Permutation.Effect.RATIO, 0.95);
    }

    @Benchmark
    public BootstrapInterval ratioOfMeans() {
        return Bootstrap.seeded(1).twoGroups(TEN_AND_TEN, TwoGroupStatistic.RATIO_OF_MEANS, 0.95);
    }

    @Benchmark
    public BootstrapInterval ratioOfMedians() {
        return Bootstrap.seeded(1).twoGroups(TEN_AND_TEN, TwoGroupStatistic.RATIO_OF_MEDIANS, 0.95);
    }
}
