package org.twinbar.method.density;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class DensityTest {

    private static String text(Readings.Builder readings, String code) {
        Result result = Weighed.result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    private static Yield density(Readings.Builder readings) {
        return Weighed.result(readings).yields().get(DensityForm.DENSITY);
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("density")).get().isInstanceOf(Density.class);
    }

    @Test
    void namesColumnsAsOthersReadThem() {
        assertThat(DensityForm.DESCRIPTION.inputs())
                .extracting(input -> input.column())
                .containsExactly(
                        "mass_in_air_g",
                        "mass_in_liquid_g",
                        "sinker_in_liquid_g",
                        "water_temperature_C",
                        "liquid_density_g_per_cm3",
                        "solid_density_g_per_cm3",
                        "mass_wiped_g");
        assertThat(DensityForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .containsExactly("density_g_per_cm3", "porosity_percent", "volume_cm3");
    }

    @Test
    void porosityIsWhatTheSolidLacks() {
        Readings.Builder readings = Weighed.sound().number(DensityForm.SOLID_DENSITY, 1.32);
        double density = Weighed.value(readings, DensityForm.DENSITY);
        assertThat(Weighed.value(readings, DensityForm.POROSITY))
                .isCloseTo(100 * (1 - density / 1.32), within(1e-12));
    }

    @Test
    void aPartThatFloatsIsHeldDownByASinker() {
        // 3 g of 0.9 g/cm³ push 3.3333 cm³ aside; the sinker shows 20 g in the water by itself.
        double displaced = 3 / 0.9 * (Water.density(23) - 0.0012) * (0.9 / (0.9 - 0.0012));
        double shown = 3 - displaced + 20;
        Readings.Builder readings = Readings.of("F1", "plain", Weighed.fineScale())
                .number(DensityForm.IN_AIR, 3)
                .number(DensityForm.IN_LIQUID, shown)
                .number(DensityForm.SINKER, 20)
                .number(DensityForm.TEMPERATURE, 23);
        assertThat(Weighed.value(readings, DensityForm.DENSITY))
                .isGreaterThan(0.89)
                .isLessThan(0.91);
    }

    @Test
    void saysWhyThereIsNoDensity() {
        Readings.Builder readings =
                Readings.of("D1", "plain", Bench.usual()).number(DensityForm.IN_AIR, 5);
        assertThat(density(readings))
                .isEqualTo(new Yield.Missing("it was not weighed in air and in the liquid"));
        readings.number(DensityForm.IN_LIQUID, 6);
        assertThat(density(readings))
                .isEqualTo(new Yield.Missing("neither the temperature of the water nor a density of"
                        + " the liquid was noted"));
        readings.number(DensityForm.TEMPERATURE, 22);
        assertThat(density(readings))
                .isEqualTo(new Yield.Missing(
                        "it weighs no less in the liquid than in air (-1.00 g less)"));
        readings.number(DensityForm.IN_LIQUID, 1).number(DensityForm.LIQUID_DENSITY, 0.0005);
        assertThat(density(readings))
                .isEqualTo(new Yield.Missing(
                        "the liquid, 0.000500 g/cm³, is not denser than the air"));
    }

    @Test
    void waterThatIsIceOrSteamIsRefused() {
        assertThatThrownBy(() -> Weighed.sound().number(DensityForm.TEMPERATURE, 60))
                .hasMessageContaining("water_temperature of D1 is 60.0 °C, must be 0 to 40");
    }

    @Test
    void aSoundWeighingHasNothingToSay() {
        assertThat(Weighed.result(Weighed.sound()).findings()).isEmpty();
    }

    @Test
    void bubblesHungOnIt() {
        assertThat(text(Weighed.sound().word(DensityForm.BUBBLES, "some"), "bubbles-seen"))
                .startsWith("Bubbles hung on it: each cubic millimetre of air takes 0.025 %");
        Readings.Builder unseen = Readings.of("D1", "plain", Weighed.fineScale())
                .number(DensityForm.IN_AIR, 5)
                .number(DensityForm.IN_LIQUID, 1)
                .number(DensityForm.TEMPERATURE, 23);
        assertThat(text(unseen, "bubbles-not-noted")).contains("was not noted");
    }

    @Test
    void aCubicMillimetreOfAirTakesWhatIsSaid() {
        double without = Weighed.value(Weighed.sound(), DensityForm.DENSITY);
        double lifted = 0.001 * (Water.density(23) - 0.0012);
        double with = Weighed.value(
                Weighed.sound().number(DensityForm.IN_LIQUID, 1 - lifted), DensityForm.DENSITY);
        assertThat(100 * (1 - with / without)).isCloseTo(0.0249, within(5e-4));
    }

    @Test
    void waterEnteredIt() {
        assertThat(text(Weighed.sound().number(DensityForm.WIPED, 5.2), "liquid-entered"))
                .isEqualTo("It came out 0.20 g heavier: the liquid entered open voids, which then"
                        + " don't count as part of it. With them its density is 1.19 g/cm³.");
        assertThat(Weighed.result(Weighed.sound().number(DensityForm.WIPED, 5.001))
                        .findings())
                .isEmpty();
    }

    @Test
    void itIsDenserThanItsSolid() {
        assertThat(text(
                        Weighed.sound().number(DensityForm.SOLID_DENSITY, 1.2),
                        "denser-than-solid"))
                .startsWith(
                        "It is denser, 1.25 g/cm³, than the material without voids, 1.20 g/cm³");
        assertThat(Weighed.result(Weighed.sound().number(DensityForm.SOLID_DENSITY, 1.25))
                        .findings())
                .isEmpty();
    }

    @Test
    void itIsSmallForTheScale() {
        Readings.Builder readings = Readings.of("D1", "plain", Bench.usual())
                .number(DensityForm.IN_AIR, 0.45)
                .number(DensityForm.IN_LIQUID, 0.11)
                .number(DensityForm.TEMPERATURE, 23);
        assertThat(text(readings, "small-for-the-scale"))
                .startsWith(
                        "It pushed only 0.340 g of liquid aside, which the scale knows to 1.2 %");
    }

    @Test
    void theWaterWasNotAt23() {
        assertThat(text(
                        Weighed.sound().number(DensityForm.TEMPERATURE, 15),
                        "off-standard-temperature"))
                .startsWith("The water was at 15.0 °C");
    }
}
