package org.twinbar.benchmarks;

import java.util.ArrayList;
import java.util.List;
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
import org.twinbar.decision.Block;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Level;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.decision.Question;
import org.twinbar.decision.Subject;
import org.twinbar.quantity.Unit;

/**
 * One verdict of each kind with all that stands beside it: reasons, findings, other ways of
 * looking, and what would settle it. Ten and ten specimens, and answers that stay open, which take
 * longest.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class VerdictBenchmark {

    private static final double[] TREATED = {
        50.3, 49.1, 51.8, 50.9, 48.7, 52.2, 49.9, 50.6, 51.1, 50.0
    };
    private static final double[] CONTROL = {
        48.9, 49.6, 47.5, 50.2, 48.1, 49.0, 50.7, 48.4, 49.3, 47.9
    };
    private static final Subject STRENGTH = new Subject("strength", Unit.of("MPa"), "bars");
    private static final Subject LEAK = new Subject("leak", Unit.of("h"), "cups");
    private static final Subject DRY = new Subject("dry", Unit.ONE, "cups");

    private interface Given {
        Observed of(int index, double value);
    }

    private static List<Observation> specimens(Given given) {
        List<Observation> all = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            all.add(Observation.of("T" + i, "treated", given.of(i, TREATED[i])));
            all.add(Observation.of("C" + i, "control", given.of(i + 10, CONTROL[i])));
        }
        return all;
    }

    private static Comparison compare(Question question, List<Observation> specimens) {
        return Comparing.of(question, specimens, "control", "treated");
    }

    private static List<Observation> numbers() {
        return specimens((i, value) -> new Observed.Number(value));
    }

    @Benchmark
    public Comparison ratio() {
        return compare(
                Question.of(STRENGTH, Effect.RATIO, Expectation.HIGHER)
                        .withWorth(0.02)
                        .withClaimed(0.05),
                numbers());
    }

    @Benchmark
    public Comparison blocks() {
        List<Observation> specimens = new ArrayList<>();
        for (Observation one : numbers()) {
            int run = one.specimen().charAt(1) % 4;
            specimens.add(one.inBlock(new Block("print run", "R" + run)));
        }
        return compare(
                Question.of(STRENGTH, Effect.RATIO, Expectation.HIGHER)
                        .withWorth(0.02)
                        .withClaimed(0.05),
                specimens);
    }

    @Benchmark
    public Comparison share() {
        return compare(
                Question.of(DRY, Effect.SHARE, Expectation.HIGHER)
                        .withWorth(0.1)
                        .withClaimed(0.3),
                specimens((i, value) -> new Observed.YesNo(value > 49.5)));
    }

    @Benchmark
    public Comparison rate() {
        return compare(
                Question.of(LEAK, Effect.RATE, Expectation.LOWER).withWorth(0.3).withClaimed(0.6),
                specimens((i, value) -> value > 50.5
                        ? new Observed.AtLeast(24)
                        : new Observed.Number(Math.rint(2 * (value - 45)))));
    }

    @Benchmark
    public Comparison rank() {
        return compare(
                Question.of(DRY, Effect.RANK, Expectation.HIGHER).withWorth(0.2).withClaimed(0.4),
                specimens((i, value) -> new Observed.Number(Math.rint(value))));
    }

    @Benchmark
    public Comparison level() {
        return Comparing.level(
                Question.level(STRENGTH, new Level(48.2, 0.9), Expectation.HIGHER),
                numbers(),
                "treated");
    }
}
