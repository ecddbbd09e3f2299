package org.twinbar.method.uptake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class UptakeTest {

    private static Readings.Builder sound() {
        return Readings.of("U1", "plain", Bench.usual())
                .number(UptakeForm.DRY, 20)
                .number(UptakeForm.WET, 20.5)
                .word(UptakeForm.DRIED, "yes");
    }

    private static Result result(Readings.Builder readings) {
        return Result.of(new Uptake(), readings.build());
    }

    private static Yield found(Readings.Builder readings, Property property) {
        return result(readings).yields().get(property);
    }

    private static double value(Readings.Builder readings, Property property) {
        return ((Yield.Value) found(readings, property)).value();
    }

    private static List<String> codes(Readings.Builder readings) {
        return result(readings).findings().stream().map(Finding::code).toList();
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("uptake")).get().isInstanceOf(Uptake.class);
        assertThat(UptakeForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .containsExactly(
                        "uptake_percent", "saturated_uptake_percent", "diffusion_mm2_per_s");
    }

    @Test
    void aScalesGainCancels() {
        var shifts = result(sound()).budgets().get(UptakeForm.UPTAKE).shifts();
        assertThat(shifts).isNotEmpty();
        shifts.forEach((source, shift) -> {
            if (source.identity().equals("scale gain")) {
                assertThat(shift).isCloseTo(0, within(1e-9));
            }
        });
    }

    @Test
    void aGainThatWeighingCannotTellIsABound() {
        Yield yield = found(sound().number(UptakeForm.WET, 20.01), UptakeForm.UPTAKE);
        assertThat(yield).isInstanceOf(Yield.Below.class);
        // √2 of a step of 0.01 g over √12 is the uncertainty of the gain, of 20 g.
        double u = Math.sqrt(2.0 / 12) * 0.01;
        assertThat(((Yield.Below) yield).bound())
                .isCloseTo(100 * (0.01 + 1.6448536269514722 * u) / 20, within(1e-9));
        Yield none = found(sound().number(UptakeForm.WET, 20), UptakeForm.UPTAKE);
        assertThat(((Yield.Below) none).bound()).isCloseTo(100 * 3 * u / 20, within(1e-12));
    }

    @Test
    void whatDissolvedIsNotTakenOff() {
        Readings.Builder readings = sound().number(UptakeForm.REDRIED, 19.9);
        assertThat(value(readings, UptakeForm.UPTAKE)).isCloseTo(3, within(1e-12));
        assertThat(codes(readings)).containsExactly("voids-included", "lost-matter");
        assertThat(codes(sound().number(UptakeForm.REDRIED, 20))).containsExactly("voids-included");
    }

    @Test
    void aSecondMassTellsHowFastTheWaterComesIn() {
        Readings.Builder readings = sound().number(UptakeForm.SATURATED, 21)
                .number(UptakeForm.IMMERSED, 24)
                .number(UptakeForm.THICKNESS, 2);
        assertThat(value(readings, UptakeForm.SATURATION)).isCloseTo(5, within(1e-12));
        assertThat(value(readings, UptakeForm.DIFFUSION))
                .isCloseTo(0.0491827 * 4 / 86400, within(1e-11));
    }

    @Test
    void saysWhyThereIsNothing() {
        assertThat(found(Readings.of("U1", "plain", Bench.usual()), UptakeForm.UPTAKE))
                .isEqualTo(new Yield.Missing("it was not weighed dry and wet"));
        assertThat(found(sound(), UptakeForm.DIFFUSION))
                .isEqualTo(new Yield.Missing("it was not weighed when it gained no more"));
        assertThat(found(sound().number(UptakeForm.SATURATED, 21), UptakeForm.DIFFUSION))
                .isEqualTo(new Yield.Missing("time in the water and thickness were not noted"));
        Readings.Builder hardly = sound().number(UptakeForm.WET, 20.01)
                .number(UptakeForm.SATURATED, 21)
                .number(UptakeForm.IMMERSED, 24)
                .number(UptakeForm.THICKNESS, 2);
        assertThat(found(hardly, UptakeForm.DIFFUSION))
                .isEqualTo(new Yield.Missing("the gain is below what the two weighings can tell"));
        Readings.Builder beyond = sound().number(UptakeForm.SATURATED, 20.4)
                .number(UptakeForm.IMMERSED, 24)
                .number(UptakeForm.THICKNESS, 2);
        assertThat(found(beyond, UptakeForm.DIFFUSION))
                .isEqualTo(
                        new Yield.Missing("the gain is not between nothing and the saturated one"));
    }

    @Test
    void voidsAreAlwaysNamed() {
        assertThat(codes(sound())).containsExactly("voids-included");
    }

    @Test
    void itWasNotDried() {
        assertThat(codes(sound().word(UptakeForm.DRIED, "no"))).contains("not-dried");
        assertThat(codes(Readings.of("U1", "plain", Bench.usual())
                        .number(UptakeForm.DRY, 20)
                        .number(UptakeForm.WET, 20.5)))
                .contains("drying-not-noted");
    }

    @Test
    void itCameOutLighter() {
        assertThat(codes(sound().number(UptakeForm.WET, 19.9))).contains("lighter-after-water");
        assertThat(codes(sound().number(UptakeForm.WET, 19.99)))
                .doesNotContain("lighter-after-water");
    }

    @Test
    void aGainThatWeighingCannotTellIsSaid() {
        Result result = Result.of(
                new Uptake(),
                Readings.of("U1", "plain", Exactly.bench("scale", 0, "0 g", "0.01 g"))
                        .number(UptakeForm.DRY, 4.00)
                        .number(UptakeForm.WET, 4.01)
                        .build());
        assertThat(Exactly.text(result, "below-detection-limit"))
                .startsWith(
                        "It gained 0.0100 g, less than the 0.012 g that two weighings can tell");
    }
}
