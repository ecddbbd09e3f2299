package org.twinbar.method.creep;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Setting;
import org.twinbar.quantity.Unit;

/** What the creep test asks for, sets and yields. */
final class CreepForm {

    static final Channel TIME = Channel.of("time", "Time since loading", "h", Kind.NONE);
    static final Channel STRAIN = Channel.of("strain", "Strain", "%", Kind.STRAIN_EXTENSOMETER);
    static final Channel EXTENSION = Channel.of("extension", "Stretch", "mm", Kind.EXTENSOMETER);
    static final Channel TEMPERATURE =
            Channel.of("temperature", "Temperature beside it", "°C", Kind.THERMOMETER);
    static final Input GAUGE_LENGTH = Input.of(
                    "gauge_length", "Length over which the stretch was read", "mm", Kind.CALIPER)
            .plausibly(10, 200);
    static final Input STRESS = Input.of("stress", "Stress", "MPa", Kind.NONE).plausibly(0.1, 60);
    static final Input FORCE = Input.of("force", "Force that hung on it", "N", Kind.LOAD_CELL);
    static final Input WIDTH = Input.of("width", "Width", "mm", Kind.CALIPER).plausibly(2, 50);
    static final Input THICKNESS =
            Input.of("thickness", "Thickness", "mm", Kind.CALIPER).plausibly(0.5, 20);

    static final Setting EARLY = hours("early_time", "Time of the first creep modulus", 1);
    static final Setting LATE = hours("late_time", "Time of the second creep modulus", 24);
    static final Setting FORECAST = hours("forecast_time", "Time of the forecast strain", 100);

    static final Property MODULUS_EARLY = modulus("creep_modulus_early", "Creep modulus, first");
    static final Property MODULUS_LATE = modulus("creep_modulus_late", "Creep modulus, second");
    static final Property FORECAST_STRAIN =
            Property.of("forecast_strain", "Strain by Findley's law", "%", Scale.RATIO);
    static final Property EXPONENT =
            Property.of("findley_exponent", "Exponent of Findley's law", "", Scale.RATIO);
    static final Property GROWTH = Property.of(
            "findley_growth", "Strain that an hour adds by Findley's law", "%", Scale.RATIO);
    static final Property START =
            Property.of("findley_start", "Strain at once by Findley's law", "%", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "creep",
            1,
            "Creep under a constant load",
            "In the manner of ISO 899-1 and ISO 899-2; without an extensometer and a room held at"
                    + " 23 °C it is not a test to either.",
            List.of(
                    Ask.required(
                            "How did it stretch?",
                            List.of(TIME, STRAIN),
                            List.of(TIME, EXTENSION, GAUGE_LENGTH)),
                    Ask.required(
                            "What load hung on it?",
                            List.of(STRESS),
                            List.of(FORCE, WIDTH, THICKNESS)),
                    Ask.optional("How warm was it?", List.of(TEMPERATURE))),
            List.of(EARLY, LATE, FORECAST),
            List.of(),
            List.of(MODULUS_EARLY, MODULUS_LATE, FORECAST_STRAIN, EXPONENT, GROWTH, START),
            List.of(
                    new Caution("A weight that hangs for days falls when nobody looks: fence the"
                            + " place off and lay something soft below."),
                    new Caution("Creep to rupture comes without notice: no forecast from this bench"
                            + " is a promise for anything that carries people.")));

    private CreepForm() {}

    private static Setting hours(String name, String label, double preset) {
        return new Setting(name, label, Unit.of("h"), preset, Limits.ABOVE_ZERO);
    }

    private static Property modulus(String name, String label) {
        return Property.of(name, label, "MPa", Scale.RATIO).per(Basis.SECTION, name);
    }
}
