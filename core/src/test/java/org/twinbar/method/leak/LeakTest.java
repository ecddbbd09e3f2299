package org.twinbar.method.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Ends;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class LeakTest {

    private static Readings.Builder looks(double dry, double wet) {
        return Held.vessel().number(LeakForm.DRY_UNTIL, dry).number(LeakForm.WET_AT, wet);
    }

    private static Readings.Builder dry(double hours) {
        return Held.vessel().number(LeakForm.DRY_UNTIL, hours);
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("leak")).get().isInstanceOf(Leak.class);
    }

    @Test
    void namesColumnsAsOthersReadThem() {
        assertThat(LeakForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .containsExactly("leak_free", "time_to_leak_h", "leak_rate_g_per_h");
        assertThat(LeakForm.DESCRIPTION.inputs())
                .extracting(input -> input.column())
                .contains(
                        "dry_until_h",
                        "wet_at_h",
                        "time_h",
                        "claim_time_h",
                        "mass_before_g",
                        "mass_after_g",
                        "control_loss_g_per_h",
                        "head_mm");
    }

    @Test
    void timeToLeakLiesBetweenTwoLooks() {
        Result result = Held.result(looks(8, 12));
        assertThat(Held.yield(result, LeakForm.TIME_TO_LEAK))
                .isEqualTo(
                        new Yield.Between(8, 12, "last seen dry at 8 h, first seen wet at 12 h"));
    }

    @Test
    void wetAtTheFirstLookLeakedSinceFilling() {
        Result result = Held.result(Held.vessel().number(LeakForm.WET_AT, 2));
        assertThat(Held.yield(result, LeakForm.TIME_TO_LEAK))
                .isEqualTo(new Yield.Between(0, 2, "last seen dry at 0 h, first seen wet at 2 h"));
    }

    @Test
    void dryAtTheEndIsAtLeast() {
        assertThat(Held.yield(Held.result(dry(24)), LeakForm.TIME_TO_LEAK))
                .isEqualTo(new Yield.AtLeast(24, "it was dry when the test ended"));
    }

    @Test
    void aTimeThatWasSeenIsANumber() {
        Readings.Builder readings =
                Held.vessel().word(LeakForm.LEAKED, "yes").number(LeakForm.TIME, 5);
        assertThat(Held.yield(Held.result(readings), LeakForm.TIME_TO_LEAK))
                .isEqualTo(new Yield.Value(5));
        Readings.Builder dry = Held.vessel().word(LeakForm.LEAKED, "no").number(LeakForm.TIME, 5);
        assertThat(Held.yield(Held.result(dry), LeakForm.TIME_TO_LEAK))
                .isInstanceOf(Yield.AtLeast.class);
    }

    @Test
    void theClaimedTimeDecidesYesAndNo() {
        assertThat(leakFree(dry(24), 24)).isEqualTo(new Yield.Word("yes"));
        assertThat(leakFree(looks(30, 40), 24)).isEqualTo(new Yield.Word("yes"));
        assertThat(leakFree(looks(2, 5), 24)).isEqualTo(new Yield.Word("no"));
        assertThat(leakFree(looks(20, 24), 24)).isEqualTo(new Yield.Word("no"));
    }

    @Test
    void aTestThatEndedEarlierHasNoYes() {
        assertThat(leakFree(dry(20), 24))
                .isEqualTo(new Yield.Missing(
                        "the test ended at 20 h, before the 24 h that the claim names"));
        assertThat(leakFree(looks(20, 30), 24))
                .isEqualTo(new Yield.Missing(
                        "it was last seen dry at 20 h and first seen wet at 30 h, with the 24 h of the"
                                + " claim between"));
    }

    private static Yield leakFree(Readings.Builder readings, double claim) {
        return Held.yield(
                Held.result(readings.number(LeakForm.CLAIM_TIME, claim)), LeakForm.LEAK_FREE);
    }

    @Test
    void wetBeforeDryIsImpossible() {
        Result result = Held.result(looks(8, 5));
        for (Property property : LeakForm.DESCRIPTION.properties()) {
            assertThat(Held.yield(result, property))
                    .isEqualTo(new Yield.Missing(
                            "it was first seen wet at 5 h, before it was last seen dry at 8 h"));
        }
    }

    @Test
    void twoLooksAtOneTimeSurviveTheWorldsThatSwapThem() {
        assertThat(Held.yield(Held.result(looks(8, 8)), LeakForm.TIME_TO_LEAK))
                .isEqualTo(new Yield.Value(8));
    }

    @Test
    void lossLessThatOfATightVesselIsTheRate() {
        Result result = Held.result(looks(2, 4)
                .number(LeakForm.MASS_BEFORE, 250)
                .number(LeakForm.MASS_AFTER, 226)
                .number(LeakForm.WEIGHED_AFTER, 24)
                .number(LeakForm.CONTROL_LOSS, 0.1));
        assertThat(((Yield.Value) Held.yield(result, LeakForm.LEAK_RATE)).value())
                .isCloseTo(0.9, within(1e-12));
        assertThat(result.budgets().get(LeakForm.LEAK_RATE).u()).isPositive();
        assertThat(Exactly.found(result, "evaporation-unknown")).isFalse();
    }

    @Test
    void theScatterOfControlsLimitsWhatIsDetected() {
        Readings.Builder readings = dry(24).number(LeakForm.MASS_BEFORE, 250)
                .number(LeakForm.MASS_AFTER, 248)
                .number(LeakForm.CONTROL_LOSS, 0.07)
                .number(LeakForm.CONTROL_SCATTER, 0.01);
        assertThat(Held.yield(Held.result(readings), LeakForm.LEAK_RATE))
                .isEqualTo(
                        new Yield.Below(0.03, "the loss is below what weighing can tell in 24 h"));
    }

    @Test
    void saysWhyThereIsNoRate() {
        assertThat(Held.yield(Held.result(dry(24)), LeakForm.LEAK_RATE))
                .isEqualTo(new Yield.Missing("it was not weighed before and after"));
        Readings.Builder leaked =
                looks(2, 4).number(LeakForm.MASS_BEFORE, 250).number(LeakForm.MASS_AFTER, 226);
        assertThat(Held.yield(Held.result(leaked), LeakForm.LEAK_RATE))
                .isEqualTo(new Yield.Missing("the time between the two weighings was not noted"));
        assertThat(Held.yield(
                        Held.result(leaked.number(LeakForm.WEIGHED_AFTER, 0)), LeakForm.LEAK_RATE))
                .isEqualTo(new Yield.Missing("no time passed between the two weighings"));
    }

    @Test
    void nothingNotedGivesReasons() {
        Result result = Held.result(Held.vessel());
        assertThat(Held.yield(result, LeakForm.LEAK_FREE))
                .isEqualTo(new Yield.Missing("when it was dry or wet was not noted"));
        assertThatThrownBy(() -> dry(-1))
                .hasMessageContaining("dry_until of V1 is -1.0 h, must be at least 0");
    }

    /** What a clock and a scale leave open moves the ends of what is known by bounds. */
    @Test
    void boundsHaveBudgetsOfTheirOwn() {
        Bench bench =
                Exactly.with(Exactly.bench("timer", 0, "60 s", "0 s"), "scale", 0, "0 g", "0.01 g");
        Readings.Builder vessel = Readings.of("V1", "plain", bench)
                .number(LeakForm.DRY_UNTIL, 5)
                .number(LeakForm.WET_AT, 8)
                .number(LeakForm.MASS_BEFORE, 200)
                .number(LeakForm.MASS_AFTER, 200)
                .number(LeakForm.WEIGHED_AFTER, 24);
        Ends looks = Ends.of(Held.result(vessel), LeakForm.TIME_TO_LEAK);
        assertThat(looks.lowerU()).isCloseTo(1 / 60.0, within(1e-9));
        assertThat(looks.upperU()).isCloseTo(1 / 60.0, within(1e-9));
        Result held = Held.result(Readings.of("V2", "plain", bench).number(LeakForm.DRY_UNTIL, 24));
        assertThat(Ends.of(held, LeakForm.TIME_TO_LEAK).lower().orElseThrow().u())
                .isCloseTo(1 / 60.0, within(1e-9));
        assertThat(Ends.of(held, LeakForm.TIME_TO_LEAK).upper()).isEmpty();
        assertThat(held.budgets()).doesNotContainKey(LeakForm.TIME_TO_LEAK);
    }
}
