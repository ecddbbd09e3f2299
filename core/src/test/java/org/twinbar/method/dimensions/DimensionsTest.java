package org.twinbar.method.dimensions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class DimensionsTest {

    private static Readings.Builder bar() {
        return Readings.of("C1", "coated", Bench.usual());
    }

    private static Readings.Builder coated(double film) {
        return bar().number(Axis.THICKNESS.before(), 4)
                .number(Axis.THICKNESS.after(), 4 + 2 * film)
                .number(Axis.MASS.before(), 10)
                .number(Axis.MASS.after(), 10.33)
                .number(DimensionsForm.AREA, 20)
                .number(DimensionsForm.FILM_DENSITY, 1.1);
    }

    private static Result result(Readings.Builder readings) {
        return Result.of(new Dimensions(), readings.build());
    }

    private static double value(Readings.Builder readings, Property property) {
        return ((Yield.Value) result(readings).yields().get(property)).value();
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("dimensions")).get().isInstanceOf(Dimensions.class);
        assertThat(DimensionsForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .containsExactly(
                        "length_change_percent",
                        "width_change_percent",
                        "thickness_change_percent",
                        "mass_change_percent",
                        "film_um",
                        "film_by_mass_um");
    }

    @Test
    void changesAreSharesOfWhatWasBefore() {
        Readings.Builder readings =
                bar().number(Axis.LENGTH.before(), 150).number(Axis.LENGTH.after(), 147);
        assertThat(value(readings, Axis.LENGTH.change())).isCloseTo(-2, within(1e-12));
    }

    @Test
    void aCalipersZeroCancelsInAFilmAndNotInAShare() {
        Result result = result(coated(0.15));
        assertThat(result.budgets().get(DimensionsForm.FILM).shifts().keySet())
                .noneMatch(source -> source.identity().equals("caliper zero"));
        assertThat(result.budgets().get(Axis.THICKNESS.change()).shifts().keySet())
                .anyMatch(source -> source.identity().equals("caliper zero"));
    }

    @Test
    void aFilmIsOnBothFacesUnlessItIsSaid() {
        assertThat(value(coated(0.15), DimensionsForm.FILM)).isCloseTo(150, within(1e-9));
        assertThat(value(coated(0.15).word(DimensionsForm.FACES, "one"), DimensionsForm.FILM))
                .isCloseTo(300, within(1e-9));
        assertThat(value(coated(0.15), DimensionsForm.FILM_BY_MASS)).isCloseTo(150, within(1e-9));
    }

    @Test
    void saysWhatWasNotTaken() {
        Result result =
                result(bar().number(Axis.LENGTH.before(), 150).number(Axis.MASS.before(), 2));
        assertThat(result.yields().get(Axis.LENGTH.change()))
                .isEqualTo(new Yield.Missing("the length was not taken before and after"));
        assertThat(result.yields().get(DimensionsForm.FILM_BY_MASS))
                .isInstanceOf(Yield.Missing.class);
    }

    @Test
    void twoFilmsThatAgreeHaveNothingToSay() {
        assertThat(result(coated(0.15)).findings()).isEmpty();
    }

    @Test
    void filmsDisagree() {
        assertThat(text(coated(0.10), "films-disagree"))
                .startsWith("The film is 100 µm by thickness and 150 µm by mass");
    }

    @Test
    void itBecameThinner() {
        assertThat(text(coated(-0.05), "thinner-after-treatment"))
                .startsWith("It became thinner by 0.10 mm");
    }

    @Test
    void theChangeIsBelowWhatReadingsTell() {
        Readings.Builder readings =
                bar().number(Axis.WIDTH.before(), 10).number(Axis.WIDTH.after(), 10.008);
        assertThat(text(readings, "change-below-reading"))
                .startsWith(
                        "The width changed by 0.0080 mm, less than two readings can tell (0.012 mm)");
    }

    @Test
    void itShrankOneWayAndGrewTheOther() {
        Readings.Builder readings = bar().number(Axis.LENGTH.before(), 150)
                .number(Axis.LENGTH.after(), 147)
                .number(Axis.THICKNESS.before(), 4)
                .number(Axis.THICKNESS.after(), 4.1);
        assertThat(text(readings, "shrank-one-way"))
                .startsWith("It shrank by 2.0 % in length and grew by 2.5 % in thickness");
    }
}
