package org.twinbar.specimen;

/**
 * The triangles of a mesh in a tree of boxes, halved by their middles along the longest side, so
 * that triangles whose boxes meet are found without comparing all with all.
 */
final class BoxTree {

    private static final int LEAF = 4;
    private static final int NO_CHILD = -1;

    private final Mesh mesh;
    private final int[] order;
    private final float[] bounds;
    private final int[] firstOf;
    private final int[] endOf;
    private final int[] secondChild;
    private int nodes;

    /** Is shown each pair of triangles whose boxes meet, once. */
    interface Visitor {
        /** Whether to look for more. */
        boolean goesOn(int one, int other);
    }

    BoxTree(Mesh mesh) {
        this.mesh = mesh;
        this.order = new int[mesh.count()];
        int most = Math.max(1, 2 * mesh.count());
        this.bounds = new float[6 * most];
        this.firstOf = new int[most];
        this.endOf = new int[most];
        this.secondChild = new int[most];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        build(0, order.length);
    }

    /** Returns whether all pairs were shown before the steps ran out or the visitor had enough. */
    boolean pairs(Visitor visitor, long mostSteps) {
        Walk walk = new Walk(visitor, mostSteps);
        return walk.within(0);
    }

    private int build(int first, int end) {
        int node = nodes++;
        firstOf[node] = first;
        endOf[node] = end;
        secondChild[node] = NO_CHILD;
        bound(node);
        if (end - first > LEAF) {
            int middle = (first + end) >>> 1;
            part(first, end - 1, middle, longest(node));
            build(first, middle);
            secondChild[node] = build(middle, end);
        }
        return node;
    }

    private void bound(int node) {
        for (int axis = 0; axis < 3; axis++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = firstOf[node]; i < endOf[node]; i++) {
                for (int corner = 0; corner < 3; corner++) {
                    double at = mesh.coordinate(order[i], corner, axis);
                    least = Math.min(least, at);
                    most = Math.max(most, at);
                }
            }
            bounds[6 * node + axis] = Math.nextDown((float) least);
            bounds[6 * node + 3 + axis] = Math.nextUp((float) most);
        }
    }

    private int longest(int node) {
        int longest = 0;
        for (int axis = 1; axis < 3; axis++) {
            longest = size(node, axis) > size(node, longest) ? axis : longest;
        }
        return longest;
    }

    private float size(int node, int axis) {
        return bounds[6 * node + 3 + axis] - bounds[6 * node + axis];
    }

    /** C. A. R. Hoare's selection: Communications of the ACM 4 (1961), algorithm 65. */
    private void part(int first, int last, int middle, int axis) {
        int low = first;
        int high = last;
        while (low < high) {
            double pivot = middleOf(order[(low + high) >>> 1], axis);
            int i = low;
            int j = high;
            while (i <= j) {
                while (middleOf(order[i], axis) < pivot) {
                    i++;
                }
                while (middleOf(order[j], axis) > pivot) {
                    j--;
                }
                if (i <= j) {
                    int kept = order[i];
                    order[i++] = order[j];
                    order[j--] = kept;
                }
            }
            if (middle <= j) {
                high = j;
            } else if (middle >= i) {
                low = i;
            } else {
                return;
            }
        }
    }

    private double middleOf(int triangle, int axis) {
        return mesh.coordinate(triangle, 0, axis)
                + mesh.coordinate(triangle, 1, axis)
                + mesh.coordinate(triangle, 2, axis);
    }

    /** One search through the tree. */
    private final class Walk {

        private final Visitor visitor;
        private long stepsLeft;

        Walk(Visitor visitor, long stepsLeft) {
            this.visitor = visitor;
            this.stepsLeft = stepsLeft;
        }

        boolean within(int node) {
            if (secondChild[node] == NO_CHILD) {
                for (int i = firstOf[node]; i < endOf[node]; i++) {
                    for (int j = i + 1; j < endOf[node]; j++) {
                        if (!visitor.goesOn(order[i], order[j]) || stepsLeft-- <= 0) {
                            return false;
                        }
                    }
                }
                return true;
            }
            int left = node + 1;
            int right = secondChild[node];
            return within(left) && within(right) && between(left, right);
        }

        private boolean between(int one, int other) {
            if (stepsLeft-- <= 0) {
                return false;
            }
            if (!meet(one, other)) {
                return true;
            }
            if (secondChild[one] == NO_CHILD && secondChild[other] == NO_CHILD) {
                for (int i = firstOf[one]; i < endOf[one]; i++) {
                    for (int j = firstOf[other]; j < endOf[other]; j++) {
                        if (!visitor.goesOn(order[i], order[j]) || stepsLeft-- <= 0) {
                            return false;
                        }
                    }
                }
                return true;
            }
            boolean partFirst = secondChild[other] == NO_CHILD
                    || (secondChild[one] != NO_CHILD
                            && endOf[one] - firstOf[one] >= endOf[other] - firstOf[other]);
            int parted = partFirst ? one : other;
            int kept = partFirst ? other : one;
            return between(parted + 1, kept) && between(secondChild[parted], kept);
        }

        private boolean meet(int one, int other) {
            for (int axis = 0; axis < 3; axis++) {
                if (bounds[6 * one + axis] > bounds[6 * other + 3 + axis]
                        || bounds[6 * other + axis] > bounds[6 * one + 3 + axis]) {
                    return false;
                }
            }
            return true;
        }
    }
}
