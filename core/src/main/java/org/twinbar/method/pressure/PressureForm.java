package org.twinbar.method.pressure;

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
import org.twinbar.method.Words;
import org.twinbar.quantity.Unit;

/** What the pressure-decay test asks for, sets, marks and yields. */
final class PressureForm {

    static final Channel PRESSURE =
            Channel.of("pressure", "Pressure in the vessel", "kPa", Kind.PRESSURE_GAUGE);
    static final Channel TIME = Channel.of("time", "Time", "s", Kind.NONE);
    static final Channel TEMPERATURE =
            Channel.of("temperature", "Temperature of the air in it", "°C", Kind.THERMOMETER);

    static final Input VOLUME = Input.of(
                    "volume", "Volume of air that is closed in", "mL", Kind.NONE)
            .plausibly(5, 50_000);
    static final Input AMBIENT =
            Input.of("ambient", "Air pressure around it", "kPa", Kind.NONE).plausibly(60, 110);
    static final String ABSOLUTE = "absolute";
    static final Words PRESSURE_IS = new Words(
            "pressure_is",
            "Whether the gauge shows the pressure above the surroundings, or the absolute one",
            List.of("gauge", ABSOLUTE));

    static final Setting SETTLE = new Setting(
            "settle",
            "Time left out after closing, while the air takes the vessel's temperature",
            Unit.of("s"),
            60,
            Limits.ZERO_OR_MORE);

    static final Mark FIT_FROM = new Mark("fit_from", "Fit from");
    static final Mark FIT_TO = new Mark("fit_to", "Fit to");

    static final Property LEAK_RATE = Property.of(
            "air_leak_rate",
            "Air that leaks, at the pressure of the surroundings",
            "mL/min",
            Scale.RATIO);
    static final Property PRESSURE_LOSS =
            Property.of("pressure_loss", "Loss of pressure at the start", "kPa/h", Scale.RATIO);
    static final Property HALF_TIME =
            Property.of("half_pressure_time", "Time to half the pressure", "h", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "pressure",
            2,
            "Pressure decay of a closed vessel",
            "In the manner of a pressure-change leak test (EN 1779), corrected for temperature;"
                    + " no standard for printed vessels is claimed.",
            asks(),
            List.of(SETTLE),
            List.of(FIT_FROM, FIT_TO),
            List.of(LEAK_RATE, PRESSURE_LOSS, HALF_TIME),
            List.of(
                    new Caution("Compressed air in a printed vessel is a burst waiting: stay below"
                            + " 20 kPa, stand a shield between, wear safety glasses."),
                    new Caution(
                            "Fill all but a little of a large vessel with water: what bursts then"
                                    + " has little air to throw pieces with."),
                    new Caution("Tight at this pressure is not fit for any other, and no pressure"
                            + " vessel is made of a print.")));

    private PressureForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required("How did the pressure fall?", List.of(TIME, PRESSURE)),
                Ask.optional("How warm was the air?", List.of(TEMPERATURE)),
                Ask.optional("How much air is closed in?", List.of(VOLUME)).once(),
                Ask.optional("What is the air pressure around it?", List.of(AMBIENT))
                        .once(),
                Ask.optional("What does the gauge show?", List.of(PRESSURE_IS)).once());
    }
}
