package org.twinbar.method.dimensions;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;

/** What mass and dimension change asks for and yields. */
final class DimensionsForm {

    static final Input AREA = Input.of("coated_area", "Coated area", "cm²", Kind.NONE);
    static final Input FILM_DENSITY = Input.of(
                    "film_density", "Density of the cured film", "g/cm³", Kind.NONE)
            .plausibly(0.8, 2.5);

    static final String BOTH = "both";
    static final String ONE = "one";
    static final Choice FACES = new Choice(
            "coated_faces", "Faces of the thickness that are coated", List.of(BOTH, ONE), BOTH);

    static final Property FILM =
            Property.of("film", "Film on a face, by thickness", "µm", Scale.INTERVAL);
    static final Property FILM_BY_MASS =
            Property.of("film_by_mass", "Film on a face, by mass", "µm", Scale.INTERVAL);

    static final Description DESCRIPTION = new Description(
            "dimensions",
            1,
            "Mass and dimension change",
            "Common practice, no standard: the same places are measured before and after"
                    + " treatment, and the part is weighed.",
            asks(),
            List.of(FACES),
            List.of(),
            List.of(
                    Axis.LENGTH.change(),
                    Axis.WIDTH.change(),
                    Axis.THICKNESS.change(),
                    Axis.MASS.change(),
                    FILM,
                    FILM_BY_MASS),
            List.of(
                    new Caution("Measure a coated part only when the film has cured: a wet film"
                            + " sticks to the jaws and to the skin."),
                    new Caution("Let a part cool to room temperature first: warm, it is longer,"
                            + " softer and gives way under the jaws.")));

    private DimensionsForm() {}

    private static List<Ask> asks() {
        return List.of(
                both("How long was it, and is it?", Axis.LENGTH),
                both("How wide was it, and is it?", Axis.WIDTH),
                both("How thick was it, and is it?", Axis.THICKNESS),
                both("What did it weigh, and does it?", Axis.MASS),
                Ask.optional("Which film was put on?", List.of(AREA, FILM_DENSITY)));
    }

    private static Ask both(String question, Axis axis) {
        return Ask.optional(question, List.of(axis.before(), axis.after()));
    }
}
