package org.twinbar.method.leak;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Each finding is raised by readings that deserve it, and not by a sound test. */
class LeakFindingsTest {

    private static Readings.Builder sound() {
        return Held.vessel()
                .number(LeakForm.DRY_UNTIL, 20)
                .number(LeakForm.WET_AT, 24)
                .number(LeakForm.CLAIM_TIME, 24)
                .number(LeakForm.MASS_BEFORE, 250)
                .number(LeakForm.MASS_AFTER, 246)
                .number(LeakForm.WEIGHED_AFTER, 24)
                .number(LeakForm.CONTROL_LOSS, 0.02)
                .word(LeakForm.LIQUID, "water");
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = Held.result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void aSoundTestHasNothingToSay() {
        assertThat(Held.result(sound()).findings()).isEmpty();
    }

    @Test
    void noTimeWasClaimed() {
        assertThat(text(Held.vessel().number(LeakForm.DRY_UNTIL, 20), "no-claim-time"))
                .isEqualTo(
                        "No time was claimed, so dry means dry until the end of its own test, 20 h.");
    }

    @Test
    void evaporationWasNotMeasured() {
        Readings.Builder readings = Held.vessel()
                .number(LeakForm.DRY_UNTIL, 24)
                .number(LeakForm.MASS_BEFORE, 250)
                .number(LeakForm.MASS_AFTER, 249);
        assertThat(text(readings, "evaporation-unknown")).contains("counts as leaked");
    }

    @Test
    void itLostLessThanTheTightVessel() {
        assertThat(text(sound().number(LeakForm.MASS_AFTER, 250), "gained-mass"))
                .startsWith("It lost 0.020 g/h less than the tight vessel");
        assertThat(Exactly.found(
                        Held.result(sound().number(LeakForm.MASS_AFTER, 249.52)), "gained-mass"))
                .isFalse();
    }

    @Test
    void looksFarApart() {
        assertThat(text(sound().number(LeakForm.DRY_UNTIL, 8), "looks-far-apart"))
                .startsWith("It was dry at 8 h and wet at 24 h");
    }

    @Test
    void theHeadFell() {
        Readings.Builder readings =
                sound().number(LeakForm.HEAD, 120).number(LeakForm.HEAD_AT_END, 80);
        assertThat(text(readings, "head-fell"))
                .isEqualTo(
                        "The head fell from 120 to 80.0 mm, so the leak rate is one under about 100 mm.");
        assertThat(Exactly.found(
                        Held.result(sound().number(LeakForm.HEAD, 120)
                                .number(LeakForm.HEAD_AT_END, 115)),
                        "head-fell"))
                .isFalse();
    }

    @Test
    void dryUnderASmallHeadProvesLittle() {
        Readings.Builder readings = Held.vessel()
                .number(LeakForm.DRY_UNTIL, 24)
                .number(LeakForm.HEAD, 120)
                .word(LeakForm.LIQUID, "Water");
        assertThat(text(readings, "dry-pores-may-hold"))
                .startsWith(
                        "A head of 120 mm presses with 1.2 kPa; pores up to 85 µm that repel water");
    }

    @Test
    void aRateIsAlsoSaidAsOnePore() {
        Readings.Builder readings = sound().number(
                        LeakForm.MASS_AFTER, 250 - 24 * (0.02 + 2.7005 * 0.9982))
                .number(LeakForm.HEAD, 500.6)
                .number(LeakForm.WALL, 1);
        assertThat(text(readings, "as-one-pore"))
                .isEqualTo("That much runs through one round pore of 50 µm in a wall of 1.0 mm.");
        assertThat(Exactly.found(
                        Held.result(readings.word(LeakForm.LIQUID, "diesel")), "as-one-pore"))
                .isFalse();
    }

    @Test
    void theLiquidWasNotNoted() {
        assertThat(text(Held.vessel().number(LeakForm.DRY_UNTIL, 24), "liquid-not-stated"))
                .contains("state it with the result");
    }

    @Test
    void aLossThatWeighingCannotTellIsSaid() {
        Result result = Held.result(Held.vessel()
                .number(LeakForm.MASS_BEFORE, 200.00)
                .number(LeakForm.MASS_AFTER, 199.99)
                .number(LeakForm.WEIGHED_AFTER, 24));
        assertThat(Exactly.text(result, "below-detection-limit"))
                .startsWith("The loss is below 0.00051 g/h, three standard uncertainties");
    }
}
