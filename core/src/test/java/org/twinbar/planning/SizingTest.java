package org.twinbar.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.statistics.PlannedEffect.Difference;
import org.twinbar.statistics.PlannedEffect.Ratio;

class SizingTest {

    @Test
    void saysWhereTheVerdictsOwnIntervalFindsLess() {
        Sizing few = Sizing.forPower(new Ratio(1.5, 1, 0.12), 0.8, 1);
        assertThat(few.perGroup()).isLessThanOrEqualTo(4);
        assertThat(few.findings()).extracting(Finding::code).contains("power-of-own-spreads");
        assertThat(few.findings().get(few.findings().size() - 1).text())
                .startsWith("The verdict lets each group have its own spread: 4000 simulated")
                .contains("per group reach 80 %");
    }

    @Test
    void findsTheSameTwice() {
        Ratio effect = new Ratio(1.15, 1.05, 0.06);
        assertThat(Sizing.forPower(effect, 0.8, 7)).isEqualTo(Sizing.forPower(effect, 0.8, 7));
    }

    @Test
    void needsAsManyForALossAsForTheInverseGain() {
        int gain = Sizing.forPower(new Ratio(1.25, 1, 0.1), 0.9, 1).perGroup();
        int loss = Sizing.forPower(new Ratio(0.8, 1, 0.1), 0.9, 1).perGroup();
        assertThat(loss).isEqualTo(gain);
    }

    @Test
    void takesARunsMeanForOneValue() {
        RunScatter scatter = new RunScatter(4, 6, 4);
        assertThat(scatter.ofRunMean()).isCloseTo(5, within(1e-12));
        assertThat(new RunScatter(4, 0, 4).ofRunMean()).isEqualTo(4);
    }

    @Test
    void refusesInOneSentence() {
        Difference effect = new Difference(1, 0, 1);
        refuses(
                () -> Sizing.forPower(effect, 1, 1),
                "The power must lie above 2.5 % and below 100 %, not at 100 %.");
        refuses(
                () -> Sizing.forPower(new Difference(1e-4, 0, 1), 0.8, 1),
                "More than 100 000 specimens per group would be needed: the expected effect lies too close to the one worth having for this scatter.");
        refuses(
                () -> Sizing.forNumber(effect, 2, 1),
                "A group has from 3 to 100 000 specimens, not 2.");
        refuses(
                () -> new RunScatter(0, 0, 4),
                "Without any scatter one run per group would tell everything.");
        refuses(() -> new RunScatter(1, 1, 0), "A print run has from 1 to 1000 specimens, not 0.");
        refuses(
                () -> new RunScatter(-1, 1, 2),
                "The scatter between runs must be zero or more, not -1.0.");
    }

    private static void refuses(ThrowingCallable call, String sentence) {
        assertThatThrownBy(call).isInstanceOf(PlanException.class).hasMessage(sentence);
    }
}
