package org.twinbar.method.tensile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class TensileTest {

    private static final double[] FORCE = {0, 200, 400, 600, 800, 780, 760, 740, 720, 700, 5};
    private static final double[] TIME = {0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 91};

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("tensile")).get().isInstanceOf(Tensile.class);
    }

    @Test
    void yieldsThePropertiesThatOthersReadByColumn() {
        assertThat(PullForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .containsExactly(
                        "strength_MPa",
                        "strength_before_MPa",
                        "peak_force_N",
                        "force_per_mass_N_per_g",
                        "modulus_MPa",
                        "yield_strength_MPa",
                        "strain_at_strength_percent",
                        "strain_at_break_percent",
                        "energy_to_break_J");
        assertThat(PullForm.DESCRIPTION.inputs())
                .extracting(input -> input.column())
                .contains("width_mm", "area_mm2", "peak_force_N", "compliance_mm_per_N", "mass_g");
    }

    @Test
    void withoutAStretchOnlyWhatTheForceTellsIsThere() {
        Result result = Pulled.pull(
                Pulled.bar(10, 4).channel(PullForm.FORCE, FORCE).channel(PullForm.TIME, TIME));
        assertThat(Exactly.value(result, PullForm.STRENGTH)).isEqualTo(20);
        assertThat(Exactly.value(result, PullForm.PEAK_FORCE_OUT)).isEqualTo(800);
        for (Property property : List.of(
                PullForm.MODULUS,
                PullForm.YIELD_STRENGTH,
                PullForm.STRAIN_AT_STRENGTH,
                PullForm.STRAIN_AT_BREAK,
                PullForm.ENERGY)) {
            assertThat(Exactly.reason(result, property))
                    .isEqualTo("no extension, strain or displacement was recorded");
        }
    }

    @Test
    void givesTheForceOnEachBasis() {
        Result result = Pulled.pull(Pulled.bar(10.3, 4.3)
                .number(PullForm.WIDTH_BEFORE, 10)
                .number(PullForm.THICKNESS_BEFORE, 4)
                .number(PullForm.MASS, 8)
                .number(PullForm.PEAK_FORCE, 1600));
        assertThat(Exactly.value(result, PullForm.STRENGTH_BEFORE)).isEqualTo(40);
        assertThat(Exactly.value(result, PullForm.STRENGTH)).isEqualTo(1600 / (10.3 * 4.3));
        assertThat(Exactly.value(result, PullForm.FORCE_PER_MASS)).isEqualTo(200);
        assertThat(PullForm.DESCRIPTION.properties())
                .filteredOn(property -> property.family().equals("strength"))
                .extracting(Property::basis)
                .containsExactlyInAnyOrder(
                        Property.Basis.SECTION,
                        Property.Basis.SECTION_BEFORE,
                        Property.Basis.PART,
                        Property.Basis.MASS);
    }

    @Test
    void takesADiameterOrAnAreaForTheSection() {
        Readings.Builder round = Readings.of("R", "plain", Exactly.bench())
                .number(PullForm.DIAMETER, 8)
                .number(PullForm.PEAK_FORCE, 1000);
        assertThat(Exactly.value(Pulled.pull(round), PullForm.STRENGTH))
                .isEqualTo(1000 / (Math.PI / 4 * 64));
        Readings.Builder odd = Readings.of("O", "plain", Exactly.bench())
                .number(PullForm.AREA, 50)
                .number(PullForm.PEAK_FORCE, 1000);
        assertThat(Exactly.value(Pulled.pull(odd), PullForm.STRENGTH)).isEqualTo(20);
    }

    @Test
    void saysWhatIsMissingOfTheSection() {
        Result result = Pulled.pull(
                Readings.of("A1", "plain", Exactly.bench()).number(PullForm.PEAK_FORCE, 1000));
        assertThat(Exactly.reason(result, PullForm.STRENGTH))
                .isEqualTo("neither width and thickness nor diameter nor section area was given");
        assertThat(Exactly.value(result, PullForm.PEAK_FORCE_OUT)).isEqualTo(1000);
    }

    @Test
    void refusesASectionThatIsNotAboveZero() {
        assertThatThrownBy(() -> Pulled.bar(-10, 4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("width of A1 is -10.0 mm, must be above 0");
    }

    @Test
    void breakOutsideTheGaugeIsALowerBound() {
        for (String place : List.of(PullForm.BROKE_AT_SHOULDER, PullForm.BROKE_IN_GRIP)) {
            Result result = Pulled.pull(Pulled.bar(10, 4)
                    .number(PullForm.PEAK_FORCE, 800)
                    .word(PullForm.BROKE_AT, place));
            assertThat(result.yields().get(PullForm.STRENGTH))
                    .isInstanceOfSatisfying(
                            Yield.AtLeast.class, b -> assertThat(b.bound()).isEqualTo(20));
            assertThat(Exactly.found(result, "break-outside-gauge")).isTrue();
            assertThat(result.budgets()).doesNotContainKey(PullForm.STRENGTH);
        }
        Result inGauge = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.PEAK_FORCE, 800)
                .word(PullForm.BROKE_AT, PullForm.BROKE_IN_GAUGE));
        assertThat(Exactly.value(inGauge, PullForm.STRENGTH)).isEqualTo(20);
    }

    @Test
    void strengthAtTheFirstMaximumWhereThatIsChosen() {
        double[] way = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15};
        double[] drawn = {
            0, 300, 600, 900, 1000, 900, 860, 850, 850, 860, 900, 1000, 1100, 1200, 1250, 3
        };
        Readings.Builder readings = Pulled.bar(10, 4)
                .number(PullForm.GRIP_DISTANCE, 100)
                .channel(PullForm.FORCE, drawn)
                .channel(PullForm.DISPLACEMENT, way);
        assertThat(Exactly.value(Pulled.pull(readings), PullForm.STRENGTH)).isEqualTo(1250 / 40.0);
        assertThat(Exactly.value(Pulled.pull(readings), PullForm.YIELD_STRENGTH))
                .isEqualTo(25);
        readings.word(PullForm.STRENGTH_AT, PullForm.FIRST_MAXIMUM);
        assertThat(Exactly.value(Pulled.pull(readings), PullForm.STRENGTH)).isEqualTo(25);
    }

    @Test
    void aSlipIsNoYield() {
        Result result = Pulled.pull(SimulatedPull.brittle().withSlip().readings());
        assertThat(Exactly.reason(result, PullForm.YIELD_STRENGTH))
                .isEqualTo("no yield: the force never fell before it broke");
    }

    @Test
    void crossheadIsDividedByTheGaugeLengthOnlyForWantOfTheGrips() {
        Readings.Builder readings = SimulatedPull.brittle().withoutGrips();
        assertThat(Exactly.reason(Pulled.pull(readings), PullForm.MODULUS))
                .isEqualTo("neither the distance of the grips nor a gauge length was given");
        Result result = Pulled.pull(readings.number(PullForm.GAUGE_LENGTH, 50));
        assertThat(Exactly.found(result, "crosshead-over-gauge")).isTrue();
    }

    @Test
    void aMovedMarkIsTaken() {
        Result result = Pulled.pull(
                Pulled.bar(10, 4).channel(PullForm.FORCE, FORCE).mark(PullForm.PEAK, 3));
        assertThat(Exactly.value(result, PullForm.STRENGTH)).isEqualTo(15);
    }

    @Test
    void aCurveOfOnePointStillHasAForce() {
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .channel(PullForm.FORCE, new double[] {800})
                .channel(PullForm.DISPLACEMENT, new double[] {2}));
        assertThat(Exactly.value(result, PullForm.STRENGTH)).isEqualTo(20);
        assertThat(Exactly.reason(result, PullForm.MODULUS))
                .isEqualTo("the curve has too few rows before its peak");
        assertThat(Exactly.found(result, "peak-at-last-point")).isTrue();
    }

    @Test
    void forceThatNeverRisesHasNoStrength() {
        Result result =
                Pulled.pull(Pulled.bar(10, 4).channel(PullForm.FORCE, new double[] {0, 0, 0}));
        assertThat(Exactly.reason(result, PullForm.STRENGTH))
                .isEqualTo("the force never rises above zero");
        Result nothing = Pulled.pull(Pulled.bar(10, 4).channel(PullForm.FORCE, new double[0]));
        assertThat(Exactly.reason(nothing, PullForm.STRENGTH)).isEqualTo("the curve has no rows");
        Result noForce = Pulled.pull(Pulled.bar(10, 4));
        assertThat(Exactly.reason(noForce, PullForm.STRENGTH)).isEqualTo("no force was read");
    }

    @Test
    void compliancesThatCannotBeAreRefusedInOneSentence() {
        assertThat(MachineCompliance.ofStiffBar(0.35, 1000, 100, 100, 210_000).compliance())
                .isEqualTo(0.35e-3 - 100 / (210_000.0 * 100));
        assertThatThrownBy(() -> MachineCompliance.ofStiffBar(0.001, 1000, 100, 100, 210_000))
                .hasMessageContaining("the bar alone gives more than the travel");
        assertThatThrownBy(() -> MachineCompliance.ofStiffBar(0.1, 0, 100, 100, 210_000))
                .hasMessageContaining("must be above 0");
        double[] lengths = {60, 90, 115};
        assertThatThrownBy(() -> MachineCompliance.ofLengths(lengths, new double[] {3, 2, 1}, 40))
                .hasMessageContaining("does not grow with length");
        assertThatThrownBy(() -> MachineCompliance.ofLengths(lengths, new double[] {1, 2}, 40))
                .hasMessageContaining("3 lengths, 2 compliances");
    }
}
