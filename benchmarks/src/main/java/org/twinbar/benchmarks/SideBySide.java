package org.twinbar.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.twinbar.decision.Comparison;
import org.twinbar.statistics.resampling.BootstrapInterval;
import org.twinbar.statistics.resampling.PermutationTest;

/**
 * Prints how long tasks take here when warm, one line a task, for benchmarks/side-by-side: the
 * resampling of 10 + 10, a million worlds of an impact strength, and one verdict of each kind.
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
        ImpactBenchmark impact = new ImpactBenchmark();
        print(
                "impact",
                median(impact::aMillionWorlds, 8, 7),
                impact.aMillionWorlds().symmetricLow());
        verdicts();
    }

    private static void verdicts() {
        VerdictBenchmark verdict = new VerdictBenchmark();
        Map<String, Supplier<Comparison>> kinds = new LinkedHashMap<>();
        kinds.put("ratio", verdict::ratio);
        kinds.put("blocks", verdict::blocks);
        kinds.put("share", verdict::share);
        kinds.put("rate", verdict::rate);
        kinds.put("rank", verdict::rank);
        kinds.put("level", verdict::level);
        kinds.forEach((kind, one) -> System.out.printf(
                Locale.ROOT,
                "Twinbar %-12s %9.2f ms   %s%n",
                "verdict " + kind,
                median(one),
                one.get().verdict().word()));
    }

    private static void print(String task, double milliseconds, double result) {
        System.out.printf(
                Locale.ROOT, "Twinbar %-12s %9.2f ms   %.6f%n", task, milliseconds, result);
    }

    private static double median(Supplier<?> task) {
        return median(task, WARM_UP, TIMED);
    }

    private static double median(Supplier<?> task, int warmUp, int timed) {
        for (int i = 0; i < warmUp; i++) {
            Object unused = task.get();
        }
        double[] times = new double[timed];
        for (int i = 0; i < timed; i++) {
            long start = CLOCK.getCurrentThreadCpuTime();
            Object unused = task.get();
            times[i] = (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
        }
        Arrays.sort(times);
        return times[timed / 2];
    }
}
