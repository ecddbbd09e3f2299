package org.twinbar.method.flexure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.method.section.Side;

class FlexureTest {

    private static String text(Readings.Builder readings, String code) {
        Result result = Bent.bend(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void oneRowProvesNoPeak() {
        Result result = Bent.bend(Bent.bar().channel(BendForm.FORCE, new double[] {80}));
        assertThat(Exactly.reason(result, BendForm.STRENGTH))
                .isEqualTo("a record of one or two rows proves no peak");
    }

    private static double[] times(double seconds) {
        double[] times = new double[206];
        for (int row = 0; row < 206; row++) {
            times[row] = seconds * row / 200;
        }
        return times;
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("flexure")).get().isInstanceOf(Flexure.class);
    }

    @Test
    void namesColumnsAsOthersReadThem() {
        assertThat(BendForm.DESCRIPTION.properties())
                .extracting(Property::column)
                .contains(
                        "flexural_strength_MPa",
                        "flexural_modulus_MPa",
                        "strain_at_strength_percent",
                        "stress_at_conventional_deflection_MPa");
        assertThat(BendForm.DESCRIPTION.inputs())
                .extracting(input -> input.column())
                .contains(
                        "span_mm",
                        "width_mm",
                        "thickness_mm",
                        "peak_force_N",
                        "compliance_mm_per_N");
    }

    @Test
    void aSoundBarHasNothingToSay() {
        Result result =
                Bent.bend(Bent.straight(Bent.bar(), 40, 4).channel(BendForm.TIME, times(150)));
        assertThat(result.findings()).isEmpty();
        assertThat(Exactly.value(result, BendForm.STIFFNESS)).isCloseTo(40, within(1e-9));
    }

    @Test
    void theConventionalStressIsReadAtOneAndAHalfThicknesses() {
        Result result = Bent.bend(Bent.straight(Bent.bar(), 20, 6.2));
        assertThat(Exactly.value(result, BendForm.CONVENTIONAL_STRESS))
                .isCloseTo(new Bending(64, 10, 4).stress(120), within(1e-9));
        assertThat(Exactly.reason(
                        Bent.bend(Bent.straight(Bent.bar(), 40, 4)), BendForm.CONVENTIONAL_STRESS))
                .isEqualTo("it broke, or the record ends, before a deflection of 1.5 thicknesses");
    }

    @Test
    void theMachinesGiveIsTakenOff() {
        double[] force = new double[206];
        double[] deflection = new double[206];
        for (int row = 0; row < 206; row++) {
            double bent = 4.0 * Math.min(row, 200) / 200;
            force[row] = row <= 200 ? 40 * bent : 0;
            deflection[row] = bent + 0.01 * force[row];
        }
        Readings.Builder readings = Bent.bar()
                .number(BendForm.COMPLIANCE, 0.01)
                .channel(BendForm.FORCE, force)
                .channel(BendForm.DEFLECTION, deflection);
        assertThat(Exactly.value(Bent.bend(readings), BendForm.MODULUS))
                .isCloseTo(4096, within(1e-6));
    }

    @Test
    void thicknessEntersSquaredAndCubed() {
        Result one = Bent.bend(Bent.straight(Bent.bar(), 40, 3));
        Result thicker = Bent.bend(Bent.straight(Bent.bar().number(BendForm.THICKNESS, 8), 40, 3));
        assertThat(Exactly.value(thicker, BendForm.STRENGTH))
                .isCloseTo(Exactly.value(one, BendForm.STRENGTH) / 4, within(1e-9));
        assertThat(Exactly.value(thicker, BendForm.MODULUS))
                .isCloseTo(Exactly.value(one, BendForm.MODULUS) / 8, within(1e-6));
        assertThat(Exactly.value(thicker, BendForm.STRAIN))
                .isCloseTo(2 * Exactly.value(one, BendForm.STRAIN), within(1e-9));
    }

    /**
     * H-1 of METHODS: a bar that a coat of 0.15 mm makes stiffer looks stiffer in material only on
     * its old size.
     */
    @Test
    void partAndMaterialAreToldApart() {
        Result result = Bent.bend(Bent.straight(
                Bent.bar()
                        .number(BendForm.WIDTH, 10.3)
                        .number(BendForm.THICKNESS, 4.3)
                        .number(BendForm.WIDTH_BEFORE, 10)
                        .number(BendForm.THICKNESS_BEFORE, 4)
                        .number(BendForm.MASS, 4),
                3338.7 * 4 * 10 * 64 / (64.0 * 64 * 64),
                3));
        assertThat(Exactly.value(result, BendForm.MODULUS_BEFORE)).isCloseTo(3338.7, within(0.05));
        assertThat(Exactly.value(result, BendForm.MODULUS)).isCloseTo(2609.2, within(0.05));
        assertThat(Exactly.value(result, BendForm.FORCE_PER_MASS))
                .isEqualTo(Exactly.value(result, BendForm.PEAK_FORCE_OUT) / 4);
    }

    @Test
    void ridgesUnderTheCaliperEnterSquared() {
        Result result =
                Bent.bend(Bent.bar().number(Side.RIDGES, 0.1).number(BendForm.PEAK_FORCE, 80));
        assertThat(Exactly.value(result, BendForm.STRENGTH))
                .isCloseTo(new Bending(64, 9.95, 3.95).stress(80), within(1e-9));
        double off = 0.1 / Math.sqrt(12);
        assertThat(result.budgets().get(BendForm.STRENGTH).u()
                        / Exactly.value(result, BendForm.STRENGTH))
                .isCloseTo(off / 9.95 + 2 * off / 3.95, within(1e-4));
        assertThat(Exactly.found(result, "caliper-on-ridges")).isTrue();
    }

    @Test
    void breakOutsideTheMiddleThirdIsALowerBound() {
        Readings.Builder readings =
                Bent.bar().number(BendForm.PEAK_FORCE, 80).word(BendForm.BROKE_AT, "outside");
        assertThat(Bent.bend(readings).yields().get(BendForm.STRENGTH))
                .isInstanceOfSatisfying(
                        Yield.AtLeast.class,
                        bound -> assertThat(bound.bound()).isCloseTo(48, within(1e-9)));
        assertThat(text(readings, "break-outside-third")).contains("lower bound");
    }

    @Test
    void aLoadCellAtItsEndMakesABound() {
        double[] force = new double[206];
        for (int row = 0; row < 206; row++) {
            force[row] = row <= 200 ? Math.min(row, 100) : 0;
        }
        Result result = Bent.bend(Bent.bar().channel(BendForm.FORCE, force));
        assertThat(Exactly.found(result, "saturated")).isTrue();
        assertThat(result.yields().get(BendForm.PEAK_FORCE_OUT))
                .isEqualTo(new Yield.AtLeast(100, "the load cell was at its end"));
    }

    @Test
    void findingsOfTheBar() {
        assertThat(text(
                        Bent.straight(Bent.bar().number(BendForm.SPAN, 40), 40, 2),
                        "span-outside-standard"))
                .startsWith("The span is 10.0 thicknesses; ISO 178 wants 15 to 17");
        Readings.Builder noFace = Readings.of("A1", "plain", Exactly.bench())
                .number(BendForm.SPAN, 64)
                .number(BendForm.WIDTH, 10)
                .number(BendForm.THICKNESS, 4)
                .number(BendForm.PEAK_FORCE, 80);
        assertThat(text(noFace, "tension-face-not-stated")).contains("for a coat");
    }

    @Test
    void findingsOfTheDeflection() {
        assertThat(text(Bent.straight(Bent.bar(), 10, 8.1), "long-deflection"))
                .isEqualTo(
                        "At the largest force it had bent by 13 % of the span; beyond 10 % (ASTM D790)"
                                + " the short formula is off, here by a factor of 1.06.");
        assertThat(text(Bent.straight(Bent.bar(), 10, 9), "beyond-five-percent"))
                .startsWith("The largest force came at 5.3 % strain");
        assertThat(text(
                        Bent.straight(Bent.bar(), 40, 4).word(BendForm.DEFLECTION_BY, "crosshead"),
                        "apparent-modulus"))
                .contains("ISO 178");
        assertThat(text(
                        Bent.straight(Bent.bar(), 40, 4).channel(BendForm.TIME, times(3)),
                        "rate-outside-standard"))
                .startsWith("The outer fibre was strained at 47");
        var coarse = Exactly.bench()
                .withResolution("deflection", org.twinbar.quantity.Quantity.parse("0.02 mm"));
        assertThat(text(Bent.straight(Bent.bar(coarse), 40, 4), "modulus-steps-coarse"))
                .startsWith("The stretch is read in steps of 0.020 mm, and 0.34 mm make");
    }

    @Test
    void slackIsTakenOff() {
        double[] force = new double[206];
        double[] deflection = new double[206];
        for (int row = 0; row < 206; row++) {
            deflection[row] = 4.4 * Math.min(row, 200) / 200;
            force[row] = row <= 200 ? 40 * Math.max(0, deflection[row] - 0.4) : 0;
        }
        Readings.Builder readings =
                Bent.bar().channel(BendForm.FORCE, force).channel(BendForm.DEFLECTION, deflection);
        Result result = Bent.bend(readings);
        assertThat(Exactly.value(result, BendForm.STRAIN))
                .isCloseTo(100 * new Bending(64, 10, 4).strain(4), within(1e-9));
        assertThat(text(readings, "toe-corrected")).contains("a toe of 0.40 mm");
    }

    @Test
    void saysWhyThereIsNoValue() {
        Result peakOnly = Bent.bend(Bent.bar().number(BendForm.PEAK_FORCE, 80));
        assertThat(Exactly.reason(peakOnly, BendForm.MODULUS))
                .isEqualTo("only the largest force was read, no curve");
        Result noDeflection =
                Bent.bend(Bent.bar().channel(BendForm.FORCE, new double[] {0, 40, 80, 2}));
        assertThat(Exactly.reason(noDeflection, BendForm.STRAIN))
                .isEqualTo("no deflection was recorded");
        assertThat(Exactly.value(noDeflection, BendForm.STRENGTH)).isCloseTo(48, within(1e-9));
        Result noSpan = Bent.bend(Bent.straight(
                Readings.of("A1", "plain", Exactly.bench()).number(BendForm.WIDTH, 10), 40, 4));
        assertThat(Exactly.reason(noSpan, BendForm.STRENGTH))
                .isEqualTo("span, width and thickness are not all known");
        assertThat(Exactly.value(noSpan, BendForm.PEAK_FORCE_OUT)).isCloseTo(160, within(1e-9));
        assertThat(Exactly.reason(Bent.bend(Bent.bar()), BendForm.STRENGTH))
                .isEqualTo("no force was read");
    }

    @Test
    void aToeThatIsMuchOfTheDeflectionIsSaid() {
        double[] force = new double[200];
        double[] deflection = new double[200];
        for (int row = 0; row < 200; row++) {
            deflection[row] = 0.01 * row;
            force[row] = 40 * Math.max(0, deflection[row] - 0.5);
        }
        Result result = Bent.bend(
                Bent.bar().channel(BendForm.FORCE, force).channel(BendForm.DEFLECTION, deflection));
        assertThat(Exactly.text(result, "toe-large")).startsWith("The toe is 34 % of the stretch");
    }
}
