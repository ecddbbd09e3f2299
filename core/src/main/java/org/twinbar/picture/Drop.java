package org.twinbar.picture;

/**
 * How far a place moved across a line that stands still, such as a tip across the edge of a shelf.
 *
 * <pre>δ = (P − P₀) · n</pre>
 *
 * <p>n is the unit normal of the line on the side towards which the picture's y grows, downwards;
 * of an upright line the side to the right. δ is negative where the place moved the other way.
 *
 * @param normalX of the line, to the right
 * @param normalY of the line, downwards
 */
public record Drop(double normalX, double normalY) {

    /** Straight down the picture, for a camera that was held level. */
    public static final Drop DOWN = new Drop(0, 1);

    /**
     * Returns a drop across the line through two places.
     *
     * @throws IllegalArgumentException where they lie on one another
     */
    public static Drop across(Spot one, Spot other) {
        double x = other.xPx() - one.xPx();
        double y = other.yPx() - one.yPx();
        double length = Math.sqrt(x * x + y * y);
        if (!(length > 0)) {
            throw new IllegalArgumentException("two places lie on one another, must lie apart");
        }
        boolean upright = x == 0;
        double side = (upright ? y > 0 : x < 0) ? -1 : 1;
        return new Drop(-side * y / length, side * x / length);
    }

    /**
     * Returns the drop (px) with what the steps of both places leave open.
     *
     * <pre>u² = u_P² + u_P₀²</pre>
     */
    public Sighted of(Spot from, Spot to) {
        double u = from.standardUncertaintyPx();
        double v = to.standardUncertaintyPx();
        return new Sighted(
                (to.xPx() - from.xPx()) * normalX + (to.yPx() - from.yPx()) * normalY,
                Math.sqrt(u * u + v * v));
    }
}
