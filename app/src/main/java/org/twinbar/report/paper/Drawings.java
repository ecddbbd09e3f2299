package org.twinbar.report.paper;

import org.twinbar.specimen.Plate;
import org.twinbar.specimen.Shape;

/** What stands on the sheets as a drawing, for pages. */
public final class Drawings {

    private Drawings() {}

    /** Returns a shape from above and from the side, with the places where it is measured. */
    public static String shape(Shape shape) {
        return ShapePicture.forPage(shape);
    }

    /** Returns in words what the drawing of a shape shows. */
    public static String legend(Shape shape) {
        return ShapePicture.legend(shape);
    }

    /** Returns a bed from above, with the specimens in their places. */
    public static String bed(Plate plate) {
        return BedMap.forPage(plate);
    }
}
