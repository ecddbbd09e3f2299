package org.twinbar.method.oven;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Mark;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Setting;
import org.twinbar.method.Words;
import org.twinbar.method.heating.Heated;
import org.twinbar.method.section.Side;
import org.twinbar.quantity.Unit;

/** What the oven test asks for, sets, marks and yields. */
final class OvenForm {

    static final Input ARM = Input.of(
                    "arm", "Arm, from the clamp to the tip mass", "mm", Kind.RULER)
            .plausibly(20, 200);
    static final Input WIDTH = Input.of("width", "Width", "mm", Kind.CALIPER).plausibly(2, 30);
    static final Input THICKNESS = Input.of(
                    "thickness", "Thickness, in the load's direction", "mm", Kind.CALIPER)
            .plausibly(1, 10);
    static final Input TIP_MASS =
            Input.of("tip_mass", "Mass at the tip", "g", Kind.SCALE).plausibly(1, 1000);
    static final Input DENSITY =
            Input.of("density", "Density of the bar", "g/cm³", Kind.NONE).plausibly(0.5, 2);
    static final Input BAR_MASS =
            Input.of("mass", "Mass of the whole bar", "g", Kind.SCALE).plausibly(0.5, 100);
    static final Input BAR_LENGTH =
            Input.of("length", "Length of the whole bar", "mm", Kind.CALIPER).plausibly(20, 300);

    static final Input ONSET_FROM =
            temperature("onset_from", "Last reading of the thermometer at which it was straight");
    static final Input ONSET_TO =
            temperature("onset_to", "First reading of the thermometer at which it sagged");
    static final Input HELD_UNTIL =
            temperature("held_until", "Highest temperature that it was straight at to the end");

    static final Input TIME_CONSTANT = Input.of(
                    "time_constant",
                    "Time constant of a dummy of this group, from a step test",
                    "s",
                    Kind.TIMER)
            .plausibly(20, 1500);
    static final Input RAMP = Input.of("ramp", "Rate of heating", "°C/min", Kind.NONE)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(0, 10);
    static final String IN_BAR = "bar";
    static final Words THERMOMETER_IN = new Words(
                    "thermometer_in",
                    "Whether the thermometer was in the air or in a dummy bar",
                    List.of("air", IN_BAR))
            .apart();
    static final String STILL = "still";
    static final Words AIR = new Words(
            "air",
            "How the air in the oven moves, where no time constant was measured",
            List.of(STILL, "fan"));
    static final Words OVEN_LOAD =
            new Words("oven_load", "Which bars were in the oven together", List.of()).block();

    static final Setting LAG_UNCERTAINTY = new Setting(
            "lag_uncertainty",
            "Standard uncertainty of the thermal lag, as a share of it",
            Unit.of("%"),
            20,
            Limits.between(0, 100));
    static final Setting STRAIN = new Setting(
            "strain",
            "Strain at the clamp at which the second temperature is read",
            Unit.of("%"),
            0.2,
            Limits.between(0.01, 5));

    static final Mark FIT_TO = new Mark("fit_to", "End of the two lines");

    static final Property ONSET =
            Property.of("onset_temperature", "Temperature of onset", "°C", Scale.INTERVAL);
    static final Property AT_DEFLECTION = Property.of(
            "temperature_at_deflection",
            "Temperature at the deflection for the strain",
            "°C",
            Scale.INTERVAL);
    static final Property STRESS = Property.of("stress", "Stress at the clamp", "MPa", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "oven",
            3,
            "Oven test of a cantilever",
            "No standard: a maker's test that compares bars of one oven; the strain of 0.2 % is"
                    + " ISO 75's, whose numbers it must not be mixed with.",
            asks(),
            List.of(STRAIN, LAG_UNCERTAINTY),
            List.of(Heated.START, FIT_TO, Heated.REACHED),
            List.of(ONSET, AT_DEFLECTION, STRESS),
            List.of(
                    new Caution("Coats and softened plastic give off fumes, and some catch fire:"
                            + " never in an oven for food, never unattended, with air drawn off."),
                    new Caution(
                            "The tip mass falls when a bar lets go: put a tray of sand below it."),
                    new Caution("An onset in this oven is no temperature of use for anything that"
                            + " carries people.")));

    private OvenForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required(
                        "When did it sag?",
                        List.of(Heated.TEMPERATURE, Heated.DEFLECTION),
                        List.of(ONSET_FROM, ONSET_TO),
                        List.of(HELD_UNTIL)),
                Ask.optional("When was each row recorded?", List.of(Heated.TIME)),
                Ask.optional("How long is the arm?", List.of(ARM)).once(),
                Ask.optional("What section is bent?", List.of(WIDTH, THICKNESS)),
                Ask.optional("What hangs at the tip?", List.of(TIP_MASS)).once(),
                Ask.optional(
                        "How heavy is the bar itself?",
                        List.of(BAR_MASS, BAR_LENGTH),
                        List.of(DENSITY)),
                Ask.optional("Where was the thermometer?", List.of(THERMOMETER_IN))
                        .once(),
                Ask.optional(
                                "How far does the bar trail the air?",
                                List.of(TIME_CONSTANT, RAMP),
                                List.of(AIR, RAMP))
                        .once(),
                Ask.optional("Which oven load was it in?", List.of(OVEN_LOAD)),
                Ask.optional("How high are the ridges under the caliper?", List.of(Side.RIDGES)));
    }

    private static Input temperature(String name, String label) {
        return Input.of(name, label, "°C", Kind.THERMOMETER).within(Limits.ANY).plausibly(20, 250);
    }
}
