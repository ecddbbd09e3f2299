package org.twinbar.method.heating;

import java.util.Arrays;

/**
 * Sums over sorted points from which lines on either side of any bend are had at once, about the
 * points' means so that large coordinates cost no digits.
 */
final class StickSums {

    private static final double ROUNDING = 1e-12;

    private final double[] x;
    private final double[] y;
    private final double meanX;
    private final double meanY;

    /** Sums over the first k points: of x, y, x², xy and y², each about the means. */
    private final double[] sumX;

    private final double[] sumY;
    private final double[] sumXx;
    private final double[] sumXy;
    private final double[] sumYy;

    /** Takes points whose x do not fall. */
    StickSums(double[] x, double[] y) {
        int n = x.length;
        this.x = x;
        this.y = y;
        this.meanX = Arrays.stream(x).sum() / n;
        this.meanY = Arrays.stream(y).sum() / n;
        this.sumX = new double[n + 1];
        this.sumY = new double[n + 1];
        this.sumXx = new double[n + 1];
        this.sumXy = new double[n + 1];
        this.sumYy = new double[n + 1];
        for (int i = 0; i < n; i++) {
            double dx = x[i] - meanX;
            double dy = y[i] - meanY;
            sumX[i + 1] = sumX[i] + dx;
            sumY[i + 1] = sumY[i] + dy;
            sumXx[i + 1] = sumXx[i] + dx * dx;
            sumXy[i + 1] = sumXy[i] + dx * dy;
            sumYy[i + 1] = sumYy[i] + dy * dy;
        }
    }

    /** Returns the sums of other values on the same places. */
    StickSums with(double[] otherY) {
        return new StickSums(x, otherY);
    }

    int size() {
        return x.length;
    }

    double x(int i) {
        return x[i];
    }

    /** Returns how many points lie at or below a bend. */
    private int leftOf(double bend) {
        int found = Arrays.binarySearch(x, bend);
        int left = found < 0 ? -found - 1 : found + 1;
        while (left < x.length && x[left] <= bend) {
            left++;
        }
        return left;
    }

    /**
     * Returns where the lines through the first points and through the others cross; NaN where they
     * don't.
     */
    double crossing(int left) {
        double[] below = line(0, left);
        double[] above = line(left, x.length);
        return meanX + (below[0] - above[0]) / (above[1] - below[1]);
    }

    /** Returns intercept and slope, about the means, of the points from one to before another. */
    private double[] line(int from, int to) {
        double n = to - from;
        double sx = sumX[to] - sumX[from];
        double sy = sumY[to] - sumY[from];
        double slope = (sumXy[to] - sumXy[from] - sx * sy / n) / spread(from, to);
        return new double[] {(sy - slope * sx) / n, slope};
    }

    private double spread(int from, int to) {
        double sx = sumX[to] - sumX[from];
        return sumXx[to] - sumXx[from] - sx * sx / (to - from);
    }

    double squaresAt(double bend) {
        return squaresAt(bend, leftOf(bend));
    }

    /** Returns the sum of squares about two lines that meet at a bend. */
    double squaresAt(double bend, int left) {
        Normal normal = normal(bend, left);
        double[] slopes = normal.slopes();
        double explained = slopes[0] * normal.xy() + slopes[1] * normal.vy();
        double all = sumYy[x.length] - sumY[x.length] * sumY[x.length] / x.length;
        return Double.isFinite(explained) ? Math.max(0, all - explained) : Double.POSITIVE_INFINITY;
    }

    /** Returns b₁ and b₂ of the lines that meet at a bend. */
    double[] slopesAt(double bend) {
        return normal(bend, leftOf(bend)).slopes();
    }

    double straightSquares() {
        int n = x.length;
        double xy = sumXy[n] - sumX[n] * sumY[n] / n;
        double yy = sumYy[n] - sumY[n] * sumY[n] / n;
        return Math.max(0, yy - xy * xy / spread(0, n));
    }

    /** Returns whether the points lie on one line but for the rounding of these sums. */
    boolean isStraight() {
        int n = x.length;
        double all = sumYy[n] - sumY[n] * sumY[n] / n;
        return !(straightSquares() > ROUNDING * all);
    }

    double residual(int i, double bend) {
        Normal normal = normal(bend, leftOf(bend));
        double[] slopes = normal.slopes();
        double beyond = Math.max(0, x[i] - bend) - normal.meanV();
        return y[i] - meanY - slopes[0] * (x[i] - meanX) - slopes[1] * beyond;
    }

    /** Returns 1/n + (ψ − x̄)²/Sxx of either side together. */
    double leverage(double bend) {
        int left = leftOf(bend);
        return leverage(bend, 0, left) + leverage(bend, left, x.length);
    }

    private double leverage(double bend, int from, int to) {
        double n = to - from;
        double off = bend - meanX - (sumX[to] - sumX[from]) / n;
        return 1 / n + off * off / spread(from, to);
    }

    private Normal normal(double bend, int left) {
        int n = x.length;
        double b = bend - meanX;
        double count = n - left;
        double sx = sumX[n] - sumX[left];
        double sy = sumY[n] - sumY[left];
        double sxx = sumXx[n] - sumXx[left];
        double v = sx - b * count;
        double vv = sxx - 2 * b * sx + b * b * count;
        double xv = sxx - b * sx;
        double vy = sumXy[n] - sumXy[left] - b * sy;
        return new Normal(
                spread(0, n),
                xv - sumX[n] * v / n,
                vv - v * v / n,
                sumXy[n] - sumX[n] * sumY[n] / n,
                vy - sumY[n] * v / n,
                v / n);
    }

    /** The normal equations of x and v = (x − ψ)₊, both about their means. */
    private record Normal(double xx, double xv, double vv, double xy, double vy, double meanV) {

        double[] slopes() {
            double determinant = xx * vv - xv * xv;
            return new double[] {
                (xy * vv - vy * xv) / determinant, (vy * xx - xy * xv) / determinant
            };
        }
    }
}
