package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A level face cut into triangles that use every corner of the lines around it, so that they meet
 * the walls below corner by corner.
 *
 * <p>Holes are joined to the line by a cut to a corner in sight, then ears are cut off. Corners
 * that lie straight between their neighbours, as those of letters on one base line, are kept, which
 * is why this is our own: libraries for it drop them, and the mesh is open there. Source: G. H.
 * Meisters, Polygons have ears, American Mathematical Monthly 82 (1975); D. Eberly, Triangulation
 * by ear clipping (2002), for the cuts to holes.
 */
final class Face {

    /** Part of the squared size below which the area of a triangle is rounding. */
    private static final double ROUNDING = 1e-13;

    private final List<Point> corners;
    private final double flat;

    private Face(List<Point> corners) {
        this.corners = corners;
        double most = 0;
        for (Point corner : corners) {
            most = Math.max(most, Math.abs(corner.x() - corners.get(0).x()));
            most = Math.max(most, Math.abs(corner.y() - corners.get(0).y()));
        }
        this.flat = ROUNDING * most * most;
    }

    /** Returns three corners of each triangle in turn, run leftwards. */
    static List<Point[]> triangles(List<Point> line, List<List<Point>> holes) {
        List<Point> all = new ArrayList<>(line);
        holes.forEach(all::addAll);
        Face face = new Face(all);
        List<Integer> whole = face.ring(0, line.size(), Turning.LEFT);
        List<List<Integer>> rings = new ArrayList<>();
        int at = line.size();
        for (List<Point> hole : holes) {
            rings.add(face.ring(at, at + hole.size(), Turning.RIGHT));
            at += hole.size();
        }
        rings.sort(Comparator.comparingDouble(
                it -> face.corners.get(face.leftmost(it)).x()));
        for (int i = 0; i < rings.size(); i++) {
            face.join(whole, rings.subList(i, rings.size()));
        }
        return face.cut(whole);
    }

    private enum Turning {
        LEFT,
        RIGHT
    }

    private List<Integer> ring(int from, int end, Turning turning) {
        List<Integer> ring = new ArrayList<>();
        for (int i = from; i < end; i++) {
            ring.add(i);
        }
        boolean leftwards = Polygons.area(corners.subList(from, end)) > 0;
        if (leftwards != (turning == Turning.LEFT)) {
            java.util.Collections.reverse(ring);
        }
        return ring;
    }

    private int leftmost(List<Integer> ring) {
        return ring.stream()
                .min(Comparator.comparingDouble(it -> corners.get(it).x()))
                .orElseThrow();
    }

    /** Joins the first of the holes to the line by a cut to the nearest corner in its sight. */
    private void join(List<Integer> line, List<List<Integer>> holes) {
        List<Integer> hole = holes.get(0);
        int from = leftmost(hole);
        int joint = java.util.stream.IntStream.range(0, line.size())
                .boxed()
                .sorted(Comparator.comparingDouble(it -> distance(line.get(it), from)))
                .filter(it -> looksInto(line, it, from) && sees(line.get(it), from, line, holes))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a hole sees no corner of its line"));
        List<Integer> detour = new ArrayList<>();
        int start = hole.indexOf(from);
        for (int i = 0; i <= hole.size(); i++) {
            detour.add(hole.get((start + i) % hole.size()));
        }
        detour.add(line.get(joint));
        line.addAll(joint + 1, detour);
    }

    /** Whether a place lies within the angle that the body fills at a corner of its line. */
    private boolean looksInto(List<Integer> line, int at, int place) {
        int corner = line.get(at);
        int before = line.get((at + line.size() - 1) % line.size());
        int after = line.get((at + 1) % line.size());
        boolean leftOfBoth =
                turn(before, corner, place) > flat && turn(corner, after, place) > flat;
        boolean leftOfOne = turn(before, corner, place) > flat || turn(corner, after, place) > flat;
        return turn(before, corner, after) > flat ? leftOfBoth : leftOfOne;
    }

    private boolean sees(int one, int other, List<Integer> line, List<List<Integer>> holes) {
        return isClear(one, other, line) && holes.stream().allMatch(it -> isClear(one, other, it));
    }

    private boolean isClear(int one, int other, List<Integer> ring) {
        for (int i = 0; i < ring.size(); i++) {
            int from = ring.get(i);
            int to = ring.get((i + 1) % ring.size());
            if (!isAt(from, one) && !isAt(from, other) && isOn(from, one, other)) {
                return false;
            }
            boolean shared =
                    isAt(from, one) || isAt(from, other) || isAt(to, one) || isAt(to, other);
            if (!shared && crosses(one, other, from, to)) {
                return false;
            }
        }
        return true;
    }

    private boolean crosses(int a, int b, int c, int d) {
        return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0;
    }

    private boolean isOn(int corner, int from, int to) {
        Point a = corners.get(from);
        Point b = corners.get(to);
        Point p = corners.get(corner);
        boolean between = (p.x() - a.x()) * (p.x() - b.x()) + (p.y() - a.y()) * (p.y() - b.y()) < 0;
        return between && Math.abs(turn(from, to, corner)) <= flat;
    }

    /** Cuts off ears until a triangle is left. */
    private List<Point[]> cut(List<Integer> line) {
        List<Point[]> triangles = new ArrayList<>();
        Ring ring = new Ring(line);
        int at = 0;
        int looked = 0;
        while (ring.left > 3) {
            if (ring.isEar(at)) {
                triangles.add(ring.triangle(at));
                at = ring.next[ring.cutOff(at)];
                looked = 0;
            } else {
                at = ring.next[at];
                if (looked++ > ring.left) {
                    throw new IllegalStateException(
                            "a face of %s corners has no ear".formatted(ring.left));
                }
            }
        }
        triangles.add(ring.triangle(at));
        return triangles;
    }

    /** What is left of a line; its corners are counted as they stood at first. */
    private final class Ring {

        private final int[] named;
        private final int[] next;
        private final int[] before;
        /** Only where the line turns right or runs straight on can it reach into a triangle. */
        private final boolean[] hollow;

        private int left;

        Ring(List<Integer> line) {
            left = line.size();
            named = line.stream().mapToInt(it -> it).toArray();
            next = new int[left];
            before = new int[left];
            hollow = new boolean[left];
            for (int i = 0; i < left; i++) {
                next[i] = (i + 1) % left;
                before[(i + 1) % left] = i;
            }
            for (int i = 0; i < left; i++) {
                look(i);
            }
        }

        boolean isEar(int at) {
            if (hollow[at]) {
                return false;
            }
            int a = named[before[at]];
            int b = named[at];
            int c = named[next[at]];
            for (int other = next[next[at]]; other != before[at]; other = next[other]) {
                int corner = named[other];
                if (hollow[other]
                        && !isAt(corner, a)
                        && !isAt(corner, b)
                        && !isAt(corner, c)
                        && turn(a, b, corner) >= -flat
                        && turn(b, c, corner) >= -flat
                        && turn(c, a, corner) >= -flat) {
                    return false;
                }
            }
            return true;
        }

        Point[] triangle(int at) {
            return new Point[] {
                corners.get(named[before[at]]), corners.get(named[at]), corners.get(named[next[at]])
            };
        }

        /** Returns the corner that followed the ear. */
        int cutOff(int at) {
            int from = before[at];
            int to = next[at];
            next[from] = to;
            before[to] = from;
            left--;
            look(from);
            look(to);
            return to;
        }

        private void look(int at) {
            hollow[at] = turn(named[before[at]], named[at], named[next[at]]) <= flat;
        }
    }

    private boolean isAt(int one, int other) {
        return corners.get(one).equals(corners.get(other));
    }

    private double distance(int one, int other) {
        Point a = corners.get(one);
        Point b = corners.get(other);
        return (a.x() - b.x()) * (a.x() - b.x()) + (a.y() - b.y()) * (a.y() - b.y());
    }

    private double turn(int first, int second, int third) {
        Point a = corners.get(first);
        Point b = corners.get(second);
        Point c = corners.get(third);
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
