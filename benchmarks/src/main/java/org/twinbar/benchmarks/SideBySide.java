package org.twinbar.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import org.twinbar.statistics.resampling.BootstrapInterval;
import org.twinbar.statistics.resampling.PermutationTest;

/**
 * Prints how long the resampling of 10 + 10 takes here when warm, one line a task, for
 * benchmarks/side-by-side.
 */
public final class SideBySide {

    /** The thread's own time, since other work on the machine is no part of the task. */
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private static final int WARM_UP = 60;
    private static final int TIMED = 21;

    private SideBySide() {}

    public static void main(String[] arguments) {
        ResamplingBenchmark benchmark = new ResamplingBenchmark();
        PermutationTest test = benchmark.allSplits();
        BootstrapInterval interval = benchmark.ratioOfMeans();
        print("permutation", median(benchmark::allSplits), test.pTwoSided());
        print("bca", median(benchmark::ratioOfMeans), interval.low());
    }

    private static void print(String task, double milliseconds, double result) {
        System.out.printf(
                Locale.ROOT, "Twinbar %-12s %9.2f ms   %.6f%n", task, milliseconds, result);
    }

    private static double median(Supplier<?> task) {
        for (int i = 0; i < WARM_UP; i++) {
            Object unused = task.get();
        }
        double[] times = new double[TIMED];
        for (int i = 0; i < TIMED; i++) {
            long start = CLOCK.getCurrentThreadCpuTime();
            Object unused = task.get();
            times[i] = (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
        }
        Arrays.sort(times);
        return times[TIMED / 2];
    }
}
