package org.twinbar.method.gloss;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;

/**
 * One angle of the meter: what is read at it, and what that yields.
 *
 * @param degrees between the light and the surface's upright
 * @param along readings along the lines, or of a surface that has none
 * @param across readings across the lines
 */
record Geometry(
        int degrees, Input along, Input across, Property alongYielded, Property acrossYielded) {

    static final Geometry AT_20 = of(20);
    static final Geometry AT_60 = of(60);
    static final Geometry AT_85 = of(85);

    /** In the order in which they matter: 60° is read first and on every surface. */
    static final List<Geometry> ALL = List.of(AT_60, AT_20, AT_85);

    /** Mirrors read up to 2000 at 20°. */
    private static final double MOST = 2000;

    private static final double PLAUSIBLE = 110;

    private static Geometry of(int degrees) {
        String along = "gloss_" + degrees + "deg";
        String across = "across_" + degrees + "deg";
        String label = "Gloss at " + degrees + "°";
        return new Geometry(
                degrees,
                reading(along, label + ", along the lines where there are any"),
                reading(across, label + ", across the lines"),
                Property.of(along, label, "GU", Scale.RATIO),
                Property.of(across, label + " across the lines", "GU", Scale.RATIO));
    }

    private static Input reading(String name, String label) {
        return Input.of(name, label, "GU", Kind.GLOSS_METER)
                .within(Limits.between(0, MOST))
                .plausibly(0, PLAUSIBLE);
    }

    /** Returns the ways in which this angle may be read: in both directions, or in one. */
    List<List<Named>> ways() {
        return List.of(List.of(along, across), List.of(along));
    }
}
