package org.twinbar.planning.resolving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.resolving.Resolution.Lever;
import org.twinbar.quantity.Quantity;

class ResolvingTest {

    private final Checks checks = Checks.of(getClass());

    private static TestMethod method(String name) {
        return Methods.builtIn().named(name).orElseThrow();
    }

    private static Input input(TestMethod method, String name) {
        return method.description().inputs().stream()
                .filter(it -> it.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Property property(TestMethod method, String name) {
        Description description = method.description();
        return description.property(name).orElseThrow();
    }

    /** The pendulum of METHODS C.5: 1 kg, both heights read to half a millimetre. */
    private static Typical pendulum() {
        TestMethod impact = method("impact");
        Input mass = input(impact, "mass");
        Input centre = input(impact, "centre_of_mass");
        Input radius = input(impact, "height_radius");
        Input release = input(impact, "release_height");
        Input rise = input(impact, "rise_height");
        Readings readings = Readings.of("A1", "plain", Bench.usual())
                .numberForAllWithUncertainty(mass, 1, 0)
                .numberForAllWithUncertainty(centre, 300, 0)
                .numberForAllWithUncertainty(radius, 300, 0)
                .number(release, 428.8)
                .number(rise, 410)
                .number(input(impact, "thickness"), 4)
                .number(input(impact, "remaining_width"), 8)
                .build();
        return new Typical(
                impact,
                readings,
                "plain",
                "coated",
                Set.of(mass, centre, radius),
                Map.of(rise, 0.02));
    }

    private static Bench exactBut(Bench bench) {
        return bench.withGain("ruler", 0)
                .withZero("ruler", Quantity.parse("0 mm"))
                .withGain("scale", 0)
                .withZero("scale", Quantity.parse("0 g"));
    }

    private static Resolution of(Typical typical, String property, OptionalDouble scatter) {
        return Resolving.of(
                typical, property(typical.method(), property), exactBut(Bench.usual()), 5, scatter);
    }

    @Test
    void thePendulumOfTheMethods() {
        Resolution resolution = of(pendulum(), "energy", OptionalDouble.empty());
        checks.row("C5-own").expects(1000 * resolution.own());
        checks.row("C5-relative").expects(100 * resolution.own() / resolution.value());
        checks.row("C5-share").expects(resolution.fromInstruments().share().orElseThrow());
        checks.row("C5-amount").expects(resolution.fromInstruments().amount().orElseThrow());
        assertThat(resolution.withScatter()).isEqualTo(resolution.fromInstruments());
        assertThat(resolution.limits())
                .extracting(Resolution.Part::name)
                .containsExactlyInAnyOrder("release height resolution", "rise height resolution");
    }

    @Test
    void aLighterHammerIsFoundWithoutBeingNamed() {
        Lever half = lever(
                of(pendulum(), "energy", OptionalDouble.empty()),
                "Mass of the moving pendulum: 0.5 kg instead of 1 kg");
        checks.row("C5-half-hammer").expects(half.fromInstruments().share().orElseThrow());
        assertThat(half.doubts()).isEmpty();
    }

    @Test
    void scatterThatHidesTheInstruments() {
        TestMethod impact = method("impact");
        double energy = 9.80665 * 18.8e-3;
        Resolution resolution = of(pendulum(), "energy", OptionalDouble.of(0.06 * energy));
        checks.row("C5-scatter").expects(resolution.withScatter().share().orElseThrow());
        assertThat(resolution.property()).isEqualTo(property(impact, "energy"));
        assertThat(resolution.levers().get(0).change())
                .isEqualTo("10 specimens per group instead of 5");
    }

    /** What a finer scale gains is half of what it read, not a sentence that was written before. */
    @Test
    void aFinerScaleIsHeldAgainstTheOthers() {
        Lever finer = lever(
                of(pendulum(), "energy", OptionalDouble.empty()),
                "ruler: steps of 0.5 mm instead of 1 mm");
        checks.row("C5-half-hammer").expects(finer.fromInstruments().share().orElseThrow());
    }

    private static Lever lever(Resolution resolution, String change) {
        return resolution.levers().stream()
                .filter(it -> it.change().equals(change))
                .findFirst()
                .orElseThrow(() -> new AssertionError(resolution.levers().toString()));
    }

    private static Typical bar() {
        TestMethod tensile = method("tensile");
        Readings readings = Readings.of("A1", "plain", Bench.usual())
                .numberWithUncertainty(input(tensile, "width"), 10.02, 0.0202)
                .numberWithUncertainty(input(tensile, "thickness"), 4.05, 0.0253)
                .numberWithUncertainty(input(tensile, "peak_force"), 1250, 0)
                .build();
        return new Typical(tensile, readings, "plain", "coated", Set.of(), Map.of());
    }

    @Test
    void theBarOfTheMethods() {
        Bench bench = Bench.usual()
                .withGain("load cell", 0.0025)
                .withZero("load cell", Quantity.parse("0 N"))
                .withZero("caliper", Quantity.parse("0 mm"));
        Resolution resolution = Resolving.of(
                bar(), property(method("tensile"), "strength"), bench, 5, OptionalDouble.empty());
        checks.row("A6-own").expects(resolution.own());
        checks.row("A6-thickness").expects(resolution.limits().get(0).share());
        checks.row("A6-share").expects(resolution.fromInstruments().share().orElseThrow());
        checks.row("A6-gain").expects(resolution.cancelling().get(0).u());
        assertThat(resolution.limits().get(0).name()).isEqualTo("thickness as given");
        assertThat(resolution.cancelling())
                .extracting(Resolution.Shared::name)
                .containsExactly("load cell gain");
        // Rounding does not average out: twice as many only make the scatter better known.
        assertThat(resolution.levers())
                .extracting(Lever::change)
                .containsExactly("10 specimens per group instead of 5");
    }

    @Test
    void aDifferenceOfScatterAloneIsTheOneOfTheTables() {
        Property temperature = Property.of("t", "Temperature", "°C", Property.Scale.INTERVAL);
        Smallest smallest = Smallest.of(temperature, 60, 1, 0, 0, 5);
        checks.row("93-d5").expects(smallest.amount().orElseThrow());
        assertThat(smallest.share()).isEmpty();
    }

    @Test
    void whatOneGroupAloneHasDoesNotAverageOut() {
        Property temperature = Property.of("t", "Temperature", "°C", Property.Scale.INTERVAL);
        double few = Smallest.of(temperature, 60, 0, 0, 1, 5).orHidden();
        double many = Smallest.of(temperature, 60, 0, 0, 1, 500).orHidden();
        assertThat(many).isCloseTo(2.8, within(0.05));
        assertThat(few).isGreaterThan(many);
        assertThat(Smallest.of(temperature, 60, 0, 0, 0, 5).orHidden()).isZero();
    }

    @Test
    void scatterMayHideAnyRatio() {
        Property energy = Property.of("e", "Energy", "J", Property.Scale.RATIO);
        assertThat(Smallest.of(energy, 1, 2, 0, 0, 3).amount()).isEmpty();
    }

    /** Each one-hundredth of a step is a step: the levers never make the bench worse. */
    @Test
    void everyLeverHelps() {
        Resolution resolution = of(pendulum(), "energy", OptionalDouble.of(0.01));
        assertThat(resolution.levers()).isNotEmpty().allSatisfy(lever -> {
            boolean alone = lever.fromInstruments().orHidden()
                    < resolution.fromInstruments().orHidden();
            boolean scattered =
                    lever.withScatter().orHidden() < resolution.withScatter().orHidden();
            assertThat(alone || scattered).as(lever.change()).isTrue();
        });
    }

    @Test
    void whatCannotBeToldIsRefused() {
        assertThatThrownBy(() -> Resolving.of(
                        bar(),
                        property(method("tensile"), "modulus"),
                        Bench.usual(),
                        5,
                        OptionalDouble.empty()))
                .isInstanceOf(PlanException.class)
                .hasMessageContaining("no number of tensile modulus");
        assertThatThrownBy(() -> Resolving.of(
                        bar(),
                        property(method("tensile"), "strength"),
                        Bench.usual(),
                        2,
                        OptionalDouble.empty()))
                .isInstanceOf(PlanException.class)
                .hasMessageContaining("from 3 to 10 000");
    }

    @Test
    void namesNoReadingThatIsNotThere() {
        List<Named> asked = bar().method().description().asked();
        assertThat(asked).isNotEmpty();
        assertThat(Response.number(
                        bar().method(), property(method("tensile"), "modulus"), bar().readings()))
                .isEqualTo(Optional.empty());
    }
}
