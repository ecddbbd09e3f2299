package org.twinbar.specimen;

import java.util.Optional;
import org.twinbar.specimen.Solid.Lettered;

/**
 * A specimen that is to be printed.
 *
 * @param code that it carries; empty where it carries none
 * @param relief how the code is told from its face
 * @param orientation how it stands on the bed
 */
public record ToPrint(
        Shape shape, Optional<String> code, Solid.Relief relief, PrintOrientation orientation) {

    /** Returns a specimen with its code in the usual relief. */
    public static ToPrint of(Shape shape, Optional<String> code, PrintOrientation orientation) {
        return new ToPrint(shape, code, shape.usualRelief(), orientation);
    }

    /**
     * Returns the body, with its code where it has one.
     *
     * @throws ShapeException where the code can't be drawn, or has no room
     */
    public Solid solid() {
        return code.isPresent() ? lettered().orElseThrow() : shape.solid();
    }

    /** Returns the body with its code; empty where it has none. */
    public Optional<Lettered> lettered() {
        return code.map(it -> shape.lettered(it, relief));
    }

    /**
     * Returns the mesh as it stands in the corner of the bed.
     *
     * @param chordError largest distance of a chord from its arc (mm)
     */
    public Mesh mesh(double chordError) {
        return orientation.turn(solid().mesh(chordError));
    }

    /** Returns the code as it is drawn and what the shape is. */
    public String title() {
        return lettered()
                .map(it -> it.lettering().code() + ", " + shape.title())
                .orElse(shape.title());
    }
}
