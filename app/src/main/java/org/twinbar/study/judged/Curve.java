package org.twinbar.study.judged;

import java.util.Map;
import java.util.Set;
import org.twinbar.method.Channel;
import org.twinbar.method.Mark;

/**
 * A specimen's record, thinned for drawing; the arrays are read and never changed.
 *
 * @param across what runs across: displacement where there is one, else time
 * @param up what runs up, such as force
 * @param x values of {@code across}, in its unit
 * @param y values of {@code up}, in its unit
 * @param marks the places that the method found, as rows of this thinned record
 * @param moved those of them that a person put there
 * @param file the file that it came in
 * @param rowsRead how many rows the file has
 */
public record Curve(
        Channel across,
        Channel up,
        double[] x,
        double[] y,
        Map<Mark, Integer> marks,
        Set<Mark> moved,
        KeptFile file,
        int rowsRead) {

    public Curve {
        if (x.length != y.length) {
            throw new IllegalArgumentException(
                    "%s has %s rows across and %s up".formatted(file.name(), x.length, y.length));
        }
        marks = Ordered.copy(marks);
        moved = Set.copyOf(moved);
    }
}
