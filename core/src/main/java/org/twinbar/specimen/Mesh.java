package org.twinbar.specimen;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A surface of triangles (mm).
 *
 * @param corners x, y, z of each corner in turn
 * @param triangles three numbers of corners for each triangle, leftwards seen from outside
 */
@SuppressWarnings("ArrayRecordComponent") // millions of them; never compared as values
public record Mesh(double[] corners, int[] triangles) {

    /** @throws ShapeException unless there are whole triangles of corners that exist */
    public Mesh {
        if (triangles.length == 0 || triangles.length % 3 != 0 || corners.length % 3 != 0) {
            throw new ShapeException("A mesh has at least one triangle of three corners.");
        }
        for (int corner : triangles) {
            if (corner < 0 || corner >= corners.length / 3) {
                throw new ShapeException(
                        "A triangle names corner %s of %s.".formatted(corner, corners.length / 3));
            }
        }
    }

    /** Returns the number of triangles. */
    public int count() {
        return triangles.length / 3;
    }

    /** Returns a coordinate of a triangle's corner: axis 0 for x, 1 for y, 2 for z (mm). */
    public double coordinate(int triangle, int corner, int axis) {
        return corners[3 * triangles[3 * triangle + corner] + axis];
    }

    /** Returns the area of all triangles (mm²): Σ½|a × b|, a and b two edges. */
    public double area() {
        double sum = 0;
        for (int triangle = 0; triangle < count(); triangle++) {
            double[] normal = normal(triangle);
            sum += Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
        }
        return sum / 2;
    }

    /**
     * Returns the enclosed volume (mm³): Σ p·(a × b)/6, p the triangle's first corner from the
     * middle of the box, where large offsets cost no figures. It is below zero where the mesh is
     * turned inside out, and says nothing where the mesh is open.
     */
    public double volume() {
        Box box = box();
        double sum = 0;
        for (int triangle = 0; triangle < count(); triangle++) {
            double[] normal = normal(triangle);
            for (int axis = 0; axis < 3; axis++) {
                double middle = (box.least(axis) + box.most(axis)) / 2;
                sum += (coordinate(triangle, 0, axis) - middle) * normal[axis];
            }
        }
        return sum / 6;
    }

    /** Returns the box that just holds it. */
    public Box box() {
        double[] least = new double[] {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY
        };
        double[] most = new double[] {
            Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (int corner : triangles) {
            for (int axis = 0; axis < 3; axis++) {
                least[axis] = Math.min(least[axis], corners[3 * corner + axis]);
                most[axis] = Math.max(most[axis], corners[3 * corner + axis]);
            }
        }
        return new Box(
                new Place(least[0], least[1], least[2]), new Place(most[0], most[1], most[2]));
    }

    /** Returns the cross product of two edges: twice the area, pointing outwards (mm²). */
    public double[] normal(int triangle) {
        double[] a = edge(triangle, 1);
        double[] b = edge(triangle, 2);
        return new double[] {
            a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
        };
    }

    /** Returns this mesh shifted level over the bed (mm). */
    public Mesh moved(double x, double y) {
        double[] to = corners.clone();
        for (int i = 0; i < to.length; i += 3) {
            to[i] += x;
            to[i + 1] += y;
        }
        return new Mesh(to, triangles);
    }

    /**
     * Returns this mesh turned leftwards by a quarter seen from above, in the corner of the bed.
     */
    public Mesh turned() {
        Box box = box();
        double[] to = corners.clone();
        for (int i = 0; i < to.length; i += 3) {
            to[i] = box.most(1) - corners[i + 1];
            to[i + 1] = corners[i] - box.least(0);
        }
        return new Mesh(to, triangles);
    }

    /**
     * Returns several meshes as one, in their order.
     *
     * @throws ShapeException where there is none
     */
    public static Mesh together(List<Mesh> meshes) {
        double[] corners =
                new double[meshes.stream().mapToInt(it -> it.corners.length).sum()];
        int[] triangles =
                new int[meshes.stream().mapToInt(it -> it.triangles.length).sum()];
        int corner = 0;
        int used = 0;
        for (Mesh mesh : meshes) {
            System.arraycopy(mesh.corners, 0, corners, 3 * corner, mesh.corners.length);
            for (int named : mesh.triangles) {
                triangles[used++] = corner + named;
            }
            corner += mesh.corners.length / 3;
        }
        return new Mesh(corners, triangles);
    }

    /**
     * Returns corners − edges + triangles: 2 for each body without a hole through it. Source:
     * Euler's formula.
     */
    public int eulerCharacteristic() {
        Set<Long> edges = new HashSet<>();
        Set<Integer> used = new HashSet<>();
        for (int i = 0; i < triangles.length; i++) {
            long from = triangles[i];
            long to = triangles[i % 3 == 2 ? i - 2 : i + 1];
            edges.add((Math.min(from, to) << 32) | Math.max(from, to));
            used.add(triangles[i]);
        }
        return used.size() - edges.size() + count();
    }

    private double[] edge(int triangle, int to) {
        double[] edge = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            edge[axis] = coordinate(triangle, to, axis) - coordinate(triangle, 0, axis);
        }
        return edge;
    }

    /** A place in space (mm). */
    public record Place(double x, double y, double z) {
        double along(int axis) {
            return axis == 0 ? x : axis == 1 ? y : z;
        }
    }

    /** Opposite corners of a box along the axes. */
    public record Box(Place least, Place most) {
        /** Returns its length along x, y or z (axis 0, 1 or 2) in mm. */
        public double size(int axis) {
            return most(axis) - least(axis);
        }

        /** Returns its lower end along x, y or z (axis 0, 1 or 2) in mm. */
        public double least(int axis) {
            return least.along(axis);
        }

        /** Returns its upper end along x, y or z (axis 0, 1 or 2) in mm. */
        public double most(int axis) {
            return most.along(axis);
        }
    }
}
