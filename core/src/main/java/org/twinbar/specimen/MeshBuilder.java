package org.twinbar.specimen;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gathers triangles into a mesh in which equal places are one corner. */
public final class MeshBuilder {

    /** Which way a level face looks. */
    enum Looking {
        UP,
        DOWN
    }

    private final Map<Mesh.Place, Integer> numbers = new HashMap<>();
    private double[] corners = new double[96];
    private int[] triangles = new int[96];
    private int used;

    /** Adds a triangle, leftwards seen from outside. */
    public void add(Mesh.Place first, Mesh.Place second, Mesh.Place third) {
        if (used + 3 > triangles.length) {
            triangles = java.util.Arrays.copyOf(triangles, 2 * triangles.length);
        }
        triangles[used++] = number(first);
        triangles[used++] = number(second);
        triangles[used++] = number(third);
    }

    /** Returns how many triangles there are. */
    public int count() {
        return used / 3;
    }

    /** @throws ShapeException if no triangle was added */
    public Mesh build() {
        return new Mesh(
                java.util.Arrays.copyOf(corners, 3 * numbers.size()),
                java.util.Arrays.copyOf(triangles, used));
    }

    /** Adds an upright wall below a line that has the body on its left; a hole runs rightwards. */
    void wall(List<Point> line, double bottom, double top) {
        for (int i = 0; i < line.size(); i++) {
            Point from = line.get(i);
            Point to = line.get((i + 1) % line.size());
            Mesh.Place low = at(from, bottom);
            Mesh.Place high = at(to, top);
            add(low, at(to, bottom), high);
            add(low, high, at(from, top));
        }
    }

    /** Adds a level face between a line and the holes in it. */
    void face(List<Point> line, List<List<Point>> holes, double height, Looking looking) {
        for (Point[] triangle : Face.triangles(line, holes)) {
            Mesh.Place first = at(triangle[0], height);
            Mesh.Place second = at(triangle[1], height);
            Mesh.Place third = at(triangle[2], height);
            if (looking == Looking.UP) {
                add(first, second, third);
            } else {
                add(first, third, second);
            }
        }
    }

    private static Mesh.Place at(Point point, double height) {
        return new Mesh.Place(point.x(), point.y(), height);
    }

    private int number(Mesh.Place any) {
        // Zero and minus zero are one place.
        Mesh.Place place = new Mesh.Place(any.x() + 0.0, any.y() + 0.0, any.z() + 0.0);
        Integer known = numbers.get(place);
        if (known != null) {
            return known;
        }
        int number = numbers.size();
        if (3 * number + 3 > corners.length) {
            corners = java.util.Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[3 * number] = place.x();
        corners[3 * number + 1] = place.y();
        corners[3 * number + 2] = place.z();
        numbers.put(place, number);
        return number;
    }
}
