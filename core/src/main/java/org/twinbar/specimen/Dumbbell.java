package org.twinbar.specimen;

/**
 * The outline of a tensile bar: two wide ends, a narrow parallel middle, rounded shoulders.
 *
 * <p>The shoulder leaves the middle tangentially, with the inner radius r; where there is an outer
 * radius R it runs into the end tangentially, else it meets the end at a corner. With h half the
 * difference of the widths the shoulder is √(2rh − h²) long, or √(2(r + R)h − h²) with both radii.
 *
 * @param overall length (mm)
 * @param parallel length of the middle (mm)
 * @param endWidth (mm)
 * @param narrowWidth (mm)
 * @param inner r, radius of the fillet at the middle (mm)
 * @param outer R, radius at the end; 0 where the shoulder meets it at a corner (mm)
 */
record Dumbbell(
        double overall,
        double parallel,
        double endWidth,
        double narrowWidth,
        double inner,
        double outer) {

    /** The inner radius that puts the ends so far apart: ((l₂ − l₁)²/4 + h²)/(2h). */
    static double radiusFor(double tabSpacing, double parallel, double endWidth, double narrow) {
        double h = (endWidth - narrow) / 2;
        double shoulder = (tabSpacing - parallel) / 2;
        return (shoulder * shoulder + h * h) / (2 * h);
    }

    /** Distance between the wide ends, l₂ (mm). */
    double tabSpacing() {
        return parallel + 2 * shoulder();
    }

    private double step() {
        return (endWidth - narrowWidth) / 2;
    }

    private double shoulder() {
        return Math.sqrt(2 * (inner + outer) * step() - step() * step());
    }

    /** Angle at which the shoulder leaves the inner radius (rad). */
    private double turn() {
        return StrictMath.acos(1 - step() / (inner + outer));
    }

    Outline outline() {
        double end = overall / 2;
        double wide = endWidth / 2;
        Outline.Run run = Outline.from(-end, -wide);
        shouldersBelow(run);
        run.to(end, -wide).to(end, wide);
        shouldersAbove(run);
        return run.to(-end, wide).close();
    }

    /** From the left end along the lower side to the right one. */
    private void shouldersBelow(Outline.Run run) {
        double wide = -endWidth / 2;
        double narrow = -narrowWidth / 2;
        double tab = parallel / 2 + shoulder();
        double centre = narrow - inner;
        run.to(-tab, wide);
        double x = parallel / 2 + inner * StrictMath.sin(turn());
        double y = centre + inner * StrictMath.cos(turn());
        if (outer > 0) {
            run.arc(-x, y, -tab, wide + outer, turn());
        }
        run.arc(-parallel / 2, narrow, -parallel / 2, centre, -turn())
                .to(parallel / 2, narrow)
                .arc(x, outer > 0 ? y : wide, parallel / 2, centre, -turn());
        if (outer > 0) {
            run.arc(tab, wide, tab, wide + outer, turn());
        }
    }

    /** From the right end along the upper side to the left one. */
    private void shouldersAbove(Outline.Run run) {
        double wide = endWidth / 2;
        double narrow = narrowWidth / 2;
        double tab = parallel / 2 + shoulder();
        double centre = narrow + inner;
        run.to(tab, wide);
        double x = parallel / 2 + inner * StrictMath.sin(turn());
        double y = centre - inner * StrictMath.cos(turn());
        if (outer > 0) {
            run.arc(x, y, tab, wide - outer, turn());
        }
        run.arc(parallel / 2, narrow, parallel / 2, centre, -turn())
                .to(-parallel / 2, narrow)
                .arc(-x, outer > 0 ? y : wide, -parallel / 2, centre, -turn());
        if (outer > 0) {
            run.arc(-tab, wide, -tab, wide - outer, turn());
        }
    }
}
