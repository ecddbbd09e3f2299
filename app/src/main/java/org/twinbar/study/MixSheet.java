package org.twinbar.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.quantity.Unit;
import org.twinbar.treatment.Component;
import org.twinbar.treatment.Recipe;

/** The ratio of a mix as a form asks for it. */
public final class MixSheet {

    /** Components that have a field; the usual ones come first. */
    public static final int MOST_COMPONENTS = 4;

    public static final String BY = "by";
    public static final String PARTS = "part_";
    public static final String DENSITY = "density_";

    /** Parts by mass of each other component for 100 of the first. */
    private static final String PER_HUNDRED = "hundred";

    private static final double HUNDRED = 100;
    private static final Unit DENSITIES = Unit.of("g/cm³");

    private MixSheet() {}

    /** @throws FieldException with the field that is missing or wrong */
    public static Recipe recipe(Filled form) {
        boolean perHundred = form.said(BY).filter(PER_HUNDRED::equals).isPresent();
        Recipe.By by = form.said(BY).filter("volume"::equalsIgnoreCase).isPresent()
                ? Recipe.By.VOLUME
                : Recipe.By.MASS;
        List<Component> components = new ArrayList<>();
        for (int i = 0; i < MOST_COMPONENTS; i++) {
            if (i > 1 && form.said(PARTS + i).isEmpty()) {
                break;
            }
            components.add(component(form, i, by, perHundred));
        }
        return form.at(PARTS + 1, () -> new Recipe(by, components));
    }

    private static Component component(Filled form, int place, Recipe.By by, boolean perHundred) {
        String name = name(place);
        double parts = perHundred && place == 0 && form.said(PARTS + place).isEmpty()
                ? HUNDRED
                : form.number(PARTS + place, Unit.ONE, "the parts of " + name);
        OptionalDouble density = by == Recipe.By.VOLUME
                ? OptionalDouble.of(form.number(
                        DENSITY + place,
                        DENSITIES,
                        "the density of %s from its data sheet: without it the mass would be a guess"
                                .formatted(name)))
                : form.number(DENSITY + place, DENSITIES);
        form.at(PARTS + place, () -> new Component(name, parts, OptionalDouble.empty()));
        return form.at(DENSITY + place, () -> new Component(name, parts, density));
    }

    /** Returns the letter of a component. */
    public static String name(int place) {
        return String.valueOf((char) ('A' + place));
    }
}
