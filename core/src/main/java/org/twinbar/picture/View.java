package org.twinbar.picture;

/**
 * How far the camera may be from looking squarely at what is measured.
 *
 * @param tiltDeg by how much at most the picture's plane may be tilted against the part's (°)
 * @param depth by how much at most the part may lie nearer to the camera than the scale, or farther
 * @param distance from the camera to the scale, in the unit of the depth
 */
public record View(double tiltDeg, double depth, double distance) {

    /** A view that is taken as square, with the scale in the plane of the part. */
    public static final View SQUARE = new View(0, 0, 1);

    /** Beyond this a picture should be taken anew rather than reckoned with; common practice. */
    public static final double LARGEST_TILT_DEG = 45;

    /** Anything up to the largest error is equally likely. */
    private static final double END_TO_STANDARD = 1 / Math.sqrt(3);

    /**
     * @throws IllegalArgumentException unless 0 ≤ tilt ≤ {@link #LARGEST_TILT_DEG} and 0 ≤ depth <
     *     distance, which is finite
     */
    public View {
        if (!(tiltDeg >= 0 && tiltDeg <= LARGEST_TILT_DEG)) {
            throw new IllegalArgumentException("the tilt is %s °, must be from 0 to %s °"
                    .formatted(tiltDeg, LARGEST_TILT_DEG));
        }
        if (!(depth >= 0 && depth < distance && distance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the part lies %s nearer to a camera that is %s away, must be less"
                            .formatted(depth, distance));
        }
    }

    /**
     * Returns what share a length loses that is seen at an angle.
     *
     * <pre>1 − cos α</pre>
     *
     * @param deg the angle α between the length and the picture's plane (°)
     */
    public static double foreshortening(double deg) {
        return 1 - StrictMath.cos(StrictMath.toRadians(deg));
    }

    /** Returns the largest share that a length may be wrong by for the tilt, 1 − cos α. */
    public double tiltShare() {
        return foreshortening(tiltDeg);
    }

    /**
     * Returns the largest share that a length may be wrong by since it lies nearer than the scale.
     *
     * <pre>depth/distance</pre>
     */
    public double depthShare() {
        return depth / distance;
    }

    /**
     * Returns the standard uncertainty of a scale's factor from the view, as a share.
     *
     * <pre>u = √[(1 − cos α)²/3 + (depth/distance)²/3]</pre>
     *
     * <p>Both are taken as anywhere up to their largest on either side (JCGM 100:2008, 4.3.7): the
     * scale and the part may lie in different directions, so that either may be the shortened one.
     */
    public double standardShare() {
        double tilt = tiltShare() * END_TO_STANDARD;
        double depths = depthShare() * END_TO_STANDARD;
        return Math.sqrt(tilt * tilt + depths * depths);
    }
}
