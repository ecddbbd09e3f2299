package org.twinbar.method.gloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class GlossTest {

    private static final Property AT_60 = Geometry.AT_60.alongYielded();

    static Readings.Builder plate(Bench bench) {
        return Readings.of("G1", "plain", bench)
                .word(GlossForm.SURFACE, GlossForm.FLAT)
                .word(GlossForm.COVERED, "yes");
    }

    private static Readings.Builder plate() {
        return plate(Exactly.bench());
    }

    static Result of(Readings.Builder readings) {
        return Result.of(new Gloss(), readings.build());
    }

    /** Six readings that are all alike. */
    private static Readings.Builder alike(Readings.Builder plate, Input input, double gloss) {
        return plate.number(input, gloss, gloss, gloss, gloss, gloss, gloss);
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("gloss")).get().isInstanceOf(Gloss.class);
    }

    @Test
    void givesEachAngleAndDirectionByItself() {
        Result result = of(plate().number(Geometry.AT_60.along(), 40, 42, 41, 40, 42, 41)
                .number(Geometry.AT_60.across(), 38, 40, 39, 38, 40, 39));
        assertThat(Exactly.value(result, AT_60)).isCloseTo(41, within(1e-12));
        assertThat(Exactly.value(result, Geometry.AT_60.acrossYielded()))
                .isCloseTo(39, within(1e-12));
        assertThat(result.yields().get(Geometry.AT_20.alongYielded()))
                .isEqualTo(
                        new Yield.Missing("it was not read at this angle and in this direction"));
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void theSixtyDegreeReadingDecidesTheAngle() {
        assertThat(Exactly.text(of(alike(plate(), Geometry.AT_60.along(), 84)), "angle-too-flat"))
                .startsWith("At 60° it reads 84.0 GU; above 70 GU, ISO 2813 takes 20°");
        assertThat(Exactly.text(of(alike(plate(), Geometry.AT_60.along(), 4)), "angle-too-steep"))
                .startsWith("At 60° it reads 4.00 GU; below 10 GU, ISO 2813 takes 85°");
        Readings.Builder both = alike(plate(), Geometry.AT_60.along(), 84);
        assertThat(Exactly.text(of(alike(both, Geometry.AT_20.along(), 70)), "angle-to-compare-at"))
                .contains("so ISO 2813 judges it at 20°");
        assertThat(of(alike(plate(), Geometry.AT_60.along(), 70)).findings()).isEmpty();
        assertThat(of(alike(plate(), Geometry.AT_60.along(), 10)).findings()).isEmpty();
        assertThat(Exactly.found(
                        of(alike(plate(), Geometry.AT_20.along(), 50)), "no-reading-at-60"))
                .isTrue();
    }

    @Test
    void saysWhenReadingsAreFew() {
        assertThat(Exactly.text(of(plate().number(Geometry.AT_60.along(), 50)), "few-readings"))
                .startsWith("It was read once at 60°");
        assertThat(Exactly.text(of(plate().number(Geometry.AT_60.along(), 50, 51)), "few-readings"))
                .startsWith("It was read 2 times at 60°");
    }

    @Test
    void surfacesThatTheStandardLeavesOutAreSerious() {
        Result curved = of(alike(plate(), Geometry.AT_60.along(), 50)
                .word(GlossForm.SURFACE, GlossForm.CURVED));
        assertThat(Exactly.text(curved, "surface-curved")).startsWith("The surface is curved");
        Result metallic = of(alike(plate(), Geometry.AT_60.along(), 50)
                .word(GlossForm.SURFACE, GlossForm.METALLIC));
        assertThat(Exactly.text(metallic, "surface-metallic"))
                .startsWith("The surface is metallic");
        Result open = of(
                alike(plate(), Geometry.AT_60.along(), 50).word(GlossForm.COVERED, GlossForm.OPEN));
        assertThat(Exactly.text(open, "window-not-covered")).contains("light from the room");
        Result unknown =
                of(alike(Readings.of("G1", "plain", Exactly.bench()), Geometry.AT_60.along(), 50));
        assertThat(Exactly.found(unknown, "surface-not-stated")).isTrue();
    }

    @Test
    void ridgesAskForBothDirections() {
        Readings.Builder ridged = alike(plate(), Geometry.AT_60.along(), 50)
                .word(GlossForm.SURFACE, GlossForm.RIDGED);
        assertThat(Exactly.found(of(ridged), "one-direction")).isTrue();
        Result both = of(alike(ridged, Geometry.AT_60.across(), 20));
        assertThat(Exactly.found(both, "one-direction")).isFalse();
        assertThat(Exactly.text(both, "differs-by-direction"))
                .startsWith("At 60° it reads 50.0 GU along the lines and 20.0 GU across");
    }

    @Test
    void moreThanASmoothResinThrowsBackIsDoubted() {
        assertThat(Exactly.text(
                        of(alike(plate(), Geometry.AT_60.along(), 106)), "above-smooth-resin"))
                .startsWith("At 60° it reads 106 GU, where a perfectly smooth resin reads at most"
                        + " 105 GU");
        assertThat(Exactly.found(
                        of(alike(plate(), Geometry.AT_60.along(), 105)), "above-smooth-resin"))
                .isFalse();
    }

    @Test
    void fresnelRefusesWhatIsNoIndexOrAngle() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Fresnel.reflectance(0.9, 60))
                .withMessageContaining("must be 1 or more");
        assertThatIllegalArgumentException().isThrownBy(() -> Fresnel.reflectance(1.5, 91));
    }
}
