package org.twinbar.method.tensile;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Mark;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Setting;
import org.twinbar.method.Words;
import org.twinbar.method.conditioning.Conditioning;
import org.twinbar.method.curve.SlopeWindow;
import org.twinbar.method.curve.Toe;
import org.twinbar.method.section.LargestForce;
import org.twinbar.method.section.Side;
import org.twinbar.quantity.Unit;

/** What the tensile test asks for, sets, marks and yields. */
final class PullForm {

    static final Input WIDTH = length("width", "Width", 1, 50);
    static final Input THICKNESS = length("thickness", "Thickness", 0.5, 20);
    static final Input DIAMETER = length("diameter", "Diameter", 1, 50);
    static final Input AREA = Input.of("area", "Section area", "mm2", Kind.NONE).plausibly(1, 2000);
    static final Input WIDTH_BEFORE = length("width_before", "Width before treatment", 1, 50);
    static final Input THICKNESS_BEFORE =
            length("thickness_before", "Thickness before treatment", 0.5, 20);
    static final Input DIAMETER_BEFORE =
            length("diameter_before", "Diameter before treatment", 1, 50);
    static final Input AREA_BEFORE = Input.of(
                    "area_before", "Section area before treatment", "mm2", Kind.NONE)
            .plausibly(1, 2000);
    static final Input MASS = LargestForce.MASS;
    static final Input PEAK_FORCE = LargestForce.READ;
    static final Input GAUGE_LENGTH = Input.of(
                    "gauge_length", "Gauge length of the extensometer", "mm", Kind.CALIPER)
            .plausibly(5, 150);
    static final Input GRIP_DISTANCE = Input.of(
                    "grip_distance", "Distance between the grips at the start", "mm", Kind.RULER)
            .plausibly(10, 300);
    static final Input COMPLIANCE = Input.of(
                    "compliance", "Compliance of machine and grips", "mm/N", Kind.NONE)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(0, 0.01);
    static final String BROKE_IN_GAUGE = "gauge";
    static final String BROKE_AT_SHOULDER = "shoulder";
    static final String BROKE_IN_GRIP = "grip";
    static final Words BROKE_AT = new Words(
            "broke_at",
            "Where it broke",
            List.of(BROKE_IN_GAUGE, BROKE_AT_SHOULDER, BROKE_IN_GRIP));

    static final Channel FORCE = Channel.of("force", "Force", "N", Kind.LOAD_CELL);
    static final Channel EXTENSION =
            Channel.of("extension", "Extension of the gauge length", "mm", Kind.EXTENSOMETER);
    static final Channel STRAIN = Channel.of("strain", "Strain", "%", Kind.STRAIN_EXTENSOMETER);
    static final Channel DISPLACEMENT =
            Channel.of("displacement", "Travel of the crosshead", "mm", Kind.CROSSHEAD);
    static final Channel NARROWING =
            Channel.of("narrowing", "How far the width shrank", "mm", Kind.EXTENSOMETER);
    static final Channel TRANSVERSE_STRAIN = Channel.of(
            "transverse_strain", "Strain across the pull", "%", Kind.STRAIN_EXTENSOMETER);
    static final Channel TIME = Channel.of("time", "Time", "s", Kind.NONE);

    static final String BY_DECREASE = "decrease";
    static final String BY_OFFSET = "offset";
    static final Choice YIELD_BY = new Choice(
            "yield_by",
            "Yield where the force first falls, or where the curve leaves the offset line",
            List.of(BY_DECREASE, BY_OFFSET),
            BY_DECREASE);
    static final Setting YIELD_OFFSET = percent("yield_offset", "Offset of the yield line", 0.2);
    static final String LARGEST = "largest";
    static final String FIRST_MAXIMUM = "first_maximum";
    static final Choice STRENGTH_AT = new Choice(
            "strength_at",
            "Strength at the largest force, or at the first maximum (ISO 527-1 since 2012)",
            List.of(LARGEST, FIRST_MAXIMUM),
            LARGEST);

    static final Mark YIELD = new Mark("yield", "Yield");
    static final Mark PEAK = new Mark("peak", "Peak");
    static final Mark BREAK = new Mark("break", "Break");

    static final LargestForce LARGEST_FORCE = LargestForce.of("strength", "Tensile strength");
    static final Property STRENGTH = LARGEST_FORCE.strength();
    static final Property STRENGTH_BEFORE = LARGEST_FORCE.strengthBefore();
    static final Property PEAK_FORCE_OUT = LARGEST_FORCE.force();
    static final Property FORCE_PER_MASS = LARGEST_FORCE.perMass();
    static final Property MODULUS = Property.of("modulus", "Tensile modulus", "MPa", Scale.RATIO)
            .per(Basis.SECTION, "modulus");
    static final Property YIELD_STRENGTH = Property.of(
                    "yield_strength", "Yield strength", "MPa", Scale.RATIO)
            .per(Basis.SECTION, "yield_strength");
    static final Property STRAIN_AT_STRENGTH =
            Property.of("strain_at_strength", "Strain at the largest force", "%", Scale.RATIO);
    static final Property STRAIN_AT_BREAK =
            Property.of("strain_at_break", "Strain at break", "%", Scale.RATIO);
    static final Property NOMINAL_STRAIN = Property.of(
            "nominal_strain_at_break",
            "Nominal strain at break, over the distance of the grips",
            "%",
            Scale.RATIO);
    static final Property POISSON_RATIO =
            Property.of("poisson_ratio", "Poisson ratio", "", Scale.RATIO);
    static final Property ENERGY = Property.of(
                    "energy_to_break", "Energy to break", "J", Scale.RATIO)
            .per(Basis.PART, "energy_to_break");

    static final Description DESCRIPTION = new Description(
            "tensile",
            2,
            "Tensile test",
            "In the manner of ISO 527-1:2019 and ASTM D638-22; without a class-1 machine, an"
                    + " extensometer and a standard atmosphere it is not a test to either. Strength"
                    + " is the largest stress (D638), unless the first maximum is chosen (ISO).",
            asks(),
            List.of(
                    STRENGTH_AT,
                    SlopeWindow.BY,
                    SlopeWindow.FROM,
                    SlopeWindow.TO,
                    Toe.CHOICE,
                    YIELD_BY,
                    YIELD_OFFSET),
            List.of(
                    Toe.START,
                    Toe.STRAIGHT_FROM,
                    Toe.STRAIGHT_TO,
                    SlopeWindow.ROW_FROM,
                    SlopeWindow.ROW_TO,
                    YIELD,
                    PEAK,
                    BREAK),
            List.of(
                    STRENGTH,
                    STRENGTH_BEFORE,
                    PEAK_FORCE_OUT,
                    FORCE_PER_MASS,
                    MODULUS,
                    YIELD_STRENGTH,
                    STRAIN_AT_STRENGTH,
                    STRAIN_AT_BREAK,
                    ENERGY,
                    NOMINAL_STRAIN,
                    POISSON_RATIO),
            List.of(
                    new Caution("Specimens snap and throw splinters: wear safety glasses and put a"
                            + " clear shield before the grips."),
                    new Caution("Keep fingers out of the grips while the machine is able to move,"
                            + " and know where its stop is."),
                    new Caution("A strength from this bench compares parts; it is no design value"
                            + " for anything that carries people.")));

    private PullForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required(
                        "What section carries the force?",
                        List.of(WIDTH, THICKNESS),
                        List.of(DIAMETER),
                        List.of(AREA)),
                Ask.required("What force did it take?", List.of(FORCE), List.of(PEAK_FORCE)),
                Ask.optional(
                        "How far did it stretch?",
                        List.of(EXTENSION),
                        List.of(STRAIN),
                        List.of(DISPLACEMENT)),
                Ask.optional(
                        "How far did it narrow?", List.of(NARROWING), List.of(TRANSVERSE_STRAIN)),
                Ask.optional("When was each row recorded?", List.of(TIME)),
                Ask.optional("How long is the extensometer's gauge?", List.of(GAUGE_LENGTH))
                        .once(),
                Ask.optional("How far apart are the grips?", List.of(GRIP_DISTANCE))
                        .once(),
                Ask.optional("How much does the machine give?", List.of(COMPLIANCE))
                        .once(),
                Ask.optional("Where did it break?", List.of(BROKE_AT)),
                Ask.optional(
                        "What was the section before treatment?",
                        List.of(WIDTH_BEFORE, THICKNESS_BEFORE),
                        List.of(DIAMETER_BEFORE),
                        List.of(AREA_BEFORE)),
                Ask.optional(
                        "How high are the ridges under the caliper?",
                        List.of(Side.RIDGES, Side.RIDGES_BEFORE),
                        List.of(Side.RIDGES)),
                Ask.optional("What does the specimen weigh?", List.of(MASS)),
                Conditioning.ASK);
    }

    private static Input length(String name, String label, double lowest, double highest) {
        return Input.of(name, label, "mm", Kind.CALIPER).plausibly(lowest, highest);
    }

    private static Setting percent(String name, String label, double preset) {
        return new Setting(name, label, Unit.of("%"), preset, Limits.between(0, 20));
    }
}
