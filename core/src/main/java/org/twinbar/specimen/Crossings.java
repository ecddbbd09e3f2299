package org.twinbar.specimen;

import java.util.Optional;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;

/**
 * Whether a mesh cuts through itself.
 *
 * <p>An edge of one triangle that runs through the inside of another, both its ends off that
 * triangle's plane by more than {@value #TOUCHING} of the mesh's size, is a crossing. What only
 * touches, or lies in one plane, is none.
 *
 * @param pairs of triangles that cross, counted up to {@value #MOST_PAIRS}
 * @param extent whether all pairs were looked at
 */
public record Crossings(int pairs, Extent extent) {

    /** Places of an STL file are rounded to 6·10⁻⁸ of their size; ten times that is no touch. */
    static final double TOUCHING = 1e-6;

    static final int MOST_PAIRS = 1000;

    /** Some seconds of work; meshes of printed parts take a hundredth of it. */
    private static final long MOST_STEPS = 400_000_000L;

    private static final Kind CROSSES = Kind.warning(
            "mesh-crosses-itself",
            "The mesh cuts through itself (%s pairs of triangles cross): area and volume inside are counted too, so mend it or take them with care.");
    private static final Kind NOT_ALL = Kind.note(
            "mesh-crossings-not-all",
            "The mesh is too dense to be looked through for places where it cuts through itself.");

    /** How much of the mesh was looked at. */
    public enum Extent {
        WHOLE,
        /** Enough crossings were found, or the work grew beyond its limit. */
        PART
    }

    /** Returns what holds of a mesh. */
    public static Crossings of(Mesh mesh) {
        BoxTree tree = new BoxTree(mesh);
        Counter counter = new Counter(mesh);
        boolean whole = tree.pairs(counter, MOST_STEPS);
        return new Crossings(counter.pairs, whole ? Extent.WHOLE : Extent.PART);
    }

    /** Returns what a person should know of it; empty where nothing crosses. */
    public Optional<Finding> finding() {
        if (pairs > 0) {
            return Optional.of(CROSSES.with(
                    extent == Extent.WHOLE ? Integer.toString(pairs) : "at least " + pairs));
        }
        return extent == Extent.WHOLE ? Optional.empty() : Optional.of(NOT_ALL.with());
    }

    /** Looks at pairs of triangles whose boxes meet. */
    private static final class Counter implements BoxTree.Visitor {

        private final Mesh mesh;
        private final double touching;
        private int pairs;

        Counter(Mesh mesh) {
            this.mesh = mesh;
            Mesh.Box box = mesh.box();
            double size = Math.max(box.size(0), Math.max(box.size(1), box.size(2)));
            this.touching = TOUCHING * size;
        }

        @Override
        public boolean goesOn(int one, int other) {
            if (meet(one, other)
                    && !haveAnEdge(one, other)
                    && (pierces(one, other) || pierces(other, one))) {
                pairs++;
            }
            return pairs < MOST_PAIRS;
        }

        /** Whether the boxes of two triangles meet; most of those in one leaf do not. */
        private boolean meet(int one, int other) {
            for (int axis = 0; axis < 3; axis++) {
                double a = mesh.coordinate(one, 0, axis);
                double b = mesh.coordinate(one, 1, axis);
                double c = mesh.coordinate(one, 2, axis);
                double d = mesh.coordinate(other, 0, axis);
                double e = mesh.coordinate(other, 1, axis);
                double f = mesh.coordinate(other, 2, axis);
                if (Math.max(a, Math.max(b, c)) < Math.min(d, Math.min(e, f))
                        || Math.max(d, Math.max(e, f)) < Math.min(a, Math.min(b, c))) {
                    return false;
                }
            }
            return true;
        }

        /** Triangles with a common edge can't cross: every other edge begins on it. */
        private boolean haveAnEdge(int one, int other) {
            int[] named = mesh.triangles();
            int common = 0;
            for (int i = 3 * one; i < 3 * one + 3; i++) {
                for (int j = 3 * other; j < 3 * other + 3; j++) {
                    common += named[i] == named[j] ? 1 : 0;
                }
            }
            return common >= 2;
        }

        /** Whether an edge of one triangle runs through the other. */
        private boolean pierces(int one, int other) {
            double[] normal = mesh.normal(other);
            double length = norm(normal);
            if (length == 0) {
                return false;
            }
            double[] off = new double[3];
            for (int corner = 0; corner < 3; corner++) {
                for (int axis = 0; axis < 3; axis++) {
                    off[corner] += normal[axis]
                            / length
                            * (mesh.coordinate(one, corner, axis)
                                    - mesh.coordinate(other, 0, axis));
                }
            }
            for (int from = 0; from < 3; from++) {
                int to = (from + 1) % 3;
                boolean through = Math.min(off[from], off[to]) < -touching
                        && Math.max(off[from], off[to]) > touching;
                if (through && isInside(one, from, to, off, other, normal)) {
                    return true;
                }
            }
            return false;
        }

        /** Whether the place where an edge meets the plane of the other lies within it. */
        private boolean isInside(
                int one, int from, int to, double[] off, int other, double[] normal) {
            double share = off[from] / (off[from] - off[to]);
            double[] place = new double[3];
            for (int axis = 0; axis < 3; axis++) {
                double start = mesh.coordinate(one, from, axis);
                place[axis] = start + share * (mesh.coordinate(one, to, axis) - start);
            }
            double least = -1e-9 * norm(normal) * norm(normal);
            for (int corner = 0; corner < 3; corner++) {
                if (side(place, other, corner, normal) < least) {
                    return false;
                }
            }
            return true;
        }

        /** Above zero where a place in the plane lies inwards of an edge. */
        private double side(double[] place, int triangle, int corner, double[] normal) {
            double[] edge = new double[3];
            double[] to = new double[3];
            for (int axis = 0; axis < 3; axis++) {
                double start = mesh.coordinate(triangle, corner, axis);
                edge[axis] = mesh.coordinate(triangle, (corner + 1) % 3, axis) - start;
                to[axis] = place[axis] - start;
            }
            return normal[0] * (edge[1] * to[2] - edge[2] * to[1])
                    + normal[1] * (edge[2] * to[0] - edge[0] * to[2])
                    + normal[2] * (edge[0] * to[1] - edge[1] * to[0]);
        }

        private static double norm(double[] vector) {
            return Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2]);
        }
    }
}
