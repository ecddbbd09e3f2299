package org.twinbar.method.flexure;

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
import org.twinbar.method.Words;
import org.twinbar.method.conditioning.Conditioning;
import org.twinbar.method.curve.SlopeWindow;
import org.twinbar.method.curve.Toe;
import org.twinbar.method.section.LargestForce;
import org.twinbar.method.section.Side;

/** What the flexure test asks for, sets, marks and yields. */
final class BendForm {

    static final Input SPAN =
            Input.of("span", "Distance between the supports", "mm", Kind.RULER).plausibly(20, 300);
    static final Input WIDTH = length("width", "Width", 2, 50);
    static final Input THICKNESS =
            length("thickness", "Thickness, in the load's direction", 0.5, 20);
    static final Input WIDTH_BEFORE = length("width_before", "Width before treatment", 2, 50);
    static final Input THICKNESS_BEFORE =
            length("thickness_before", "Thickness before treatment", 0.5, 20);
    static final Input MASS = LargestForce.MASS;
    static final Input PEAK_FORCE = LargestForce.READ;
    static final Input COMPLIANCE = Input.of(
                    "compliance", "Compliance of machine, nose and supports", "mm/N", Kind.NONE)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(0, 0.05);

    static final String OUTSIDE = "outside";
    static final Words BROKE_AT = new Words(
            "broke_at",
            "Whether it broke within the middle third of the span",
            List.of("middle", OUTSIDE));
    static final String BY_CROSSHEAD = "crosshead";
    static final Words DEFLECTION_BY = new Words(
                    "deflection_by",
                    "What the deflection was read from",
                    List.of("gauge", BY_CROSSHEAD))
            .apart();
    static final Words TENSION_FACE =
            new Words("tension_face", "Which face was in tension", List.of()).apart();

    static final Channel FORCE = Channel.of("force", "Force", "N", Kind.LOAD_CELL);
    static final Channel DEFLECTION =
            Channel.of("deflection", "Deflection in the middle", "mm", Kind.DEFLECTION_GAUGE);
    static final Channel TIME = Channel.of("time", "Time", "s", Kind.NONE);

    static final String CORRECT = "correct";
    static final Choice LONG_DEFLECTION = new Choice(
            "long_deflection",
            "What to do beyond a tenth of the span: apply the factor of ASTM D790, or not",
            List.of(CORRECT, "as_it_is"),
            CORRECT);

    static final Mark PEAK = new Mark("peak", "Peak");
    static final Mark BREAK = new Mark("break", "Break");
    static final Mark CONVENTIONAL = new Mark("conventional", "Conventional deflection");

    static final LargestForce LARGEST_FORCE =
            LargestForce.of("flexural_strength", "Flexural strength");
    static final Property STRENGTH = LARGEST_FORCE.strength();
    static final Property STRENGTH_BEFORE = LARGEST_FORCE.strengthBefore();
    static final Property PEAK_FORCE_OUT = LARGEST_FORCE.force();
    static final Property FORCE_PER_MASS = LARGEST_FORCE.perMass();
    static final Property MODULUS = Property.of(
                    "flexural_modulus", "Flexural modulus", "MPa", Scale.RATIO)
            .per(Basis.SECTION, "flexural_modulus");
    static final Property MODULUS_BEFORE = Property.of(
                    "flexural_modulus_before",
                    "Flexural modulus on the section before treatment",
                    "MPa",
                    Scale.RATIO)
            .per(Basis.SECTION_BEFORE, "flexural_modulus");
    static final Property STIFFNESS = Property.of(
                    "stiffness", "Force per deflection", "N/mm", Scale.RATIO)
            .per(Basis.PART, "flexural_modulus");
    static final Property STRAIN =
            Property.of("strain_at_strength", "Strain at the largest force", "%", Scale.RATIO);
    static final Property CONVENTIONAL_STRESS = Property.of(
                    "stress_at_conventional_deflection",
                    "Stress at a deflection of 1.5 thicknesses",
                    "MPa",
                    Scale.RATIO)
            .per(Basis.SECTION, "stress_at_conventional_deflection");

    static final Description DESCRIPTION = new Description(
            "flexure",
            3,
            "Three-point flexure",
            "In the manner of ISO 178:2019 and ASTM D790-17; without a class-1 machine and a"
                    + " deflection gauge it is not a test to either.",
            asks(),
            List.of(SlopeWindow.BY, SlopeWindow.FROM, SlopeWindow.TO, Toe.CHOICE, LONG_DEFLECTION),
            List.of(
                    Toe.START,
                    Toe.STRAIGHT_FROM,
                    Toe.STRAIGHT_TO,
                    SlopeWindow.ROW_FROM,
                    SlopeWindow.ROW_TO,
                    CONVENTIONAL,
                    PEAK,
                    BREAK),
            List.of(
                    STRENGTH,
                    STRENGTH_BEFORE,
                    PEAK_FORCE_OUT,
                    FORCE_PER_MASS,
                    MODULUS,
                    MODULUS_BEFORE,
                    STIFFNESS,
                    STRAIN,
                    CONVENTIONAL_STRESS),
            List.of(
                    new Caution(
                            "A bent bar snaps and jumps off its supports: wear safety glasses and"
                                    + " put a clear shield before it."),
                    new Caution(
                            "Keep fingers from under the nose while the machine is able to move."),
                    new Caution("A strength from this bench compares parts; it is no design value"
                            + " for anything that carries people.")));

    private BendForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required("How far apart are the supports?", List.of(SPAN)).once(),
                Ask.required("What section is bent?", List.of(WIDTH, THICKNESS)),
                Ask.required("What force did it take?", List.of(FORCE), List.of(PEAK_FORCE)),
                Ask.optional("How far did it bend?", List.of(DEFLECTION)),
                Ask.optional("When was each row recorded?", List.of(TIME)),
                Ask.optional("How much do machine and nose give?", List.of(COMPLIANCE))
                        .once(),
                Ask.optional("What was the deflection read from?", List.of(DEFLECTION_BY))
                        .once(),
                Ask.optional("Where did it break?", List.of(BROKE_AT)),
                Ask.optional("Which face was in tension?", List.of(TENSION_FACE)),
                Ask.optional(
                        "What was the section before treatment?",
                        List.of(WIDTH_BEFORE, THICKNESS_BEFORE)),
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
}
