package org.twinbar.specimen;

import java.util.List;

/** A body whose area and volume are known exactly, and which a mesh rounds. */
public sealed interface Solid {

    /** Chords as close as this are finer than any printer's steps; common practice, no source. */
    double USUAL_CHORD_ERROR = 0.01;

    /** Returns the volume (mm³). */
    double volume();

    /** Returns the whole surface (mm²). */
    double area();

    /**
     * Returns a closed mesh, leftwards seen from outside, standing on z = 0.
     *
     * @param chordError largest distance of a chord from its arc (mm)
     * @throws ShapeException unless 0.0001 ≤ e ≤ 1 mm
     */
    Mesh mesh(double chordError);

    /**
     * An outline with a thickness. V = A·h, S = 2A + L·h.
     *
     * @param outline seen from above
     * @param height h (mm)
     */
    record Prism(Outline outline, double height) implements Solid {

        public Prism {
            Sizes.requirePositive(height, "thickness (mm)");
        }

        @Override
        public double volume() {
            return outline.area() * height;
        }

        @Override
        public double area() {
            return 2 * outline.area() + outline.length() * height;
        }

        @Override
        public Mesh mesh(double chordError) {
            List<Point> line = outline.polygon(requireChordError(chordError));
            MeshBuilder builder = new MeshBuilder();
            builder.face(line, List.of(), 0, MeshBuilder.Looking.DOWN);
            builder.wall(line, 0, height);
            builder.face(line, List.of(), height, MeshBuilder.Looking.UP);
            return builder.build();
        }
    }

    /**
     * A vessel, open at the top. V = A_o·h − A_i·(h − f), S = 2A_o + L_o·h + L_i·(h − f).
     *
     * @param outer outline of the outside
     * @param inner outline of the inside, within the outer one
     * @param height h (mm)
     * @param floor f, its thickness (mm)
     */
    record Vessel(Outline outer, Outline inner, double height, double floor) implements Solid {

        public Vessel {
            Sizes.requirePositive(floor, "floor (mm)");
            Sizes.requirePositive(height - floor, "depth (mm)");
        }

        @Override
        public double volume() {
            return outer.area() * height - inner.area() * (height - floor);
        }

        @Override
        public double area() {
            return 2 * outer.area() + outer.length() * height + inner.length() * (height - floor);
        }

        @Override
        public Mesh mesh(double chordError) {
            List<Point> outside = outer.polygon(requireChordError(chordError));
            List<Point> inside = new java.util.ArrayList<>(inner.polygon(chordError));
            MeshBuilder builder = new MeshBuilder();
            builder.face(outside, List.of(), 0, MeshBuilder.Looking.DOWN);
            builder.wall(outside, 0, height);
            builder.face(outside, List.of(inside), height, MeshBuilder.Looking.UP);
            builder.face(inside, List.of(), floor, MeshBuilder.Looking.UP);
            java.util.Collections.reverse(inside);
            builder.wall(inside, floor, height);
            return builder.build();
        }
    }

    private static double requireChordError(double chordError) {
        if (!(chordError >= 1e-4 && chordError <= 1)) {
            throw new ShapeException("The chord error must lie from 0.0001 to 1 mm, not at %s mm."
                    .formatted(chordError));
        }
        return chordError;
    }
}
