package org.twinbar.specimen;

import java.util.List;
import java.util.Optional;
import org.twinbar.specimen.Solid.Lettered;

/**
 * The shape of a test piece.
 *
 * @param name as it is typed, such as {@code iso527-1a}
 * @param title as it is read
 * @param source standard that gives the dimensions, and what was chosen here
 * @param measures the dimensions, in the standard's order
 * @param section across which it is tested, where it has one
 * @param solid the body
 * @param panel where its code goes
 * @param places where it is measured, seen from above
 */
public record Shape(
        String name,
        String title,
        String source,
        List<Measure> measures,
        Optional<Section> section,
        Solid.Plain solid,
        Panel panel,
        List<Point> places) {

    public Shape {
        measures = List.copyOf(measures);
        places = List.copyOf(places);
    }

    /**
     * Returns the body with a code on it, {@value Lettered#USUAL_DEPTH} mm deep unless it is thin.
     *
     * @param relief how the code is told from its face; a vessel's must be raised
     * @throws ShapeException where the code can't be drawn, or has no room
     */
    public Lettered lettered(String code, Solid.Relief relief) {
        double most = relief == Solid.Relief.ENGRAVED ? solid.mostDepth() : Lettered.USUAL_DEPTH;
        double depth = most == 0 ? Lettered.USUAL_DEPTH : Math.min(Lettered.USUAL_DEPTH, most);
        return new Lettered(solid, Lettering.of(code, panel), relief, depth);
    }

    /** Returns how a code is told from its face where nobody says: raised in a vessel. */
    public Solid.Relief usualRelief() {
        return solid.mostDepth() == 0 ? Solid.Relief.RAISED : Solid.Relief.ENGRAVED;
    }

    /**
     * One dimension.
     *
     * @param name in words
     * @param millimetres its nominal size (mm)
     */
    public record Measure(String name, double millimetres) {
        public Measure {
            Sizes.requirePositive(millimetres, name + " (mm)");
        }
    }

    /**
     * The section that a test loads.
     *
     * @param width (mm)
     * @param thickness (mm)
     */
    public record Section(double width, double thickness) {
        /** Returns b·h (mm²). */
        public double area() {
            return width * thickness;
        }
    }
}
