package org.twinbar.method.impact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class ImpactTest {

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("impact")).get().isInstanceOf(Impact.class);
    }

    @Test
    void namesColumnsAsOthersReadThem() {
        assertThat(ImpactForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .contains("energy_J", "impact_strength_kJ_per_m2", "impact_resistance_J_per_m");
        assertThat(ImpactForm.DESCRIPTION.inputs())
                .extracting(input -> input.column())
                .contains(
                        "moment_Nm",
                        "mass_kg",
                        "centre_of_mass_mm",
                        "release_angle_deg",
                        "rise_angle_deg",
                        "release_height_mm",
                        "rise_height_mm",
                        "height_radius_mm",
                        "free_rise_angle_deg",
                        "free_rise_height_mm",
                        "friction_J",
                        "thickness_mm",
                        "remaining_width_mm");
    }

    @Test
    void weighingTheArmGivesTheSameMomentAsMassAndCentre() {
        Readings.Builder byMass = Struck.bar(Exactly.bench())
                .number(ImpactForm.MASS, 1.2)
                .number(ImpactForm.CENTRE_OF_MASS, 350);
        Readings.Builder byScale = Struck.bar(Exactly.bench())
                .number(ImpactForm.SCALE_READING, 1050)
                .number(ImpactForm.SCALE_RADIUS, 400);
        assertThat(energy(byScale)).isCloseTo(energy(byMass), within(1e-12));
    }

    private static double energy(Readings.Builder hammer) {
        return Exactly.value(
                Struck.strike(hammer.number(ImpactForm.RELEASE_ANGLE, 140)
                        .number(ImpactForm.RISE_ANGLE, 110)),
                ImpactForm.ENERGY);
    }

    @Test
    void heightsOfAnyPointGiveWhatAnglesGive() {
        double byAngle = Exactly.value(Struck.strike(Struck.blow(4, 120, 60)), ImpactForm.ENERGY);
        Result byHeight = Struck.strike(Struck.bar(Exactly.bench())
                .number(ImpactForm.MOMENT, 4)
                .number(ImpactForm.HEIGHT_RADIUS, 400)
                .number(ImpactForm.RELEASE_HEIGHT, 400 * (1 - Hammer.cos(120)))
                .number(ImpactForm.RISE_HEIGHT, 400 * (1 - Hammer.cos(60))));
        assertThat(Exactly.value(byHeight, ImpactForm.ENERGY)).isCloseTo(byAngle, within(1e-12));
    }

    @Test
    void freeSwingTakesThePlaceOfTheRelease() {
        Result result =
                Struck.strike(Struck.blow(4, 140, 110).number(ImpactForm.FREE_RISE_ANGLE, 138));
        assertThat(Exactly.value(result, ImpactForm.ENERGY))
                .isCloseTo(4 * (Hammer.cos(110) - Hammer.cos(138)), within(1e-12));
        assertThat(Exactly.found(result, "friction-unknown")).isFalse();
    }

    @Test
    void noBreakIsALowerBound() {
        Result result = Struck.strike(Struck.blow(4, 140, 110).word(ImpactForm.BREAK_TYPE, "N"));
        assertThat(result.yields().get(ImpactForm.STRENGTH)).isInstanceOf(Yield.AtLeast.class);
        assertThat(Exactly.found(result, "not-broken")).isTrue();
        assertThatThrownBy(() -> Struck.blow(4, 140, 110).word(ImpactForm.BREAK_TYPE, "X"))
                .hasMessage("break_type of A1 is 'X', must be one of C, H, P, N");
    }

    @Test
    void impossibleSwingsHaveAReasonInsteadOfAValue() {
        assertThat(Exactly.reason(Struck.strike(Struck.blow(4, 110, 140)), ImpactForm.ENERGY))
                .isEqualTo("it rose to 140.0 °, above the release at 110.0 °");
        Result freer =
                Struck.strike(Struck.blow(4, 140, 138).number(ImpactForm.FREE_RISE_ANGLE, 137));
        assertThat(Exactly.reason(freer, ImpactForm.STRENGTH))
                .isEqualTo("it rose to 138.0 ° with a specimen, but only to 137.0 ° without one");
        Result overTheTop = Struck.strike(Struck.bar(Exactly.bench())
                .number(ImpactForm.MOMENT, 4)
                .number(ImpactForm.HEIGHT_RADIUS, 200)
                .number(ImpactForm.RELEASE_HEIGHT, 420)
                .number(ImpactForm.RISE_HEIGHT, 300));
        assertThat(Exactly.reason(overTheTop, ImpactForm.ENERGY))
                .isEqualTo(
                        "the release at 420.0 mm is above the top of a circle of radius 200.0 mm");
        assertThatThrownBy(() -> Struck.blow(4, 190, 110))
                .hasMessageContaining("release_angle of A1 is 190.0 °, must be 0 to 180");
    }

    @Test
    void saysWhatIsMissing() {
        Readings.Builder noHammer = Struck.bar(Exactly.bench())
                .number(ImpactForm.RELEASE_ANGLE, 140)
                .number(ImpactForm.RISE_ANGLE, 110);
        assertThat(Exactly.reason(Struck.strike(noHammer), ImpactForm.ENERGY))
                .isEqualTo("the hammer's moment is not known");
        Readings.Builder noRise = Struck.bar(Exactly.bench()).number(ImpactForm.MOMENT, 4);
        assertThat(Exactly.reason(Struck.strike(noRise), ImpactForm.ENERGY))
                .isEqualTo("the angles, or the heights, of release and rise were not read");
        Readings.Builder noRadius = Struck.bar(Exactly.bench())
                .number(ImpactForm.MOMENT, 4)
                .number(ImpactForm.RELEASE_HEIGHT, 400)
                .number(ImpactForm.RISE_HEIGHT, 300);
        assertThat(Exactly.reason(Struck.strike(noRadius), ImpactForm.ENERGY))
                .isEqualTo(
                        "heights want the height of release and the radius that they were read at");
        Readings.Builder noSection = Readings.of("A1", "plain", Exactly.bench())
                .number(ImpactForm.MOMENT, 4)
                .number(ImpactForm.RELEASE_ANGLE, 140)
                .number(ImpactForm.RISE_ANGLE, 110);
        assertThat(Exactly.reason(Struck.strike(noSection), ImpactForm.STRENGTH))
                .isEqualTo("thickness and width were not measured");
    }
}
