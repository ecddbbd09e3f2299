package org.twinbar.method.peak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.quantity.Quantity;

class PeakLawsTest {

    private static final long SEED = 31;
    private static final int TIMES = 100;

    private static Readings.Builder insert(Bench bench, double[] force) {
        return Readings.of("I1", "plain", bench)
                .channel(InsertPullout.TRACE, force)
                .number(InsertPullout.DEPTH, 6)
                .number(InsertPullout.DIAMETER, 5);
    }

    private static Result pulled(double[] force) {
        return Result.of(new InsertPullout(), insert(Exactly.bench(), force).build());
    }

    private static double[] any(Random random) {
        return random.doubles(50, 0, 900).toArray();
    }

    private static double[] times(double[] force, double factor) {
        return Arrays.stream(force).map(value -> factor * value).toArray();
    }

    /** A largest value is that of any record that holds it, in whatever order it came. */
    @Test
    void theOrderOfRowsIsNothing() {
        Random random = new Random(SEED);
        for (int i = 0; i < TIMES; i++) {
            double[] force = any(random);
            double[] sorted = force.clone();
            Arrays.sort(sorted);
            assertThat(Exactly.value(pulled(sorted), InsertPullout.PULLOUT))
                    .as("seed %s, run %s", SEED, i)
                    .isEqualTo(Exactly.value(pulled(force), InsertPullout.PULLOUT))
                    .isEqualTo(sorted[sorted.length - 1]);
        }
    }

    @Test
    void everyPropertyGoesWithTheForce() {
        Random random = new Random(SEED);
        for (int i = 0; i < TIMES; i++) {
            double[] force = any(random);
            for (Property property : new Property[] {
                InsertPullout.PULLOUT, InsertPullout.PER_DEPTH, InsertPullout.STRESS
            }) {
                double once = Exactly.value(pulled(force), property);
                assertThat(Exactly.value(pulled(times(force, 2)), property))
                        .isCloseTo(2 * once, within(1e-9 * once));
            }
        }
    }

    /** The mean shear on the wall over the whole wall is the force again. */
    @Test
    void theStressOverTheWallIsTheForce() {
        Result result = pulled(any(new Random(SEED)));
        assertThat(Exactly.value(result, InsertPullout.STRESS) * Math.PI * 5 * 6)
                .isCloseTo(Exactly.value(result, InsertPullout.PULLOUT), within(1e-9));
        assertThat(Exactly.value(result, InsertPullout.PER_DEPTH) * 6)
                .isCloseTo(Exactly.value(result, InsertPullout.PULLOUT), within(1e-9));
    }

    @Test
    void aSteadyPeelHasOneForceHoweverMuchIsLeftOut() {
        double[] force = new double[200];
        Arrays.fill(force, 4);
        for (double skipped = 0; skipped <= 90; skipped += 10) {
            Result result = Result.of(
                    new Peel(),
                    Readings.of("S1", "plain", Exactly.bench())
                            .channel(Peel.TRACE, force)
                            .number(Peel.WIDTH, 20)
                            .setting(Peel.SKIPPED, skipped)
                            .build());
            assertThat(Exactly.value(result, Peel.STRENGTH)).isCloseTo(0.2, within(1e-12));
            assertThat(Exactly.value(result, Peel.LARGEST)).isCloseTo(0.2, within(1e-12));
        }
    }

    @Test
    void aMeanIsNeverMoreThanTheLargest() {
        Random random = new Random(SEED);
        for (int i = 0; i < TIMES; i++) {
            Result result = Result.of(
                    new Peel(),
                    Readings.of("S1", "plain", Exactly.bench())
                            .channel(Peel.TRACE, any(random))
                            .number(Peel.WIDTH, 20)
                            .build());
            assertThat(Exactly.value(result, Peel.STRENGTH))
                    .isLessThanOrEqualTo(Exactly.value(result, Peel.LARGEST));
        }
    }

    /** What a load cell's gain does to two groups cancels in their ratio; its zero does not. */
    @Test
    void aGainMovesEveryForceByOneShareAndAZeroDoesNot() {
        Bench bench = Exactly.bench("load cell", 0.01, "2 N", "0 N");
        double[] weak = {0, 50, 100, 40};
        Result one = Result.of(new InsertPullout(), insert(bench, weak).build());
        Result other =
                Result.of(new InsertPullout(), insert(bench, times(weak, 3)).build());
        assertThat(share(one, "load cell gain"))
                .isCloseTo(share(other, "load cell gain"), within(1e-12))
                .isCloseTo(0.01, within(1e-12));
        assertThat(share(one, "load cell zero"))
                .isCloseTo(3 * share(other, "load cell zero"), within(1e-12))
                .isCloseTo(Quantity.parse("2 N").value() / 100, within(1e-12));
    }

    private static double share(Result result, String source) {
        return result.budgets().get(InsertPullout.PULLOUT).shifts().entrySet().stream()
                        .filter(entry -> entry.getKey().identity().equals(source))
                        .mapToDouble(entry -> entry.getValue())
                        .sum()
                / Exactly.value(result, InsertPullout.PULLOUT);
    }
}
