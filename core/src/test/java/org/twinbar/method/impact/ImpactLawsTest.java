package org.twinbar.method.impact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.quantity.Quantity;

class ImpactLawsTest {

    private static double energy(Readings.Builder readings) {
        return Exactly.value(Struck.strike(readings), ImpactForm.ENERGY);
    }

    @Test
    void twiceTheMomentIsTwiceTheEnergy() {
        assertThat(energy(Struck.blow(6, 140, 100)))
                .isCloseTo(2 * energy(Struck.blow(3, 140, 100)), within(1e-12));
    }

    @Test
    void twoHalfBlowsAreOneBlow() {
        assertThat(energy(Struck.blow(4, 140, 120)) + energy(Struck.blow(4, 120, 80)))
                .isCloseTo(energy(Struck.blow(4, 140, 80)), within(1e-12));
    }

    @Test
    void aSwingThatComesBackWholeTookNothing() {
        assertThat(energy(Struck.blow(4, 140, 140))).isZero();
    }

    @Test
    void strengthIsPerAreaAndResistancePerLength() {
        Result narrow = Struck.strike(Struck.blow(4, 140, 100));
        Result wide = Struck.strike(Struck.blow(4, 140, 100).number(ImpactForm.WIDTH, 16));
        assertThat(Exactly.value(wide, ImpactForm.STRENGTH))
                .isCloseTo(Exactly.value(narrow, ImpactForm.STRENGTH) / 2, within(1e-9));
        assertThat(Exactly.value(wide, ImpactForm.RESISTANCE))
                .isEqualTo(Exactly.value(narrow, ImpactForm.RESISTANCE));
    }

    /** METHODS C.4: (J/m) = (kJ/m²) · b_N (mm). */
    @Test
    void resistanceIsStrengthTimesTheWidth() {
        Result result = Struck.strike(Struck.blow(4, 140, 100));
        assertThat(Exactly.value(result, ImpactForm.RESISTANCE))
                .isCloseTo(Exactly.value(result, ImpactForm.STRENGTH) * 8, within(1e-9));
    }

    @Test
    void aHammersMomentCancelsInARatioAndItsScalesZeroDoesNot() {
        Bench bench = Exactly.bench().withZero("angle scale", Quantity.parse("0.5 deg"));
        Result tough = Struck.strike(shared(bench, 90));
        Result brittle = Struck.strike(shared(bench, 130));
        assertThat(relative(tough, "moment as given") - relative(brittle, "moment as given"))
                .isCloseTo(0, within(1e-12));
        assertThat(Math.abs(relative(tough, "angle scale zero")
                        - relative(brittle, "angle scale zero")))
                .isGreaterThan(0.001);
    }

    private static Readings.Builder shared(Bench bench, double rise) {
        return Struck.bar(bench)
                .numberForAllWithUncertainty(ImpactForm.MOMENT, 4, 0.08)
                .number(ImpactForm.RELEASE_ANGLE, 140)
                .number(ImpactForm.RISE_ANGLE, rise);
    }

    private static double relative(Result result, String identity) {
        return result.budgets().get(ImpactForm.ENERGY).shifts().entrySet().stream()
                        .filter(entry -> entry.getKey().identity().equals(identity))
                        .mapToDouble(entry -> entry.getValue())
                        .sum()
                / Exactly.value(result, ImpactForm.ENERGY);
    }

    /** C.5: with a free swing on the same scale, an error of the latch is in both and cancels. */
    @Test
    void theReleaseDoesNotMatterWhereAFreeSwingWasRead() {
        Readings.Builder one = Struck.blow(4, 140, 100).number(ImpactForm.FREE_RISE_ANGLE, 138);
        Readings.Builder other = Struck.blow(4, 142, 100).number(ImpactForm.FREE_RISE_ANGLE, 138);
        assertThat(energy(one)).isEqualTo(energy(other));
    }

    @Test
    void heavierPiecesAreNotToughness() {
        Readings.Builder light = Struck.blow(1, 150, 110)
                .number(ImpactForm.STRIKER_RADIUS, 230)
                .number(ImpactForm.PIECE_MASS, 1);
        Readings.Builder heavy = Struck.blow(1, 150, 110)
                .number(ImpactForm.STRIKER_RADIUS, 230)
                .number(ImpactForm.PIECE_MASS, 3);
        Result one = Struck.strike(light);
        Result other = Struck.strike(heavy);
        assertThat(energy(heavy)).isLessThan(energy(light));
        // One share for all: what the toss took moves the heavier pieces' energy three times as
        // far.
        assertThat(toss(other)).isCloseTo(3 * toss(one), Percentage.withPercentage(1e-6));
    }

    private static double toss(Result result) {
        return result.budgets().get(ImpactForm.ENERGY).shifts().entrySet().stream()
                .filter(entry -> entry.getKey().identity().equals("share of the pieces' energy"))
                .mapToDouble(entry -> Math.abs(entry.getValue()))
                .sum();
    }

    @Test
    void aSlowerSwingIsALongerHammer() {
        double previous = 0;
        for (double period = 0.6; period < 2; period += 0.1) {
            double length = Hammer.reducedLength(period, 0);
            assertThat(length).isGreaterThan(previous);
            assertThat(new Hammer(1, length).periodS()).isCloseTo(period, within(1e-12));
            previous = length;
        }
        assertThat(Hammer.reducedLength(1.2, 10)).isLessThan(Hammer.reducedLength(1.2, 5));
    }
}
