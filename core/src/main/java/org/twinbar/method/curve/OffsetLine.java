package org.twinbar.method.curve;

import java.util.OptionalInt;

/**
 * The line of the modulus, moved along the strain axis: where the curve falls below it, the
 * specimen has yielded by the offset (ASTM D638-22, annex A1).
 *
 * @param slope force per way
 * @param origin the way at which the line meets zero force
 * @param fromRow where the search begins
 */
public record OffsetLine(LoadCurve curve, double slope, double origin, int fromRow) {

    /** Returns the first row at which the curve has fallen to the line; empty for none. */
    public OptionalInt firstBelow(int lastRow) {
        for (int row = fromRow + 1; row <= lastRow; row++) {
            if (above(row) <= 0) {
                return OptionalInt.of(row);
            }
        }
        return OptionalInt.empty();
    }

    /** Returns the force where the curve crosses the line, between a row and the one before it. */
    public double forceAt(int row) {
        double before = above(row - 1);
        double share = before / (before - above(row));
        return curve.force(row - 1) + share * (curve.force(row) - curve.force(row - 1));
    }

    private double above(int row) {
        return curve.force(row) - slope * (curve.way(row) - origin);
    }
}
