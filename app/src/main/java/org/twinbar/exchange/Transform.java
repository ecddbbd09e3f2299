package org.twinbar.exchange;

import java.util.Optional;
import org.twinbar.specimen.Mesh;

/**
 * How an object of a 3MF file is placed: a row of three numbers for each of x, y and z, then the
 * shift; a corner is a row before it. Source: 3MF Core Specification 1.3, 3.3.
 */
@SuppressWarnings("ArrayRecordComponent") // never compared as a value
record Transform(double[] matrix) {

    private static final int NUMBERS = 12;

    static final Transform NONE = new Transform(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0});

    /** Reads twelve finite numbers parted by blanks; empty where they are none. */
    static Optional<Transform> parse(String text) {
        String[] words = text.strip().split("\\s+");
        if (words.length != NUMBERS) {
            return Optional.empty();
        }
        double[] matrix = new double[NUMBERS];
        for (int i = 0; i < NUMBERS; i++) {
            Optional<Double> number = finite(words[i]);
            if (number.isEmpty()) {
                return Optional.empty();
            }
            matrix[i] = number.get();
        }
        return Optional.of(new Transform(matrix));
    }

    static Optional<Double> finite(String text) {
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Returns this transform followed by the one of what it lies in. */
    Transform then(Transform outer) {
        double[] both = new double[NUMBERS];
        for (int row = 0; row < 4; row++) {
            double[] corner = {matrix[3 * row], matrix[3 * row + 1], matrix[3 * row + 2]};
            for (int axis = 0; axis < 3; axis++) {
                both[3 * row + axis] =
                        outer.along(corner, axis) + (row == 3 ? outer.matrix[9 + axis] : 0);
            }
        }
        return new Transform(both);
    }

    /** Returns where a corner comes to lie, in millimetres for a unit of so many. */
    Mesh.Place moved(double[] corner, double unit) {
        return new Mesh.Place(
                unit * (along(corner, 0) + matrix[9]),
                unit * (along(corner, 1) + matrix[10]),
                unit * (along(corner, 2) + matrix[11]));
    }

    private double along(double[] corner, int axis) {
        return corner[0] * matrix[axis]
                + corner[1] * matrix[3 + axis]
                + corner[2] * matrix[6 + axis];
    }
}
