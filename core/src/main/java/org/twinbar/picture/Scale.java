package org.twinbar.picture;

/**
 * How much of the part one pixel shows, from two places a known distance apart.
 *
 * <pre>k = d/l,  w² = (u_d/d)² + (u_l/l)² + w_view²</pre>
 *
 * <p>All that is measured on one scale shares its error; w is its standard uncertainty as a share.
 * A scale holds in its own plane alone, which the {@link View} says. Source: JCGM 100:2008,
 * equation (12), for a product of powers.
 *
 * @param perPx what one pixel shows (unit of the distance)
 * @param standardShare w
 * @param degreesOfFreedom effective, by Welch and Satterthwaite (JCGM 100:2008, equation (G.2b));
 *     infinite unless looks at the scale scatter
 */
public record Scale(double perPx, double standardShare, double degreesOfFreedom) {

    /** @throws IllegalArgumentException unless perPx > 0 and the share ≥ 0, both finite */
    public Scale {
        if (!(perPx > 0 && perPx < Double.POSITIVE_INFINITY)
                || !(standardShare >= 0 && standardShare < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a pixel shows %s, known to %s, is no scale".formatted(perPx, standardShare));
        }
    }

    /**
     * Sets a scale.
     *
     * @param length of the known distance on the picture (px), as often as it was looked at
     * @param distance d, in the unit of the part
     * @param uDistance u_d, the standard uncertainty of d
     * @throws IllegalArgumentException unless d > 0 and u_d ≥ 0, both finite, and the length > 0
     */
    public static Scale of(Repeated length, double distance, double uDistance, View view) {
        if (!(distance > 0 && distance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the known distance is %s, must be above 0".formatted(distance));
        }
        if (!(uDistance >= 0 && uDistance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the standard uncertainty of the known distance is %s, must be 0 or more"
                            .formatted(uDistance));
        }
        if (!(length.mean() > 0)) {
            throw new IllegalArgumentException("the known distance is 0 px long on the picture");
        }
        double known = uDistance / distance;
        double seen = length.standardUncertainty() / length.mean();
        double viewed = view.standardShare();
        double share = Math.sqrt(known * known + seen * seen + viewed * viewed);
        double freedom = seen == 0
                ? Double.POSITIVE_INFINITY
                : length.degreesOfFreedom() * StrictMath.pow(share / seen, 4);
        return new Scale(distance / length.mean(), share, freedom);
    }

    /**
     * Returns a length on the part.
     *
     * <pre>L = k · l,  u² = (k u_l)² + (L w)²</pre>
     *
     * @param onPicture l, in pixels
     */
    public Measured of(Repeated onPicture) {
        double value = perPx * onPicture.mean();
        return new Measured(
                value,
                perPx * onPicture.standardUncertainty(),
                onPicture.degreesOfFreedom(),
                perPx * onPicture.sd(),
                standardShare);
    }

    /**
     * What was measured.
     *
     * @param own standard uncertainty from its own places
     * @param ownDegreesOfFreedom of that
     * @param sd what repeats of it scatter
     * @param sharedShare standard uncertainty, as a share, that all on one scale have together
     */
    public record Measured(
            double value, double own, double ownDegreesOfFreedom, double sd, double sharedShare) {

        /** Returns what needs no scale, such as an angle. */
        public static Measured withoutScale(Repeated onPicture) {
            return new Measured(
                    onPicture.mean(),
                    onPicture.standardUncertainty(),
                    onPicture.degreesOfFreedom(),
                    onPicture.sd(),
                    0);
        }

        /** Returns the standard uncertainty, that of the scale included. */
        public double standardUncertainty() {
            double shared = value * sharedShare;
            return Math.sqrt(own * own + shared * shared);
        }
    }
}
