package org.twinbar.picture;

import java.util.List;

/**
 * What is measured between places on a picture.
 *
 * <p>Each coordinate of a place has a standard uncertainty u of its own, which is propagated by
 * first order (JCGM 100:2008, equation (10)); that holds where places lie many steps apart.
 */
public enum Figure {
    /**
     * The length from A to B (px).
     *
     * <pre>l = |B − A|,  u² = u_A² + u_B²</pre>
     */
    LENGTH(2) {
        @Override
        Sighted between(List<Spot> spots) {
            Arm arm = Arm.from(spots.get(0), spots.get(1));
            return new Sighted(arm.length(), root(u(spots, 0), u(spots, 1)));
        }
    },

    /**
     * The height of P over the line through A and B (px), whichever side it is on.
     *
     * <pre>h = |(B − A) × (P − A)| / |B − A|,  u² = u_P² + (1 − t)² u_A² + t² u_B²</pre>
     *
     * <p>t is where the foot of the height lies, 0 at A and 1 at B: a foot far outside the two
     * makes the line's own tilt felt.
     */
    HEIGHT(3) {
        @Override
        Sighted between(List<Spot> spots) {
            Arm base = Arm.from(spots.get(0), spots.get(1));
            Arm to = Arm.from(spots.get(0), spots.get(2));
            double foot = (base.x() * to.x() + base.y() * to.y()) / (base.length() * base.length());
            return new Sighted(
                    Math.abs(base.x() * to.y() - base.y() * to.x()) / base.length(),
                    root(u(spots, 2), (1 - foot) * u(spots, 0), foot * u(spots, 1)));
        }
    },

    /**
     * The angle at B between the arms to A and to C (°), from 0 to 180.
     *
     * <pre>θ = atan2(|a × c|, a · c),  a = A − B,  c = C − B
     * u² = u_A²/a² + u_C²/c² + u_B² (1/a² + 1/c² − 2 cos θ/(a c))   (in radians)</pre>
     *
     * <p>Near 0 and 180 the angle can't go further, so that first order says too much there.
     */
    ANGLE(3) {
        @Override
        Sighted between(List<Spot> spots) {
            Arm a = Arm.from(spots.get(1), spots.get(0));
            Arm c = Arm.from(spots.get(1), spots.get(2));
            double across = Math.abs(a.x() * c.y() - a.y() * c.x());
            double along = a.x() * c.x() + a.y() * c.y();
            double perA = 1 / a.length();
            double perC = 1 / c.length();
            double cosine = along * perA * perC;
            double vertex = perA * perA + perC * perC - 2 * cosine * perA * perC;
            double u = root(
                    u(spots, 0) * perA,
                    u(spots, 2) * perC,
                    u(spots, 1) * Math.sqrt(Math.max(0, vertex)));
            return new Sighted(
                    StrictMath.toDegrees(StrictMath.atan2(across, along)), StrictMath.toDegrees(u));
        }
    };

    private final int spots;

    Figure(int spots) {
        this.spots = spots;
    }

    /** Returns how many places it is measured between. */
    public int spots() {
        return spots;
    }

    abstract Sighted between(List<Spot> spots);

    /**
     * Measures it once.
     *
     * @throws IllegalArgumentException unless there are as many places as it needs, and those that
     *     make a line lie apart
     */
    public Sighted of(List<Spot> places) {
        if (places.size() != spots) {
            throw new IllegalArgumentException(
                    "%s places were set, must be %s".formatted(places.size(), spots));
        }
        return between(places);
    }

    private static double u(List<Spot> spots, int number) {
        return spots.get(number).standardUncertaintyPx();
    }

    private static double root(double... parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    /** From one place to another. */
    private record Arm(double x, double y, double length) {

        static Arm from(Spot one, Spot other) {
            double x = other.xPx() - one.xPx();
            double y = other.yPx() - one.yPx();
            double length = Math.sqrt(x * x + y * y);
            if (!(length > 0)) {
                throw new IllegalArgumentException("two places lie on one another, must lie apart");
            }
            return new Arm(x, y, length);
        }
    }
}
