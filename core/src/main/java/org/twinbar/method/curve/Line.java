package org.twinbar.method.curve;

/**
 * A straight line by least squares.
 *
 * @param slope in units of y per unit of x
 * @param intercept at x = 0
 * @param slopeUncertainty standard uncertainty of the slope from the scatter about the line, 0
 *     where two points leave none
 * @param interceptUncertainty the same of the intercept
 * @param points how many were used
 */
public record Line(
        double slope,
        double intercept,
        double slopeUncertainty,
        double interceptUncertainty,
        int points) {

    /** Returns the line through points, y on x. */
    public static Line through(double[] x, double[] y) {
        Sums sums = new Sums();
        for (int i = 0; i < x.length; i++) {
            sums.add(x[i], y[i]);
        }
        return sums.line();
    }

    /**
     * Returns the line of sums, its slope NaN where the points have no spread in x.
     *
     * <pre>slope = Sxy / Sxx,  u(slope) = √( (Syy − slope·Sxy) / ((n − 2)·Sxx) ),
     * u(intercept) = u(slope)·√(Sxx/n + x̄²)</pre>
     *
     * <p>Source: JCGM 100:2008, H.3, equations (H.13a) to (H.13f).
     */
    static Line of(int points, double meanX, double meanY, double xx, double xy, double yy) {
        double slope = xx > 0 ? xy / xx : Double.NaN;
        double left = Math.max(0, yy - slope * xy);
        double u = points > 2 ? Math.sqrt(left / ((points - 2) * xx)) : 0;
        double uAtZero = u * Math.sqrt(xx / points + meanX * meanX);
        return new Line(slope, meanY - slope * meanX, u, uAtZero, points);
    }

    /** Returns where the line crosses zero, as −intercept / slope. */
    public double zeroCrossing() {
        return -intercept / slope;
    }

    public double at(double x) {
        return intercept + slope * x;
    }

    /** Returns the degrees of freedom of the scatter, at least 1. */
    public double degreesOfFreedom() {
        return Math.max(1, points - 2);
    }

    /** Sums of points, about the first of them so that large coordinates cost no digits. */
    static final class Sums {
        private int n;
        private double firstX;
        private double firstY;
        private double x;
        private double y;
        private double xx;
        private double xy;
        private double yy;

        /** Adds a point; one without numbers is passed over. */
        void add(double pointX, double pointY) {
            if (Double.isFinite(pointX) && Double.isFinite(pointY)) {
                if (n == 0) {
                    firstX = pointX;
                    firstY = pointY;
                }
                change(pointX - firstX, pointY - firstY, 1);
            }
        }

        /** Takes a point out again that was added before. */
        void remove(double pointX, double pointY) {
            if (Double.isFinite(pointX) && Double.isFinite(pointY)) {
                change(pointX - firstX, pointY - firstY, -1);
            }
        }

        private void change(double dx, double dy, int sign) {
            n += sign;
            x += sign * dx;
            y += sign * dy;
            xx += sign * dx * dx;
            xy += sign * dx * dy;
            yy += sign * dy * dy;
        }

        int points() {
            return n;
        }

        /** Returns the slope, NaN where the points have no spread in x. */
        double slope() {
            return spread() > 0 ? (xy - x * y / n) / spread() : Double.NaN;
        }

        private double spread() {
            return xx - x * x / n;
        }

        Line line() {
            return Line.of(
                    n, firstX + x / n, firstY + y / n, spread(), xy - x * y / n, yy - y * y / n);
        }

        Window window(int from, int to, double work) {
            return new Window(
                    from,
                    to,
                    n,
                    firstX + x / n,
                    firstY + y / n,
                    spread(),
                    xy - x * y / n,
                    yy - y * y / n,
                    work);
        }
    }
}
