package org.twinbar.method.tensile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.section.Side;
import org.twinbar.quantity.Quantity;
import org.twinbar.uncertainty.Budget;

class TensileLawsTest {

    private static final SimulatedPull PULL =
            SimulatedPull.brittle().withCompliance(2e-4).withNoise(1, 11);

    private static Result pull(double forceFactor, double lengthFactor, double sectionFactor) {
        return Pulled.pull(Pulled.bar(10 * sectionFactor, 4)
                .number(PullForm.MASS, 8)
                .number(PullForm.GRIP_DISTANCE, SimulatedPull.LENGTH * lengthFactor)
                .number(PullForm.COMPLIANCE, 2e-4 * lengthFactor / forceFactor)
                .channel(PullForm.FORCE, times(PULL.force(), forceFactor))
                .channel(PullForm.DISPLACEMENT, times(PULL.travel(), lengthFactor)));
    }

    private static double[] times(double[] values, double factor) {
        return Arrays.stream(values).map(value -> value * factor).toArray();
    }

    private static void scales(Result from, Result to, Property property, double factor) {
        assertThat(Exactly.value(to, property))
                .as(property.name())
                .isCloseTo(factor * Exactly.value(from, property), Percentage.withPercentage(1e-7));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2, 9.80665})
    void moreForceIsMoreStressAndTheSameStrain(double factor) {
        Result one = pull(1, 1, 1);
        Result more = pull(factor, 1, 1);
        for (Property grows : List.of(
                PullForm.STRENGTH,
                PullForm.PEAK_FORCE_OUT,
                PullForm.FORCE_PER_MASS,
                PullForm.MODULUS,
                PullForm.ENERGY)) {
            scales(one, more, grows, factor);
        }
        scales(one, more, PullForm.STRAIN_AT_STRENGTH, 1);
        scales(one, more, PullForm.STRAIN_AT_BREAK, 1);
    }

    @Test
    void aLongerBarStretchesMoreAtTheSameStrain() {
        Result one = pull(1, 1, 1);
        Result longer = pull(1, 2, 1);
        scales(one, longer, PullForm.STRAIN_AT_BREAK, 1);
        scales(one, longer, PullForm.MODULUS, 1);
        scales(one, longer, PullForm.ENERGY, 2);
        scales(one, longer, PullForm.STRENGTH, 1);
    }

    @Test
    void aLargerSectionIsLessStressForTheSameForce() {
        Result one = pull(1, 1, 1);
        Result larger = pull(1, 1, 2);
        scales(one, larger, PullForm.STRENGTH, 0.5);
        scales(one, larger, PullForm.MODULUS, 0.5);
        scales(one, larger, PullForm.PEAK_FORCE_OUT, 1);
    }

    @Test
    void whereTheCrossheadStoodAtTheStartDoesNotMatter() {
        double[] shifted = Arrays.stream(PULL.travel()).map(way -> way + 37.5).toArray();
        Result one = pull(1, 1, 1);
        Result other = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.GRIP_DISTANCE, SimulatedPull.LENGTH)
                .number(PullForm.COMPLIANCE, 2e-4)
                .channel(PullForm.FORCE, PULL.force())
                .channel(PullForm.DISPLACEMENT, shifted));
        scales(one, other, PullForm.STRAIN_AT_BREAK, 1);
        scales(one, other, PullForm.MODULUS, 1);
        scales(one, other, PullForm.ENERGY, 1);
    }

    @Test
    void strainIsTheSameHoweverItWasRecorded() {
        double[] extension = times(PULL.travel(), 0.5);
        Readings.Builder byExtension = Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .channel(PullForm.FORCE, PULL.force())
                .channel(PullForm.EXTENSION, extension);
        Readings.Builder byStrain = Pulled.bar(10, 4)
                .number(PullForm.GAUGE_LENGTH, 50)
                .channel(PullForm.FORCE, PULL.force())
                .channel(PullForm.STRAIN, times(extension, 100 / 50.0));
        Result one = Pulled.pull(byExtension);
        Result other = Pulled.pull(byStrain);
        for (Property property : List.of(
                PullForm.STRENGTH, PullForm.MODULUS, PullForm.STRAIN_AT_BREAK, PullForm.ENERGY)) {
            scales(one, other, property, 1);
        }
    }

    @Test
    void givingTheComplianceTakesTheMachineOut() {
        SimulatedPull exact = SimulatedPull.brittle().withToe(0);
        SimulatedPull soft = exact.withCompliance(3e-4);
        double stiffModulus = Exactly.value(Pulled.pull(exact.readings()), PullForm.MODULUS);
        Result corrected = Pulled.pull(soft.readings().number(PullForm.COMPLIANCE, 3e-4));
        assertThat(Exactly.value(corrected, PullForm.MODULUS))
                .isCloseTo(stiffModulus, Percentage.withPercentage(1e-6));
        assertThat(Exactly.value(Pulled.pull(soft.readings()), PullForm.MODULUS))
                .isLessThan(0.85 * stiffModulus);
    }

    /**
     * The sums of a curve stand for its rows: a world calculated from them is that of moved rows.
     */
    @Test
    void worldsFromSumsAreWorldsFromRows() {
        Bench bench = Exactly.bench()
                .withGain("load cell", 0.02)
                .withZero("load cell", Quantity.parse("3 N"))
                .withGain("crosshead", 0.03);
        Result result = Pulled.pull(PULL.readings(bench).number(PullForm.COMPLIANCE, 2e-4));
        for (Property property : List.of(
                PullForm.STRENGTH, PullForm.MODULUS, PullForm.STRAIN_AT_BREAK, PullForm.ENERGY)) {
            assertThat(shift(result, property, "load cell gain"))
                    .as(property.name())
                    .isCloseTo(
                            half(property, 1.02, 0, 1) - half(property, 0.98, 0, 1), within(1e-6));
            assertThat(shift(result, property, "load cell zero"))
                    .as(property.name())
                    .isCloseTo(half(property, 1, 3, 1) - half(property, 1, -3, 1), within(1e-6));
            assertThat(shift(result, property, "crosshead gain"))
                    .as(property.name())
                    .isCloseTo(
                            half(property, 1, 0, 1.03) - half(property, 1, 0, 0.97), within(1e-6));
        }
    }

    /** Half the value of a property where the rows themselves were off; the marks stay put. */
    private static double half(Property property, double gain, double zero, double travelGain) {
        Result atRest = Pulled.pull(PULL.readings().number(PullForm.COMPLIANCE, 2e-4));
        Readings.Builder moved = Pulled.bar(10, 4)
                .number(PullForm.GRIP_DISTANCE, SimulatedPull.LENGTH)
                .number(PullForm.COMPLIANCE, 2e-4)
                .channel(
                        PullForm.FORCE,
                        Arrays.stream(PULL.force())
                                .map(force -> force * gain + zero)
                                .toArray())
                .channel(PullForm.DISPLACEMENT, times(PULL.travel(), travelGain));
        atRest.marks().forEach((mark, row) -> row.ifPresent(r -> moved.mark(mark, r)));
        return Exactly.value(Pulled.pull(moved), property) / 2;
    }

    private static double shift(Result result, Property property, String identity) {
        Budget budget = result.budgets().get(property);
        return budget.shifts().entrySet().stream()
                .filter(entry -> entry.getKey().identity().equals(identity))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    /** The rule of rule 4: alike in two bars, a gain cancels in their ratio and a zero does not. */
    @Test
    void aZeroOfTheLoadCellDoesNotCancelBetweenBarsThatBreakDifferently() {
        Bench bench = Exactly.bench()
                .withGain("load cell", 0.01)
                .withZero("load cell", Quantity.parse("5 N"));
        Result strong = Pulled.pull(Pulled.bar(10, 4, bench).number(PullForm.PEAK_FORCE, 1600));
        Result weak = Pulled.pull(Pulled.bar(10, 4, bench).number(PullForm.PEAK_FORCE, 800));
        assertThat(relative(strong, "load cell gain") - relative(weak, "load cell gain"))
                .isCloseTo(0, within(1e-12));
        assertThat(relative(strong, "load cell zero") - relative(weak, "load cell zero"))
                .isCloseTo(5 / 1600.0 - 5 / 800.0, within(1e-12));
    }

    private static double relative(Result result, String identity) {
        return shift(result, PullForm.STRENGTH, identity)
                / Exactly.value(result, PullForm.STRENGTH);
    }

    /** Rule 4's other half: what one group has alone neither cancels nor averages out. */
    @Test
    void ridgesUnderTheCaliperMoveTheRidgedGroupAlone() {
        Result ridged = Pulled.pull(
                Pulled.bar(10, 4).number(Side.RIDGES, 0.1).number(PullForm.PEAK_FORCE, 1200));
        Result smooth = Pulled.pull(
                Pulled.bar(10, 4).number(Side.RIDGES, 0).number(PullForm.PEAK_FORCE, 1200));
        assertThat(Exactly.value(ridged, PullForm.STRENGTH))
                .isCloseTo(1200 / (9.95 * 3.95), within(1e-9));
        assertThat(shift(smooth, PullForm.STRENGTH, "caliper on ridges")).isZero();
        double off = 0.1 / Math.sqrt(12);
        assertThat(relative(ridged, "caliper on ridges"))
                .isCloseTo(off / 9.95 + off / 3.95, within(1e-5));
        assertThat(Exactly.found(ridged, "caliper-on-ridges")).isTrue();
        assertThat(Exactly.found(smooth, "caliper-on-ridges")).isFalse();
    }
}
