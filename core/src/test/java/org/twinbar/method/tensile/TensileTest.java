package org.twinbar.method.tensile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Ends;
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
                        "energy_to_break_J",
                        "nominal_strain_at_break_percent",
                        "poisson_ratio");
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
                PullForm.ENERGY,
                PullForm.NOMINAL_STRAIN,
                PullForm.POISSON_RATIO)) {
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
    void oneRowProvesNoPeak() {
        for (double[] force : List.of(new double[] {800}, new double[] {10, 800})) {
            Result result = Pulled.pull(Pulled.bar(10, 4).channel(PullForm.FORCE, force));
            assertThat(result.yields().get(PullForm.STRENGTH))
                    .isEqualTo(new Yield.AtLeast(20, "a record of one or two rows proves no peak"));
        }
    }

    /** An extensometer up to the yield at 2 %, and the crosshead from there. */
    static Readings.Builder necking() {
        int rows = 61;
        double[] force = new double[rows];
        double[] extension = new double[rows];
        double[] travel = new double[rows];
        for (int row = 0; row < rows; row++) {
            force[row] = row <= 20 ? 60.0 * row : Math.max(800, 1200 - 20.0 * (row - 20));
            extension[row] = row <= 20 ? 0.05 * row : 1 + 0.004 * (row - 20);
            travel[row] = 0.15 * row;
        }
        force[rows - 1] = 3;
        return Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .number(PullForm.GRIP_DISTANCE, 115)
                .channel(PullForm.FORCE, force)
                .channel(PullForm.EXTENSION, extension)
                .channel(PullForm.DISPLACEMENT, travel);
    }

    @Test
    void nominalStrainCountsFromTheYieldWhereThereIsOne() {
        Result result = Pulled.pull(necking());
        assertThat(Exactly.value(result, PullForm.NOMINAL_STRAIN))
                .isCloseTo(2 + 100 * 0.15 * 39 / 115, within(1e-9));
        assertThat(Exactly.text(result, "nominal-strain-method"))
                .startsWith("The nominal strain is that of method B");
        Result byOffset = Pulled.pull(necking().word(PullForm.YIELD_BY, PullForm.BY_OFFSET));
        assertThat(Exactly.value(byOffset, PullForm.NOMINAL_STRAIN))
                .isCloseTo(100 * 0.15 * 59 / 115, within(1e-9));
        assertThat(Exactly.text(byOffset, "nominal-strain-method"))
                .startsWith("The nominal strain is that of method A");
        Result noTravel = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .channel(PullForm.FORCE, FORCE)
                .channel(PullForm.EXTENSION, TIME));
        assertThat(Exactly.reason(noTravel, PullForm.NOMINAL_STRAIN))
                .isEqualTo("travel of the crosshead and distance of the grips were not both given");
    }

    /** 4 N a micrometre along 50 mm, and a width that shrinks by 0.36 of the strain. */
    private static Readings.Builder narrowing(double ratio) {
        double[] force = new double[401];
        double[] extension = new double[401];
        double[] narrowing = new double[401];
        for (int row = 0; row < 400; row++) {
            extension[row] = 0.001 * row;
            force[row] = 4 * row;
            narrowing[row] = 10 * ratio * extension[row] / 50;
        }
        return Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .channel(PullForm.FORCE, force)
                .channel(PullForm.EXTENSION, extension)
                .channel(PullForm.NARROWING, narrowing);
    }

    @Test
    void poissonRatioIsHowFarItNarrowsAsItStretches() {
        assertThat(Exactly.value(Pulled.pull(narrowing(0.36)), PullForm.POISSON_RATIO))
                .isCloseTo(0.36, within(1e-9));
        assertThat(Exactly.reason(Pulled.pull(narrowing(-0.36)), PullForm.POISSON_RATIO))
                .isEqualTo("it does not narrow over the modulus window: the sign may be turned"
                        + " round");
        assertThat(Exactly.reason(Pulled.pull(necking()), PullForm.POISSON_RATIO))
                .isEqualTo("how far it narrowed was not recorded");
        Readings.Builder byCrosshead =
                SimulatedPull.brittle().readings().channel(PullForm.NARROWING, new double[600]);
        assertThat(Exactly.reason(Pulled.pull(byCrosshead), PullForm.POISSON_RATIO))
                .startsWith("the stretch is the crosshead's");
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
            Bench cell = Exactly.bench("load cell", 0.01, "0 N", "0 N");
            Result doubted = Pulled.pull(Pulled.bar(10, 4, cell)
                    .number(PullForm.PEAK_FORCE, 800)
                    .word(PullForm.BROKE_AT, place));
            assertThat(Ends.of(doubted, PullForm.STRENGTH).lowerU()).isCloseTo(0.2, within(1e-9));
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
        assertThat(Exactly.text(Pulled.pull(readings), "two-maxima"))
                .startsWith("The force came to a first maximum of 1000 N and later to 1250 N;"
                        + " strength is taken at the largest.");
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
