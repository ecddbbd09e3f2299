package org.twinbar.method.timeconstant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

class TimeConstantLawsTest {

    private static final long SEED = 63;

    private static Readings.Builder step(Bench bench, double from, double to, double tau) {
        return Dummies.dummy(
                bench, 5 * tau, tau / 40, t -> to - (to - from) * StrictMath.exp(-t / tau));
    }

    @Test
    void anExactExponentialIsFoundAgain() {
        Random random = new Random(SEED);
        for (int i = 0; i < 100; i++) {
            double from = 10 + 20 * random.nextDouble();
            double to = from + 5 + 60 * random.nextDouble();
            double tau = 20 + 1500 * random.nextDouble();
            Result result = Dummies.result(step(Exactly.bench(), from, to, tau));
            assertThat(Exactly.value(result, TimeConstantForm.SECONDS))
                    .as("seed %s, run %s", SEED, i)
                    .isCloseTo(tau, within(1e-6 * tau));
            assertThat(Exactly.value(result, TimeConstantForm.HELD))
                    .as("seed %s, run %s", SEED, i)
                    .isCloseTo(to, within(1e-6 * to));
        }
    }

    /** A thermometer's gain and zero move no time; they move where it goes to. */
    @Test
    void aThermometerThatIsOffLeavesTheTimeConstantAlone() {
        Bench off = Exactly.bench("thermometer", 0.02, "1 K", "0 K");
        Result result = Dummies.result(step(off, 20, 60, 300));
        assertThat(Exactly.u(result, TimeConstantForm.SECONDS)).isLessThan(1e-6);
        assertThat(Exactly.u(result, TimeConstantForm.HELD))
                .isCloseTo(Math.hypot(0.02 * 60, 1), within(1e-6));
    }

    @Test
    void aClockThatIsOffMovesItByItsShare() {
        Result result =
                Dummies.result(step(Exactly.bench("timer", 0.01, "0 s", "0 s"), 20, 60, 300));
        assertThat(Exactly.u(result, TimeConstantForm.SECONDS)).isCloseTo(3, within(1e-6));
    }

    @Test
    void anyShareLeftOutGivesTheSame() {
        for (double share = 0; share <= 60; share += 10) {
            assertThat(Dummies.seconds(step(Exactly.bench(), 20, 60, 300)
                            .setting(TimeConstantForm.LEFT_OUT, share)))
                    .isCloseTo(300, within(1e-5));
        }
    }

    /** More readings of the same step know it better, until they say the same over and over. */
    @Test
    void neighboursThatGoTogetherAreWorthLess() {
        Random random = new Random(SEED);
        Result independent = Dummies.result(Dummies.noisy(300, 1500, 0.3, random));
        double[] drift = {0};
        Result together = Dummies.result(Dummies.dummy(Exactly.bench(), 1500, 10, t -> {
            drift[0] = 0.9 * drift[0] + 0.3 * Math.sqrt(1 - 0.81) * random.nextGaussian();
            return 60 - 40 * StrictMath.exp(-t / 300) + drift[0];
        }));
        assertThat(Exactly.u(together, TimeConstantForm.SECONDS))
                .isGreaterThan(1.5 * Exactly.u(independent, TimeConstantForm.SECONDS));
    }
}
