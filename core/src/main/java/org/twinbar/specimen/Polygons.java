package org.twinbar.specimen;

import java.util.List;

/** Area and length of closed lines of straight edges. */
final class Polygons {

    private Polygons() {}

    /** Returns ½Σ(x₁y₂ − x₂y₁), above zero where the line runs leftwards (mm²). */
    static double area(List<Point> line) {
        double twice = 0;
        for (int i = 0; i < line.size(); i++) {
            Point from = line.get(i);
            Point to = line.get((i + 1) % line.size());
            twice += from.x() * to.y() - to.x() * from.y();
        }
        return twice / 2;
    }

    static double length(List<Point> line) {
        double sum = 0;
        for (int i = 0; i < line.size(); i++) {
            Point from = line.get(i);
            Point to = line.get((i + 1) % line.size());
            sum += StrictMath.hypot(to.x() - from.x(), to.y() - from.y());
        }
        return sum;
    }

    static List<Point> reversed(List<Point> line) {
        List<Point> backwards = new java.util.ArrayList<>(line);
        java.util.Collections.reverse(backwards);
        return backwards;
    }
}
