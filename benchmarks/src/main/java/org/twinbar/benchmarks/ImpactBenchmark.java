package org.twinbar.benchmarks;

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
import org.twinbar.uncertainty.Model;
import org.twinbar.uncertainty.MonteCarlo;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/** A million worlds of an impact strength with six sources of error: METHODS.md C.5, budget C-6. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ImpactBenchmark {

    private static final Source MOMENT = normal("moment", 0.012);
    private static final Source RELEASE = normal("release angle", Math.toRadians(0.2));
    private static final Source RISE = normal("rise angle", Math.toRadians(0.3));
    private static final Source FRICTION = normal("friction", 0.008);
    private static final Source WIDTH = normal("width", 0.05);
    private static final Source THICKNESS = normal("thickness", 0.02);

    private static final List<Source> SOURCES =
            List.of(MOMENT, RELEASE, RISE, FRICTION, WIDTH, THICKNESS);

    private static final Model STRENGTH = errors -> {
        double energy = (4.1188 + errors.of(MOMENT))
                        * (StrictMath.cos(Math.toRadians(110) + errors.of(RISE))
                                - StrictMath.cos(Math.toRadians(140) + errors.of(RELEASE)))
                - 0.040
                - errors.of(FRICTION);
        return new double[] {1000 * energy / ((8 + errors.of(WIDTH)) * (4 + errors.of(THICKNESS)))};
    };

    private static Source normal(String name, double u) {
        return Source.own(name, Shape.NORMAL, u);
    }

    @Benchmark
    public MonteCarlo.Drawn aMillionWorlds() {
        return MonteCarlo.of(1).withBlocks(100, 100).run(STRENGTH, SOURCES).get(0);
    }
}
