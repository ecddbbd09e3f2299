package org.twinbar.decision;

/** Where on the print plate a specimen was made. */
public sealed interface Spot {

    /**
     * Measured from a corner of the plate.
     *
     * @param x to the right (mm)
     * @param y to the back (mm)
     */
    record Measured(double x, double y) implements Spot {
        public Measured {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException(
                        "A place on the plate must be finite, not %s, %s.".formatted(x, y));
            }
        }
    }

    /** By a name, such as {@code front left}. */
    record Named(String name) implements Spot {
        public Named {
            if (name.isBlank()) {
                throw new IllegalArgumentException("A place on the plate needs its name.");
            }
        }
    }
}
