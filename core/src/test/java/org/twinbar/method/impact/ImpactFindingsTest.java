package org.twinbar.method.impact;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Each finding is raised by readings that deserve it, and not by a sound blow. */
class ImpactFindingsTest {

    /**
     * A hammer of 1.05 J whose striker sits at its centre of percussion, 0.2235 m below the pivot.
     */
    private static Readings.Builder sound(double rise) {
        return Struck.blow(1.05 / (1 - Hammer.cos(157)), 157, rise)
                .number(ImpactForm.FREE_RISE_ANGLE, 156.5)
                .number(ImpactForm.STRIKER_RADIUS, 223.5);
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = Struck.strike(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void aSoundBlowHasNothingToSay() {
        assertThat(Struck.strike(sound(115)).findings()).isEmpty();
    }

    @Test
    void tooLittleEnergyNamesTheHammerThatWouldSuit() {
        assertThat(text(Struck.blow(5, 140, 137), "energy-below-window"))
                .isEqualTo(
                        "It took 2.0 % of the hammer's 8.83 J; below 10 % (ISO 179-1 and ISO 180) the"
                                + " scale hardly resolves it. The standard's hammer of 1 J would suit.");
        assertThat(text(Struck.blow(0.05, 140, 137), "energy-below-window"))
                .endsWith("A hammer from 0.0022 to 0.017 J would suit.");
    }

    @Test
    void tooMuchEnergy() {
        assertThat(text(Struck.blow(1, 120, 30), "energy-above-window"))
                .contains("above 80 %")
                .endsWith("The standard's hammer of 7.5 J would suit.");
        assertThat(text(
                        Struck.blow(1, 120, 30).word(ImpactForm.HELD_AS, ImpactForm.IZOD),
                        "energy-above-window"))
                .endsWith("The standard's hammer of 11 J would suit.");
    }

    @Test
    void frictionThatWasNotMeasuredOrIsLarge() {
        assertThat(text(Struck.blow(1, 140, 100), "friction-unknown"))
                .contains("swing once without");
        assertThat(text(
                        Struck.blow(1, 140, 100).number(ImpactForm.FREE_RISE_ANGLE, 130),
                        "friction-large"))
                .isEqualTo(
                        "A swing loses 7.0 % of the hammer's energy; ISO 13802 allows about 1.0 % for a"
                                + " hammer of this size.");
    }

    @Test
    void frictionThatLeavesNothing() {
        Readings.Builder readings = Struck.blow(1, 140, 139).number(ImpactForm.FRICTION, 0.5);
        assertThat(text(readings, "no-energy-left")).contains("use a lighter hammer");
    }

    @Test
    void aStrikerOffTheCentreOfPercussion() {
        Readings.Builder readings = sound(115)
                .number(ImpactForm.SWINGS, 20)
                .number(ImpactForm.SWINGS_TIME, 20 * 1.2686)
                .number(ImpactForm.SWINGS_AMPLITUDE, 0);
        assertThat(text(readings, "percussion-off"))
                .startsWith("The striker sits at 224 mm, the centre of percussion at 400 mm");
    }

    @Test
    void aSpeedThatIsNotTheStandards() {
        Readings.Builder readings = Struck.blow(1, 90, 60).number(ImpactForm.STRIKER_RADIUS, 150);
        assertThat(text(readings, "speed-outside-standard"))
                .startsWith(
                        "The striker is at 1.72 m/s when it strikes, the standard's hammer at 2.9 m/s");
    }

    @Test
    void piecesThatFlyOff() {
        assertThat(text(sound(115).number(ImpactForm.PIECE_MASS, 5), "toss"))
                .startsWith("Pieces of 5.00 g may have flown off with up to");
        assertThat(text(
                        Struck.blow(1, 140, 100).number(ImpactForm.PIECE_MASS, 5),
                        "pieces-without-speed"))
                .contains("without the striker's radius");
        assertThat(Exactly.found(
                        Struck.strike(sound(115).number(ImpactForm.PIECE_MASS, 0.01)), "toss"))
                .isFalse();
    }

    @Test
    void aNotchMadeBeforeTreatment() {
        assertThat(text(sound(115).word(ImpactForm.NOTCH_MADE, "before"), "notch-before-treatment"))
                .contains("a coat lies in it");
        assertThat(Exactly.found(
                        Struck.strike(sound(115).word(ImpactForm.NOTCH_MADE, "after")),
                        "notch-before-treatment"))
                .isFalse();
    }

    @Test
    void aSpecimenThatDidNotBreak() {
        assertThat(text(sound(115).word(ImpactForm.BREAK_TYPE, "N"), "not-broken"))
                .contains("only within one type of break");
    }
}
