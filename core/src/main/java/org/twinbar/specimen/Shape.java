package org.twinbar.specimen;

import java.util.List;
import java.util.Optional;

/**
 * The shape of a test piece.
 *
 * @param name as it is typed, such as {@code iso527-1a}
 * @param title as it is read
 * @param source standard that gives the dimensions, and what was chosen here
 * @param measures the dimensions, in the standard's order
 * @param section across which it is tested, where it has one
 * @param solid the body
 */
public record Shape(
        String name,
        String title,
        String source,
        List<Measure> measures,
        Optional<Section> section,
        Solid solid) {

    public Shape {
        measures = List.copyOf(measures);
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
