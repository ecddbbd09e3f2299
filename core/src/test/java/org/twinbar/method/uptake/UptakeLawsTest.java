package org.twinbar.method.uptake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class UptakeLawsTest {

    private static final long SEED = 62;

    @Test
    void waterComesInAndNeverOut() {
        double before = -1;
        for (double x = 0; x < 3; x += 0.001) {
            double share = Fick.share(x);
            assertThat(share).isBetween(0.0, 1.0).isGreaterThanOrEqualTo(before);
            before = share;
        }
        assertThat(Fick.share(5)).isCloseTo(1, within(1e-15));
    }

    @Test
    void earlyLawAndSeriesMeet() {
        assertThat(Fick.share(0.01 - 1e-12)).isCloseTo(Fick.share(0.01), within(1e-9));
    }

    @Test
    void aShareIsReachedWhenItIsReached() {
        for (double share = 0.001; share < 0.999; share += 0.007) {
            assertThat(Fick.share(Fick.at(share))).isCloseTo(share, within(1e-12));
        }
        assertThat(Fick.at(0)).isNaN();
        assertThat(Fick.at(1)).isNaN();
        assertThat(Fick.at(Double.NaN)).isNaN();
    }

    private static Readings.Builder part(Bench bench, double dry, double wet) {
        return Readings.of("U1", "plain", bench)
                .number(UptakeForm.DRY, dry)
                .number(UptakeForm.WET, wet);
    }

    private static Result result(Readings.Builder readings) {
        return Result.of(new Uptake(), readings.build());
    }

    @Test
    void aShareKnowsNoUnit() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            double dry = 1 + 20 * random.nextDouble();
            double wet = dry * (1 + 0.05 * random.nextDouble());
            double once = Exactly.value(result(part(Exactly.bench(), dry, wet)), UptakeForm.UPTAKE);
            assertThat(Exactly.value(
                            result(part(Exactly.bench(), 28.35 * dry, 28.35 * wet)),
                            UptakeForm.UPTAKE))
                    .as("seed %s, run %s", SEED, i)
                    .isCloseTo(once, within(1e-9));
        }
    }

    /** A scale that is off by a share weighs both off by it: an uptake is a share of them. */
    @Test
    void aScalesGainCancelsAndItsZeroDoesNot() {
        assertThat(Exactly.u(
                        result(part(Exactly.bench("scale", 0.01, "0 g", "0 g"), 10, 10.2)),
                        UptakeForm.UPTAKE))
                .isCloseTo(0, within(1e-9));
        assertThat(Exactly.u(
                        result(part(Exactly.bench("scale", 0, "0.1 g", "0 g"), 10, 10.2)),
                        UptakeForm.UPTAKE))
                .isCloseTo(2 * 0.1 / 10, within(1e-3));
    }

    @Test
    void whatDissolvedIsNotTakenOffTheUptake() {
        double lost = 0.3;
        Result whole = result(part(Exactly.bench(), 10, 10.2));
        Result dissolved = result(
                part(Exactly.bench(), 10, 10.2 - lost).number(UptakeForm.REDRIED, 10 - lost));
        assertThat(Exactly.value(dissolved, UptakeForm.UPTAKE))
                .isCloseTo(Exactly.value(whole, UptakeForm.UPTAKE), within(1e-9));
    }

    /** Twice as thick takes four times as long to the same share: D·t/d² is all that counts. */
    @Test
    void thicknessGoesWithTheSquareAndTimeAgainstIt() {
        double once = diffusion(2, 24);
        assertThat(diffusion(4, 4 * 24)).isCloseTo(once, within(1e-9 * once));
        assertThat(diffusion(2, 48)).isCloseTo(once / 2, within(1e-9 * once));
    }

    private static double diffusion(double thickness, double hours) {
        return Exactly.value(
                result(part(Exactly.bench(), 10, 10.05)
                        .number(UptakeForm.SATURATED, 10.12)
                        .number(UptakeForm.THICKNESS, thickness)
                        .number(UptakeForm.IMMERSED, hours)),
                UptakeForm.DIFFUSION);
    }

    /** Below what two weighings can tell there is no number; one step above there is. */
    @Test
    void anUptakeIsAValueOrBelowTheLimit() {
        Bench bench = Exactly.bench("scale", 0, "0 g", "0.01 g");
        for (int steps = -5; steps < 10; steps++) {
            Yield yield =
                    result(part(bench, 10, 10 + 0.01 * steps)).yields().get(UptakeForm.UPTAKE);
            double limit = 3 * 0.01 / Math.sqrt(12) * Math.sqrt(2);
            if (0.01 * steps >= limit) {
                assertThat(yield).isInstanceOf(Yield.Value.class);
            } else {
                assertThat(((Yield.Below) yield).bound())
                        .isGreaterThanOrEqualTo(100 * limit / 10 - 1e-9)
                        .isGreaterThan(100 * 0.01 * steps / 10);
            }
        }
    }
}
