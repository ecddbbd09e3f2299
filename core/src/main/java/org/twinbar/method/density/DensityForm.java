package org.twinbar.method.density;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Setting;
import org.twinbar.method.Words;
import org.twinbar.quantity.Unit;

/** What density by immersion asks for and yields. */
final class DensityForm {

    private static final String DENSITY_UNIT = "g/cm³";

    static final Input IN_AIR = Input.of("mass_in_air", "Mass in air, dry", "g", Kind.SCALE);
    static final Input IN_LIQUID = Input.of(
                    "mass_in_liquid",
                    "What the scale shows with it hanging in the liquid",
                    "g",
                    Kind.SCALE)
            .within(Limits.ANY);
    static final Input SINKER = Input.of(
            "sinker_in_liquid",
            "What the sinker alone shows in the liquid, where one held it down",
            "g",
            Kind.SCALE);
    static final Input WIPED =
            Input.of("mass_wiped", "Mass in air again, taken out and wiped", "g", Kind.SCALE);

    static final Input TEMPERATURE = Input.of(
                    "water_temperature", "Temperature of the water", "°C", Kind.THERMOMETER)
            .within(Limits.between(Water.COLDEST, Water.WARMEST))
            .plausibly(10, 35);
    static final Input LIQUID_DENSITY = Input.of(
                    "liquid_density", "Density of another liquid", DENSITY_UNIT, Kind.NONE)
            .plausibly(0.6, 1.5);
    static final Input SOLID_DENSITY = Input.of(
                    "solid_density",
                    "Density of the material without voids",
                    DENSITY_UNIT,
                    Kind.NONE)
            .plausibly(0.8, 3);

    static final String NO_BUBBLES = "none";
    static final String SOME_BUBBLES = "some";
    static final Words BUBBLES = new Words(
            "bubbles", "Bubbles that hung on it in the liquid", List.of(NO_BUBBLES, SOME_BUBBLES));

    static final Setting AIR_DENSITY = new Setting(
            "air_density",
            "Density of the air",
            Unit.of(DENSITY_UNIT),
            0.0012,
            Limits.between(0, 0.0016));

    static final Property DENSITY =
            Property.of("density", "Density of the part", DENSITY_UNIT, Scale.RATIO);

    /** By difference: with hardly a void in it, a part's porosity lies about zero. */
    static final Property POROSITY =
            Property.of("porosity", "Share of closed voids in the volume", "%", Scale.INTERVAL);

    static final Property VOLUME = Property.of("volume", "Volume of the part", "cm³", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "density",
            1,
            "Density by immersion",
            "ISO 1183-1, method A: weighed in air and in a liquid, with the buoyancy of the air;"
                    + " it departs in that prints with voids are weighed too.",
            asks(),
            List.of(AIR_DENSITY),
            List.of(),
            List.of(DENSITY, POROSITY, VOLUME),
            List.of(
                    new Caution("A bubble the size of a pinhead lifts a small part by a whole"
                            + " milligram or more: wet the part with a drop of detergent, brush"
                            + " bubbles off, and look again before you read."),
                    new Caution("Liquids other than water may burn or dissolve the print; keep"
                            + " flames away from spirits and air the room.")));

    private DensityForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required(
                        "What does it weigh in air and in the liquid?",
                        List.of(IN_AIR, IN_LIQUID, SINKER),
                        List.of(IN_AIR, IN_LIQUID)),
                Ask.required(
                                "Which density has the liquid?",
                                List.of(TEMPERATURE),
                                List.of(LIQUID_DENSITY))
                        .once(),
                Ask.optional("How dense is the material without voids?", List.of(SOLID_DENSITY))
                        .once(),
                Ask.optional("Did water enter it?", List.of(WIPED)),
                Ask.optional("Did bubbles hang on it?", List.of(BUBBLES)));
    }
}
