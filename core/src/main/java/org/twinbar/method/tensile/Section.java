package org.twinbar.method.tensile;

import java.util.Locale;
import java.util.OptionalDouble;
import org.twinbar.method.Input;
import org.twinbar.method.Readings;
import org.twinbar.method.section.Side;

/**
 * The ways in which a section may be known: two sides, a diameter, or its area.
 *
 * @param missing why it can't be known where none of them was read, in words
 */
record Section(
        Input width, Input thickness, Input diameter, Input area, Input ridges, String missing) {

    static final Section PULLED =
            of(PullForm.WIDTH, PullForm.THICKNESS, PullForm.DIAMETER, PullForm.AREA, Side.RIDGES);
    static final Section BEFORE = of(
            PullForm.WIDTH_BEFORE,
            PullForm.THICKNESS_BEFORE,
            PullForm.DIAMETER_BEFORE,
            PullForm.AREA_BEFORE,
            Side.RIDGES_BEFORE);

    /** Returns the area (mm²) in the readings' world; empty where it can't be known. */
    OptionalDouble areaOf(Readings readings) {
        double found;
        if (readings.has(width) && readings.has(thickness)) {
            found = side(readings, width) * side(readings, thickness);
        } else if (readings.has(diameter)) {
            double across = side(readings, diameter);
            found = Math.PI / 4 * across * across;
        } else if (readings.has(area)) {
            found = readings.number(area);
        } else {
            return OptionalDouble.empty();
        }
        return found > 0 ? OptionalDouble.of(found) : OptionalDouble.empty();
    }

    private double side(Readings readings, Input measured) {
        return Side.of(readings, measured, ridges);
    }

    private static Section of(
            Input width, Input thickness, Input diameter, Input area, Input ridges) {
        String missing = "neither %s and %s nor %s nor %s was given"
                .formatted(plain(width), plain(thickness), plain(diameter), plain(area));
        return new Section(width, thickness, diameter, area, ridges, missing);
    }

    private static String plain(Input input) {
        return input.label().toLowerCase(Locale.ROOT);
    }
}
