package org.twinbar.method.heatdeflection;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Words;
import org.twinbar.method.heating.Heated;
import org.twinbar.method.section.Side;

/** What the heat deflection test asks for, sets, marks and yields. */
final class HeatForm {

    static final Input SPAN =
            Input.of("span", "Distance between the supports", "mm", Kind.RULER).plausibly(20, 200);
    static final Input WIDTH = Input.of("width", "Width", "mm", Kind.CALIPER).plausibly(2, 30);
    static final Input THICKNESS = Input.of(
                    "thickness", "Thickness, in the load's direction", "mm", Kind.CALIPER)
            .plausibly(1, 20);
    static final Input STRESS = Input.of(
                    "stress", "Stress at the surface that was aimed at", "MPa", Kind.NONE)
            .plausibly(0.1, 10);
    static final Input ROD_MASS = Input.of(
                    "rod_mass", "Mass of rod, nose and plate", "g", Kind.SCALE)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(1, 500);
    static final Input SPRING_FORCE = Input.of(
                    "spring_force",
                    "Force of the gauge's spring, above zero where it presses down",
                    "N",
                    Kind.NONE)
            .within(Limits.ANY)
            .plausibly(-2, 2);

    static final String IN_AIR = "air";
    static final Words MEDIUM = new Words(
                    "medium", "What the bar was heated in", List.of("liquid", IN_AIR, "fluid bed"))
            .apart();

    static final String QUARTER_MM = "quarter_mm";
    static final Choice READ_AT = new Choice(
            "read_at",
            "Where to read: strain grown by 0.2 % (ISO 75), or 0.25 mm (ASTM D648)",
            List.of("strain", QUARTER_MM),
            "strain");

    static final Property TEMPERATURE = Property.of(
            "deflection_temperature", "Temperature of deflection under load", "°C", Scale.INTERVAL);
    static final Property ADDED_MASS =
            Property.of("added_mass", "Mass to lay on the rod", "g", Scale.RATIO);
    static final Property FORCE =
            Property.of("force", "Force for the stress", "N", Scale.RATIO).per(Basis.PART, "force");
    static final Property DEFLECTION =
            Property.of("standard_deflection", "Deflection to read at", "mm", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "heat-deflection",
            1,
            "Deflection temperature under load",
            "In the manner of ISO 75-1 and ISO 75-2:2013, flat; reading at 0.25 mm is ASTM D648's,"
                    + " and results of the two must not be mixed.",
            asks(),
            List.of(READ_AT),
            List.of(Heated.START, Heated.REACHED),
            List.of(TEMPERATURE, ADDED_MASS, FORCE, DEFLECTION),
            List.of(
                    new Caution("Hot oil burns and catches fire: keep it well below its flash"
                            + " point, heat under a thermostat of its own, keep a lid at hand, never"
                            + " water."),
                    new Caution("Softened plastic and a fresh coat give off fumes: heat where the"
                            + " air is drawn off."),
                    new Caution("This temperature compares bars at one stress; it is not the"
                            + " highest temperature of use.")));

    private HeatForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required("How far apart are the supports?", List.of(SPAN)).once(),
                Ask.required("What section is bent?", List.of(WIDTH, THICKNESS)),
                Ask.required("What stress was aimed at?", List.of(STRESS)).once(),
                Ask.optional(
                        "How did it sag as it grew hot?",
                        List.of(Heated.TEMPERATURE, Heated.DEFLECTION)),
                Ask.optional("When was each row recorded?", List.of(Heated.TIME)),
                Ask.optional(
                                "What presses on the bar already?",
                                List.of(ROD_MASS, SPRING_FORCE),
                                List.of(ROD_MASS))
                        .once(),
                Ask.optional("What was it heated in?", List.of(MEDIUM)).once(),
                Ask.optional("How high are the ridges under the caliper?", List.of(Side.RIDGES)));
    }
}
