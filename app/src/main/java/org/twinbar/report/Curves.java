package org.twinbar.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Curves as they were recorded, laid over each other by group.
 *
 * @param across what runs across, with its unit
 * @param up what runs up, with its unit
 * @param until how far they are drawn, a value of {@code across}; to their end where it isn't said
 */
public record Curves(String across, String up, List<Group> groups, OptionalDouble until) {

    public Curves {
        groups = List.copyOf(groups);
    }

    /** Returns curves that are drawn to their end. */
    public static Curves of(String across, String up, List<Group> groups) {
        return new Curves(across, up, groups, OptionalDouble.empty());
    }

    /** Returns the same drawn up to a value of what runs across; the axes stay as they are. */
    public Curves drawnUntil(double value) {
        return new Curves(across, up, groups, OptionalDouble.of(value));
    }

    /** The curves of one group. */
    public record Group(String name, Sign sign, List<Curve> curves) {
        public Group {
            curves = List.copyOf(curves);
        }
    }

    /**
     * One specimen's curve; the arrays are read and never changed.
     *
     * @param peak row of the mark that the result was read at
     */
    public record Curve(String specimen, double[] across, double[] up, Optional<Integer> peak) {
        public Curve {
            if (across.length != up.length) {
                throw new IllegalArgumentException("the curve of %s has %s rows across and %s up"
                        .formatted(specimen, across.length, up.length));
            }
        }
    }
}
