package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed line of straight edges and arcs, run with the body on its left.
 *
 * <p>Area and length are exact; {@link #polygon} rounds the arcs by chords.
 */
public final class Outline {

    /** A piece from one corner to the next; an arc has a centre and a sweep, counted leftwards. */
    private record Piece(Point from, Point to, Point centre, double radius, double sweep) {}

    private final List<Piece> pieces;

    private Outline(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /** Returns an outline that begins at a corner. */
    static Run from(double x, double y) {
        return new Run(new Point(x, y));
    }

    /** Returns a rectangle about the origin. */
    static Outline rectangle(double length, double width) {
        return from(-length / 2, -width / 2)
                .to(length / 2, -width / 2)
                .to(length / 2, width / 2)
                .to(-length / 2, width / 2)
                .close();
    }

    /** Returns a circle about the origin. */
    static Outline circle(double diameter) {
        double radius = diameter / 2;
        return from(radius, 0)
                .arc(-radius, 0, 0, 0, Math.PI)
                .arc(radius, 0, 0, 0, Math.PI)
                .close();
    }

    /**
     * Returns the enclosed area (mm²).
     *
     * <p>½∮(x dy − y dx): ½(x₁y₂ − x₂y₁) of an edge; ½(r²s + x_c(y₂ − y₁) − y_c(x₂ − x₁)) of an arc
     * of sweep s. Source: Green's theorem.
     */
    public double area() {
        double twice = 0;
        for (Piece piece : pieces) {
            Point from = piece.from();
            Point to = piece.to();
            twice += piece.sweep() == 0
                    ? from.x() * to.y() - to.x() * from.y()
                    : piece.radius() * piece.radius() * piece.sweep()
                            + piece.centre().x() * (to.y() - from.y())
                            - piece.centre().y() * (to.x() - from.x());
        }
        return twice / 2;
    }

    /** Returns the length of the line (mm): √(Δx² + Δy²) of an edge, r·|s| of an arc. */
    public double length() {
        double sum = 0;
        for (Piece piece : pieces) {
            sum += piece.sweep() == 0
                    ? StrictMath.hypot(
                            piece.to().x() - piece.from().x(),
                            piece.to().y() - piece.from().y())
                    : piece.radius() * Math.abs(piece.sweep());
        }
        return sum;
    }

    /**
     * Returns the corners of a polygon that leaves no arc by more than the chord error.
     *
     * <p>An arc of sweep s gets ⌈|s|/(2·acos(1 − e/r))⌉ chords, at least one for each quarter turn.
     *
     * @param chordError e (mm)
     */
    public List<Point> polygon(double chordError) {
        List<Point> corners = new ArrayList<>();
        for (Piece piece : pieces) {
            corners.add(piece.from());
            if (piece.sweep() != 0) {
                roundedInto(corners, piece, chordError);
            }
        }
        return corners;
    }

    private static void roundedInto(List<Point> corners, Piece arc, double chordError) {
        double widest = 2 * StrictMath.acos(1 - Math.min(1, chordError / arc.radius()));
        double turn = Math.min(widest, Math.PI / 2);
        int chords = (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / turn - 1e-9));
        double start = StrictMath.atan2(
                arc.from().y() - arc.centre().y(), arc.from().x() - arc.centre().x());
        for (int i = 1; i < chords; i++) {
            double angle = start + arc.sweep() * i / chords;
            corners.add(new Point(
                    arc.centre().x() + arc.radius() * StrictMath.cos(angle),
                    arc.centre().y() + arc.radius() * StrictMath.sin(angle)));
        }
    }

    /** An outline that is being drawn. */
    static final class Run {

        private final Point start;
        private final List<Piece> pieces = new ArrayList<>();
        private Point at;

        private Run(Point start) {
            this.start = start;
            this.at = start;
        }

        Run to(double x, double y) {
            return add(new Piece(at, new Point(x, y), at, 0, 0));
        }

        /**
         * Draws an arc.
         *
         * @param sweep angle about the centre, leftwards above zero (rad)
         */
        Run arc(double x, double y, double centreX, double centreY, double sweep) {
            Point centre = new Point(centreX, centreY);
            double radius = StrictMath.hypot(at.x() - centreX, at.y() - centreY);
            return add(new Piece(at, new Point(x, y), centre, radius, sweep));
        }

        Outline close() {
            if (!at.equals(start)) {
                to(start.x(), start.y());
            }
            return new Outline(pieces);
        }

        private Run add(Piece piece) {
            pieces.add(piece);
            at = piece.to();
            return this;
        }
    }
}
