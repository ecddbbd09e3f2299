package org.twinbar.method.impact;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Words;
import org.twinbar.method.conditioning.Conditioning;

/** What the impact test asks for, sets and yields. */
final class ImpactForm {

    static final Input MOMENT = Input.of(
                    "moment", "Moment of the hammer about its pivot, arm level", "N·m", Kind.NONE)
            .plausibly(0.1, 50);
    static final Input MASS =
            Input.of("mass", "Mass of the moving pendulum", "kg", Kind.SCALE).plausibly(0.05, 20);
    static final Input CENTRE_OF_MASS = Input.of(
                    "centre_of_mass", "Pivot to the pendulum's centre of mass", "mm", Kind.RULER)
            .plausibly(50, 1000);
    static final Input SCALE_READING = Input.of(
                    "scale_reading", "What a scale shows under the level arm", "g", Kind.SCALE)
            .plausibly(20, 20_000);
    static final Input SCALE_RADIUS = Input.of(
                    "scale_radius", "Pivot to the place on the scale", "mm", Kind.RULER)
            .plausibly(50, 1000);

    private static final Limits ABOVE_HANGING = new Limits(0, Limits.End.EXCLUDED, 180);

    static final Input RELEASE_ANGLE = angle("release_angle", "Angle of release, from hanging");
    static final Input RISE_ANGLE = angle("rise_angle", "Angle of the rise behind the specimen");
    static final Input RELEASE_HEIGHT =
            height("release_height", "Height of release above the lowest point");
    static final Input RISE_HEIGHT =
            height("rise_height", "Height of the rise behind the specimen");
    static final Input HEIGHT_RADIUS = Input.of(
                    "height_radius", "Pivot to the point whose heights were read", "mm", Kind.RULER)
            .plausibly(50, 1500);

    static final Input FREE_RISE_ANGLE =
            angle("free_rise_angle", "Angle of the rise without a specimen");
    static final Input FREE_RISE_HEIGHT =
            height("free_rise_height", "Height of the rise without a specimen");
    static final Input FRICTION = Input.of(
                    "friction", "Energy lost to friction in one swing", "J", Kind.NONE)
            .within(Limits.ZERO_OR_MORE);
    static final Input FREE_FIRST = angle(
                    "free_first_angle", "Free swing that takes the pointer along")
            .within(ABOVE_HANGING);
    static final Input FREE_SECOND = angle(
                    "free_second_angle", "Free swing with the pointer left where it stood")
            .within(ABOVE_HANGING);
    static final Input FREE_THIRD =
            angle("free_after_ten_angle", "Rise after ten more half swings").within(ABOVE_HANGING);

    static final Input THICKNESS = length("thickness", "Thickness, along the notch");
    static final Input WIDTH = length("remaining_width", "Width left behind the notch");
    static final Input THICKNESS_BEFORE = length("thickness_before", "Thickness before treatment");
    static final Input WIDTH_BEFORE =
            length("remaining_width_before", "Width left behind the notch, before treatment");
    static final Input SPECIMEN_MASS =
            Input.of("specimen_mass", "Mass of the specimen", "g", Kind.SCALE);

    static final Input STRIKER_RADIUS = Input.of(
                    "striker_radius", "Pivot to the striker", "mm", Kind.RULER)
            .plausibly(50, 1500);
    static final Input SWINGS = Input.of(
                    "swings", "Full swings to and fro that were timed", "", Kind.NONE)
            .plausibly(10, 200);
    static final Input SWINGS_TIME =
            Input.of("swings_time", "Time that they took", "s", Kind.TIMER);
    static final Input SWINGS_AMPLITUDE = Input.of(
                    "swings_amplitude", "How far it swung to each side", "°", Kind.NONE)
            .within(Limits.between(0, 30));
    static final Input PIECE_MASS = Input.of("piece_mass", "Mass of what flew off", "g", Kind.SCALE)
            .within(Limits.ZERO_OR_MORE);

    static final String NOTCH_BEFORE = "before";
    static final Words NOTCH_MADE = new Words(
                    "notch_made",
                    "Time of the notch, before or after treatment",
                    List.of(NOTCH_BEFORE, "after", "none"))
            .apart();
    static final String NOT_BROKEN = "N";
    static final Words BREAK_TYPE =
            new Words("break_type", "Type of break", List.of("C", "H", "P", NOT_BROKEN)).apart();

    static final String CHARPY = "charpy";
    static final String IZOD = "izod";
    static final Choice HELD_AS = new Choice(
            "held_as",
            "How the specimen stands: on two supports (Charpy), or clamped at one end (Izod)",
            List.of(CHARPY, IZOD),
            CHARPY);

    static final Property STRENGTH = Property.of(
                    "impact_strength", "Impact strength", "kJ/m2", Scale.RATIO)
            .per(Basis.SECTION, "impact");
    static final Property STRENGTH_BEFORE = Property.of(
                    "impact_strength_before",
                    "Impact strength on the section before treatment",
                    "kJ/m2",
                    Scale.RATIO)
            .per(Basis.SECTION_BEFORE, "impact");
    static final Property ENERGY =
            Property.of("energy", "Energy taken", "J", Scale.RATIO).per(Basis.PART, "impact");
    static final Property ENERGY_PER_MASS = Property.of(
                    "energy_per_mass", "Energy taken per gram", "J/g", Scale.RATIO)
            .per(Basis.MASS, "impact");
    static final Property RESISTANCE =
            Property.of("impact_resistance", "Energy per length of notch", "J/m", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "impact",
            1,
            "Pendulum impact test",
            "In the manner of ISO 179-1:2010 (Charpy), ISO 180:2019 (Izod) and ASTM D256-10;"
                    + " with a hammer of one's own, its speed and losses as they are.",
            asks(),
            List.of(HELD_AS),
            List.of(),
            List.of(STRENGTH, STRENGTH_BEFORE, ENERGY, ENERGY_PER_MASS, RESISTANCE),
            List.of(
                    new Caution("A swinging hammer breaks fingers: a latch holds it, a guard stands"
                            + " round its plane, and nobody is in that plane when it"
                            + " falls."),
                    new Caution("Pieces fly off: wear safety glasses and put a screen behind the"
                            + " specimen."),
                    new Caution("Bolt the base down or give it forty times the hammer's mass, or it"
                            + " walks and takes energy.")));

    private ImpactForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required(
                                "What does the hammer swing with?",
                                List.of(SCALE_READING, SCALE_RADIUS),
                                List.of(MOMENT),
                                List.of(MASS, CENTRE_OF_MASS))
                        .once(),
                Ask.required(
                        "How far did it fall and rise?",
                        List.<Named>of(RELEASE_ANGLE, RISE_ANGLE),
                        List.<Named>of(RELEASE_HEIGHT, RISE_HEIGHT, HEIGHT_RADIUS)),
                Ask.optional(
                                "What does a swing lose without a specimen?",
                                List.of(FREE_FIRST, FREE_SECOND, FREE_THIRD),
                                List.of(FREE_FIRST, FREE_SECOND),
                                List.of(FREE_RISE_ANGLE),
                                List.of(FREE_RISE_HEIGHT),
                                List.of(FRICTION))
                        .once(),
                Ask.required("What section broke?", List.of(THICKNESS, WIDTH)),
                Ask.optional(
                        "How did it break: complete (C), hinge (H), partial (P), not at all (N)?",
                        List.of(BREAK_TYPE)),
                Ask.optional("When was the notch made?", List.of(NOTCH_MADE)),
                Ask.optional(
                        "What was the section before treatment?",
                        List.of(THICKNESS_BEFORE, WIDTH_BEFORE)),
                Ask.optional("What does the specimen weigh?", List.of(SPECIMEN_MASS)),
                Ask.optional("How far from the pivot does it strike?", List.of(STRIKER_RADIUS))
                        .once(),
                Ask.optional(
                                "How long do small swings take?",
                                List.of(SWINGS, SWINGS_TIME, SWINGS_AMPLITUDE),
                                List.of(SWINGS, SWINGS_TIME))
                        .once(),
                Ask.optional("What flew off?", List.of(PIECE_MASS)),
                Conditioning.ASK);
    }

    private static Input angle(String name, String label) {
        return Input.of(name, label, "°", Kind.ANGLE_SCALE).within(Limits.between(0, 180));
    }

    private static Input height(String name, String label) {
        return Input.of(name, label, "mm", Kind.RULER).within(Limits.between(0, 5000));
    }

    private static Input length(String name, String label) {
        return Input.of(name, label, "mm", Kind.CALIPER).plausibly(1, 50);
    }
}
