package org.twinbar.method.timeconstant;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Mark;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Setting;
import org.twinbar.quantity.Unit;

/** What the step test of a dummy asks for, sets, marks and yields. */
final class TimeConstantForm {

    static final Channel TIME = Channel.of("time", "Time", "s", Kind.TIMER);
    static final Channel TEMPERATURE =
            Channel.of("temperature", "Temperature in the dummy", "°C", Kind.THERMOMETER);
    static final Input OVEN = Input.of(
                    "oven_temperature",
                    "Temperature that the oven was held at",
                    "°C",
                    Kind.THERMOMETER)
            .within(Limits.ANY)
            .plausibly(30, 250);

    /** By then a thick dummy has warmed through unevenly and its middle follows one exponential. */
    static final Setting LEFT_OUT = new Setting(
            "left_out",
            "Share of the rise that is left out at its start",
            Unit.of("%"),
            10,
            Limits.between(0, 60));

    static final Mark FROM = new Mark("fit_from", "Start of the exponential");
    static final Mark TO = new Mark("fit_to", "End of the exponential");

    static final Property SECONDS = Property.of("time_constant", "Time constant", "s", Scale.RATIO);
    static final Property HELD =
            Property.of("held_temperature", "Temperature that it goes to", "°C", Scale.INTERVAL);

    static final Description DESCRIPTION = new Description(
            "time-constant",
            1,
            "Time constant of a dummy",
            "Common practice, no standard: a dummy with a thermometer in it is put into an oven"
                    + " that is held at one temperature, and one exponential is laid through how it"
                    + " warms.",
            List.of(
                    Ask.required("How did it warm?", List.of(TIME, TEMPERATURE)),
                    Ask.optional("What was the oven held at?", List.of(OVEN))),
            List.of(LEFT_OUT),
            List.of(FROM, TO),
            List.of(SECONDS, HELD),
            List.of(
                    new Caution("The oven is hot when the dummy goes in: wear gloves, and lay the"
                            + " thermometer's lead where the door does not cut it."),
                    new Caution("Stay well below the temperature at which the dummy softens: it"
                            + " drops off its thermometer, and coats give off fumes.")));

    private TimeConstantForm() {}
}
