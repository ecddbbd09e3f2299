package org.twinbar.specimen;

/**
 * The place on a specimen that carries its code: a rectangle off everything that a test loads.
 *
 * @param where in words, such as "in the left grip"
 * @param centre middle of the rectangle, seen from above
 * @param length along the specimen (mm)
 * @param width across it (mm)
 */
public record Panel(String where, Point centre, double length, double width) {
    public Panel {
        Sizes.requirePositive(length, "length of the code's place (mm)");
        Sizes.requirePositive(width, "width of the code's place (mm)");
    }
}
