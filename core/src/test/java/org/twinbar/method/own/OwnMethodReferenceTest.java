package org.twinbar.method.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;

/** What the handbook calculates comes out where its formula is written down. */
class OwnMethodReferenceTest {

    private static final Checks CHECKS = Checks.of(OwnMethodReferenceTest.class);

    private static TestMethod flexure() {
        return Planned.begin()
                .input("peak_force", "N", Kind.LOAD_CELL)
                .input("span", "mm", Kind.RULER)
                .input("width", "mm", Kind.CALIPER)
                .input("thickness", "mm", Kind.CALIPER)
                .result("stress", "MPa", "3*peak_force*span / (2*width*thickness^2)")
                .method();
    }

    private static Readings.Builder bar(TestMethod method) {
        Readings.Builder readings = Planned.specimen();
        for (Input input : method.description().inputs()) {
            switch (input.name()) {
                case "peak_force" -> readings.number(input, 80);
                case "span" -> readings.number(input, 64);
                case "width" -> readings.number(input, 10);
                case "thickness" -> readings.number(input, 4);
                default -> {
                    // The built-in method asks for more than this test knows.
                }
            }
        }
        return readings;
    }

    @Test
    void aBarBends() {
        TestMethod own = flexure();
        CHECKS.row("flexure").expects(Planned.value(own, bar(own), "stress"));
    }

    /** Value and budget are those of the method that comes with Twinbar. */
    @Test
    void aBarBendsAsInTheBuiltInMethod() {
        TestMethod own = flexure();
        TestMethod builtIn = Methods.builtIn().named("flexure").orElseThrow();
        var ours = Result.of(own, bar(own).build())
                .budgets()
                .get(own.description().property("stress").orElseThrow());
        var theirs = Result.of(builtIn, bar(builtIn).build())
                .budgets()
                .get(builtIn.description().property("flexural_strength").orElseThrow());
        assertThat(ours.value()).isCloseTo(theirs.value(), within(1e-12));
        assertThat(ours.u()).isCloseTo(theirs.u(), within(1e-12));
        assertThat(ours.shifts().keySet()).isEqualTo(theirs.shifts().keySet());
    }

    @Test
    void aPendulumLosesEnergy() {
        TestMethod own = Planned.begin()
                .input("mass", "kg", Kind.SCALE)
                .input("arm", "m", Kind.RULER)
                .input("release", "°", Kind.ANGLE_SCALE)
                .input("rise", "°", Kind.ANGLE_SCALE)
                .setting("gravity", "m/s2", 9.80665)
                .step("moment", "mass · gravity · arm")
                .result("energy", "J", "moment · (cos(rise) − cos(release))")
                .method();
        Readings.Builder readings = Planned.specimen()
                .number(Planned.input(own, "mass"), 1.2)
                .number(Planned.input(own, "arm"), 0.35)
                .number(Planned.input(own, "release"), 140)
                .number(Planned.input(own, "rise"), 110);
        CHECKS.row("pendulum").expects(Planned.value(own, readings, "energy"));
    }

    @Test
    void massesGiveUptakeAndDensity() {
        TestMethod own = Planned.begin()
                .input("dry", "g", Kind.SCALE)
                .input("wet", "g", Kind.SCALE)
                .setting("water", "g/cm3", 0.99754)
                .result("uptake", "%", "(wet - dry) / dry")
                .result("density", "g/cm3", "dry * water / (dry - wet)")
                .method();
        Input dry = Planned.input(own, "dry");
        Input wet = Planned.input(own, "wet");
        CHECKS.row("uptake")
                .expects(Planned.value(
                        own,
                        Planned.specimen().number(dry, 10.0021).number(wet, 10.0523),
                        "uptake"));
        CHECKS.row("immersion")
                .expects(Planned.value(
                        own, Planned.specimen().number(dry, 5).number(wet, 1), "density"));
    }
}
