package org.twinbar.planning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.PlannedEffect.Difference;
import org.twinbar.statistics.PlannedEffect.Ratio;

class SizingReferenceTest {

    private static final long SEED = 1;

    private final Checks checks = Checks.of(getClass());

    @Test
    void agreesOnTheChecksOfTheCommand() {
        Sizing difference = Sizing.forPower(new Difference(1, 0, 1), 0.8, SEED);
        checks.row("size-17").expects(difference.perGroup());
        checks.row("size-17-power").expects(difference.power());
        checks.row("size-17-smallest").expects(difference.smallestEffectAt80().orElseThrow());
        checks.row("size-5").expects(perGroup(new Ratio(1.15, 1, 0.06)));
        checks.row("size-8").expects(perGroup(new Ratio(1.15, 1.05, 0.06)));
    }

    @Test
    void agreesOnPublishedPower() {
        checks.row("90-power").expects(number(1, 20).power());
        checks.row("91-size").expects(perGroup(new Difference(0.5, 0, 1)));
        checks.row("91-power").expects(number(0.5, 64).power());
        checks.row("92-394").expects(perGroup(new Difference(0.2, 0, 1)));
        checks.row("92-26").expects(perGroup(new Difference(0.8, 0, 1)));
        checks.row("92-6").expects(perGroup(new Difference(2, 0, 1)));
    }

    @Test
    void agreesOnTheSmallestEffect() {
        checks.row("93-3").expects(number(1, 3).smallestEffectAt80().orElseThrow());
        checks.row("93-5").expects(number(1, 5).smallestEffectAt80().orElseThrow());
        checks.row("93-10").expects(number(1, 10).smallestEffectAt80().orElseThrow());
    }

    @Test
    void agreesOnPartsThatMustAllPass() {
        for (int share : new int[] {80, 90, 95, 99}) {
            checks.row("all-clear-" + share).expects(AllClear.parts(share / 100.0, 0.95));
        }
    }

    /** Where the spreads are pooled in truth, Welch's power stays near Student's: n 17, d 1. */
    @Test
    void simulatesNearlyTheExactPowerOfManySpecimens() {
        double simulated = SimulatedPower.of(new Difference(1, 0, 1), 17, SEED).share();
        assertThat(simulated).isBetween(0.807 - 0.025, 0.807 + 0.02);
    }

    private static int perGroup(PlannedEffect effect) {
        return Sizing.forPower(effect, 0.8, SEED).perGroup();
    }

    private static Sizing number(double difference, int perGroup) {
        return Sizing.forNumber(new Difference(difference, 0, 1), perGroup, SEED);
    }
}
