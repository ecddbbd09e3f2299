package org.twinbar.report;

import java.util.List;
import java.util.Optional;

/**
 * Curves as they were recorded, laid over each other by group.
 *
 * @param across what runs across, with its unit
 * @param up what runs up, with its unit
 */
public record Curves(String across, String up, List<Group> groups) {

    public Curves {
        groups = List.copyOf(groups);
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
