package org.twinbar.method.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

class LeakLawsTest {

    private static Readings.Builder vessel(double before, double after, double hours) {
        return Held.vessel()
                .number(LeakForm.MASS_BEFORE, before)
                .number(LeakForm.MASS_AFTER, after)
                .number(LeakForm.WEIGHED_AFTER, hours);
    }

    private static double rate(Readings.Builder readings) {
        return ((Yield.Value) Held.yield(Held.result(readings), LeakForm.LEAK_RATE)).value();
    }

    @Test
    void twiceAsLongForTheSameLossIsHalfTheRate() {
        assertThat(rate(vessel(250, 240, 24)))
                .isCloseTo(2 * rate(vessel(250, 240, 48)), within(1e-12));
    }

    @Test
    void anEmptyVesselsMassCancels() {
        assertThat(rate(vessel(250, 240, 24))).isCloseTo(rate(vessel(450, 440, 24)), within(1e-12));
    }

    @Test
    void aScalesZeroCancelsInALossAndItsGainDoesNot() {
        Bench bench =
                Bench.usual().withZero("scale", Quantity.parse("0.5 g")).withGain("scale", 0.01);
        Result result = Held.result(Readings.of("V1", "plain", bench)
                .number(LeakForm.MASS_BEFORE, 250)
                .number(LeakForm.MASS_AFTER, 240)
                .number(LeakForm.WEIGHED_AFTER, 20));
        var shifts = result.budgets().get(LeakForm.LEAK_RATE).shifts();
        assertThat(shifts.keySet()).noneMatch(source -> source.identity().equals("scale zero"));
        assertThat(shifts.entrySet().stream()
                        .filter(entry -> entry.getKey().identity().equals("scale gain"))
                        .mapToDouble(entry -> entry.getValue())
                        .sum())
                .isCloseTo(0.01 * 0.5, within(1e-12));
    }

    /**
     * A later claim can only turn a yes into something else, and a longer test never a yes into a
     * no.
     */
    @Test
    void yesHoldsForEveryShorterClaim() {
        Random random = new Random(5);
        for (int run = 0; run < 500; run++) {
            double dry = 48 * random.nextDouble();
            Readings.Builder readings = Held.vessel().number(LeakForm.DRY_UNTIL, dry);
            if (random.nextBoolean()) {
                readings.number(LeakForm.WET_AT, dry + 12 * random.nextDouble());
            }
            boolean yes = true;
            boolean no = false;
            for (double claim = 1; claim < 72; claim += 1) {
                Yield yield = Held.yield(
                        Held.result(readings.number(LeakForm.CLAIM_TIME, claim)),
                        LeakForm.LEAK_FREE);
                boolean saysYes = yield.equals(new Yield.Word("yes"));
                boolean saysNo = yield.equals(new Yield.Word("no"));
                assertThat(saysYes && !yes)
                        .as("a yes behind none, seed 5 run %s", run)
                        .isFalse();
                assertThat(no && !saysNo)
                        .as("a no taken back, seed 5 run %s", run)
                        .isFalse();
                yes = saysYes;
                no = saysNo;
            }
        }
    }

    @Test
    void aPoreOfTheFlowIsTheFlowOfThePore() {
        for (double diameter : new double[] {1e-6, 30e-6, 500e-6}) {
            double flow = Water.flow(diameter, 1.2e-3, 3000);
            assertThat(Water.poreFor(flow, 1.2e-3, 3000)).isCloseTo(diameter, within(1e-12));
        }
        assertThat(Water.barrier(50e-6, 80)).isZero();
    }

    @Test
    void aTightVesselIsCalledLeakingSeldom() {
        Random random = new Random(9);
        Bench bench = Bench.usual().withResolution("scale", Quantity.parse("0.1 g"));
        int called = 0;
        int runs = 1000;
        for (int run = 0; run < runs; run++) {
            double before = 250 + random.nextDouble();
            Result result = Held.result(Readings.of("V1", "plain", bench)
                    .number(LeakForm.MASS_BEFORE, 0.1 * Math.rint(10 * before))
                    .number(
                            LeakForm.MASS_AFTER,
                            0.1 * Math.rint(10 * (before - 0.48 + 0.02 * random.nextGaussian())))
                    .number(LeakForm.WEIGHED_AFTER, 24)
                    .number(LeakForm.CONTROL_LOSS, 0.02));
            called += Held.yield(result, LeakForm.LEAK_RATE) instanceof Yield.Value ? 1 : 0;
        }
        // Three standard uncertainties of a triangle are beyond its end; the vessel's own scatter
        // adds.
        assertThat(called).as("of 1000, seed 9").isLessThan(10);
    }
}
