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

    /** A body with one level face that looks up and has room for a code. */
    sealed interface Plain extends Solid {

        /** Returns how deep a code may be cut into that face (mm); 0 where it may not. */
        double mostDepth();

        /** Returns the mesh with that face as it is handed. */
        Mesh mesh(double chordError, Top top);

        @Override
        default Mesh mesh(double chordError) {
            return mesh(
                    chordError,
                    (builder, line, height) ->
                            builder.face(line, List.of(), height, MeshBuilder.Looking.UP));
        }
    }

    /** What closes a body from above. */
    interface Top {
        /** Adds a face within a line that has the body on its left. */
        void into(MeshBuilder builder, List<Point> line, double height);
    }

    /**
     * An outline with a thickness. V = A·h, S = 2A + L·h.
     *
     * @param outline seen from above
     * @param height h (mm)
     */
    record Prism(Outline outline, double height) implements Plain {

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
        public double mostDepth() {
            return height / 2;
        }

        @Override
        public Mesh mesh(double chordError, Top top) {
            List<Point> line = outline.polygon(requireChordError(chordError));
            MeshBuilder builder = new MeshBuilder();
            builder.face(line, List.of(), 0, MeshBuilder.Looking.DOWN);
            builder.wall(line, 0, height);
            top.into(builder, line, height);
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
    record Vessel(Outline outer, Outline inner, double height, double floor) implements Plain {

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

        /** A cut into the floor would be where it leaks. */
        @Override
        public double mostDepth() {
            return 0;
        }

        @Override
        public Mesh mesh(double chordError, Top top) {
            List<Point> outside = outer.polygon(requireChordError(chordError));
            List<Point> inside = inner.polygon(chordError);
            MeshBuilder builder = new MeshBuilder();
            builder.face(outside, List.of(), 0, MeshBuilder.Looking.DOWN);
            builder.wall(outside, 0, height);
            builder.face(outside, List.of(inside), height, MeshBuilder.Looking.UP);
            top.into(builder, inside, floor);
            builder.wall(Polygons.reversed(inside), floor, height);
            return builder.build();
        }
    }

    /**
     * A body with its code on the face that looks up. V = V₀ ∓ A·d, S = S₀ + L·d: engraved takes
     * A·d away, raised adds it.
     *
     * @param body without the code: V₀, S₀
     * @param lettering of area A and length L
     * @param relief whether the signs lie below the face or stand on it
     * @param depth d (mm)
     */
    record Lettered(Plain body, Lettering lettering, Relief relief, double depth) implements Solid {

        /** Two layers of 0.2 mm: read by eye and by finger; common practice, no source. */
        public static final double USUAL_DEPTH = 0.4;

        /** Strokes higher than this break off (mm); our own choice. */
        private static final double MOST_RAISED = 2;

        /** @throws ShapeException where it would be too deep or too high, or be cut into a floor */
        public Lettered {
            Sizes.requirePositive(depth, "depth of the code (mm)");
            if (relief == Relief.ENGRAVED && body.mostDepth() == 0) {
                throw new ShapeException("A vessel's code is raised from its floor: engraved, it"
                        + " would thin what is to be tight.");
            }
            double most = relief == Relief.ENGRAVED ? body.mostDepth() : MOST_RAISED;
            if (depth > most) {
                throw new ShapeException("The code may be %s by at most %s mm here, not by %s mm."
                        .formatted(relief.word(), Sizes.text(most), Sizes.text(depth)));
            }
        }

        @Override
        public double volume() {
            double part = lettering.area() * depth;
            return relief == Relief.RAISED ? body.volume() + part : body.volume() - part;
        }

        @Override
        public double area() {
            return body.area() + lettering.length() * depth;
        }

        @Override
        public Mesh mesh(double chordError) {
            return body.mesh(chordError, this::top);
        }

        private void top(MeshBuilder builder, List<Point> line, double height) {
            builder.face(
                    line,
                    lettering.signs().stream().map(Lettering.Sign::outer).toList(),
                    height,
                    MeshBuilder.Looking.UP);
            double other = relief == Relief.RAISED ? height + depth : height - depth;
            for (Lettering.Sign sign : lettering.signs()) {
                builder.face(sign.outer(), sign.islands(), other, MeshBuilder.Looking.UP);
                wall(builder, sign.outer(), height, other);
                for (List<Point> island : sign.islands()) {
                    builder.face(island, List.of(), height, MeshBuilder.Looking.UP);
                    wall(builder, Polygons.reversed(island), height, other);
                }
            }
        }

        /** A raised sign has its body inside its outline, an engraved one outside. */
        private static void wall(
                MeshBuilder builder, List<Point> line, double height, double other) {
            if (other > height) {
                builder.wall(line, height, other);
            } else {
                builder.wall(Polygons.reversed(line), other, height);
            }
        }
    }

    /** How a code is told from the face that it stands on. */
    enum Relief {
        ENGRAVED,
        RAISED;

        public String word() {
            return this == ENGRAVED ? "engraved" : "raised";
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
