package org.twinbar.report;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How a group is told apart without colour: the control is hollow, what is treated is solid, and
 * each further treatment has another shape.
 */
public enum Sign {
    CONTROL,
    FIRST,
    SECOND,
    THIRD,
    FOURTH;

    private static final List<Sign> TREATED = List.of(FIRST, SECOND, THIRD, FOURTH);

    /** Returns the sign of the treatment at this place, counted from 0; the fifth begins again. */
    public static Sign ofTreatment(int place) {
        return TREATED.get(place % TREATED.size());
    }

    boolean hollow() {
        return this == CONTROL;
    }

    Theme colour() {
        return hollow() ? Theme.CONTROL : Theme.TREATED;
    }

    /** Returns the shape about a point; all look equally large. */
    Shape at(double x, double y, double radius) {
        return switch (this) {
            case CONTROL, FIRST ->
                new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
            case SECOND -> {
                double half = radius * 0.89;
                yield new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
            }
            case THIRD -> {
                double r = radius * 1.2;
                yield polygon(x, y - r, x + r * 0.95, y + r * 0.75, x - r * 0.95, y + r * 0.75);
            }
            case FOURTH -> {
                double r = radius * 1.25;
                yield polygon(x, y - r, x + r, y, x, y + r, x - r, y);
            }
        };
    }

    private static Shape polygon(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        path.closePath();
        return path;
    }
}
