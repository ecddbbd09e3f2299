package org.twinbar.method.heating;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.StudentT;

/**
 * Two straight lines that meet, fitted to points by least squares: y = a + b₁x + b₂(x − ψ)₊ + e.
 *
 * <p>ψ, the bend, is sought exactly: between two points the sum of squares is least where the lines
 * through the points on either side cross, if they cross there, and at one of the points otherwise
 * (D. J. Hudson, J. Am. Stat. Assoc. 61 (1966), 1097 to 1129). At least three points lie on each
 * side. The 95 % limits are those of the profile, all ψ with
 *
 * <pre>SSR(ψ) ≤ SSR(ψ̂)·(1 + F₀.₉₅(1, n − 4)/(n − 4))</pre>
 *
 * <p>outermost ones where they lie apart. Both it and the standard uncertainty take the scatter to
 * be independent and alike along the lines; {@link #runsScore} tells where it is not.
 */
public final class BrokenStick {

    /** Fewer points leave too little scatter to judge two lines by. */
    static final int FEWEST = 8;

    private static final int ON_EACH_SIDE = 3;
    private static final double LEVEL = 0.95;
    private static final int BISECTIONS = 60;

    /** Where the bend is beyond doubt by this bound, no simulation is needed. */
    private static final double BEYOND_DOUBT = 1e-6;

    private final StickSums sums;
    private final double bend;
    private final double squares;

    private BrokenStick(StickSums sums) {
        this.sums = sums;
        Least least = least(sums);
        this.bend = least.bend();
        this.squares = least.squares();
    }

    /**
     * Returns the two lines through points, in any order; ones without numbers are passed over.
     *
     * @return empty where fewer than 8 points are left, or too few lie on either side of any bend
     */
    public static Optional<BrokenStick> through(double[] x, double[] y) {
        Integer[] order = new Integer[x.length];
        Arrays.setAll(order, i -> i);
        int[] kept = Arrays.stream(order)
                .filter(i -> Double.isFinite(x[i]) && Double.isFinite(y[i]))
                .sorted(Comparator.comparingDouble(i -> x[i]))
                .mapToInt(i -> i)
                .toArray();
        double[] sortedX = Arrays.stream(kept).mapToDouble(i -> x[i]).toArray();
        double[] sortedY = Arrays.stream(kept).mapToDouble(i -> y[i]).toArray();
        if (kept.length < FEWEST) {
            return Optional.empty();
        }
        BrokenStick stick = new BrokenStick(new StickSums(sortedX, sortedY));
        return Double.isFinite(stick.bend) ? Optional.of(stick) : Optional.empty();
    }

    /** A bend, and the sum of squares that it leaves. */
    private record Least(double bend, double squares) {}

    private static Least least(StickSums sums) {
        Least best = new Least(Double.NaN, Double.POSITIVE_INFINITY);
        int n = sums.size();
        for (int left = ON_EACH_SIDE; left <= n - ON_EACH_SIDE; left++) {
            double before = sums.x(left - 1);
            double after = sums.x(left);
            if (before < after) {
                best = better(best, before, sums.squaresAt(before, left));
                double crossing = sums.crossing(left);
                if (crossing > before && crossing < after) {
                    best = better(best, crossing, sums.squaresAt(crossing, left));
                }
            }
        }
        return best;
    }

    private static Least better(Least best, double bend, double squares) {
        return squares < best.squares() ? new Least(bend, squares) : best;
    }

    /** Returns ψ̂, where the lines meet. */
    public double bend() {
        return bend;
    }

    /** Returns the slope below the bend, b₁. */
    public double slopeBelow() {
        return sums.slopesAt(bend)[0];
    }

    /** Returns the slope above the bend, b₁ + b₂. */
    public double slopeAbove() {
        double[] slopes = sums.slopesAt(bend);
        return slopes[0] + slopes[1];
    }

    public double sumOfSquares() {
        return squares;
    }

    /** Returns n − 4. */
    public double degreesOfFreedom() {
        return sums.size() - 4.0;
    }

    /** Returns the scatter about the lines, √(SSR/(n − 4)). */
    public double scatter() {
        return Math.sqrt(squares / degreesOfFreedom());
    }

    /**
     * Returns the standard uncertainty of the bend by the delta method.
     *
     * <pre>s/|b₂|·√( 1/n₁ + (ψ − x̄₁)²/Sxx₁ + 1/n₂ + (ψ − x̄₂)²/Sxx₂ )</pre>
     *
     * <p>Source: V. M. R. Muggeo, Statistics in Medicine 22 (2003), 3055 to 3071, whose linearized
     * model spans the same four columns as two lines of their own do.
     */
    public double standardUncertainty() {
        return scatter() / Math.abs(sums.slopesAt(bend)[1]) * Math.sqrt(sums.leverage(bend));
    }

    /** Returns the lower 95 % limit of the bend; {@link #isOpenBelow} where there is none. */
    public double lower() {
        return limit(-1);
    }

    /** Returns the upper 95 % limit of the bend; {@link #isOpenAbove} where there is none. */
    public double upper() {
        return limit(1);
    }

    /** Returns whether bends as low as the points let one be sought cannot be ruled out. */
    public boolean isOpenBelow() {
        return lower() <= sums.x(ON_EACH_SIDE - 1);
    }

    /** Returns whether bends as high as the points let one be sought cannot be ruled out. */
    public boolean isOpenAbove() {
        return upper() >= sums.x(sums.size() - ON_EACH_SIDE);
    }

    /**
     * Returns the standard uncertainty that makes a symmetric 95 % interval as wide as the longer
     * arm of the profile's, never less than the delta method's.
     */
    public double safeUncertainty() {
        double arm = Math.max(upper() - bend, bend - lower());
        double t = new StudentT(degreesOfFreedom()).twoSided(LEVEL);
        return Math.max(standardUncertainty(), arm / t);
    }

    private double limit(int side) {
        double t = new StudentT(degreesOfFreedom()).twoSided(LEVEL);
        double most = squares * (1 + t * t / degreesOfFreedom());
        int first = ON_EACH_SIDE - 1;
        int last = sums.size() - ON_EACH_SIDE;
        double outer = side < 0 ? sums.x(first) : sums.x(last);
        if (sums.squaresAt(outer) <= most) {
            return outer;
        }
        int at = side < 0 ? first : last;
        while (side * (sums.x(at) - bend) > 0 && sums.squaresAt(sums.x(at)) > most) {
            outer = sums.x(at);
            at -= side;
        }
        double inner = side * (sums.x(at) - bend) > 0 ? sums.x(at) : bend;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = inner + (outer - inner) / 2;
            if (sums.squaresAt(middle) <= most) {
                inner = middle;
            } else {
                outer = middle;
            }
        }
        return inner;
    }

    /**
     * Returns the probability of a bend as clear as this one where there is a straight line alone.
     *
     * <p>Under a straight line ψ means nothing, so that the usual table of F does not hold: as many
     * points of pure scatter are drawn on the same places, and the share of draws whose bend saves
     * as much is counted, (1 + hits)/(1 + trials). Where even the sum of the chances at every point
     * is below 10⁻⁶, that bound is returned instead; 1 where the points lie on one line.
     *
     * @param trials how many are drawn
     * @param seed of the draws
     */
    public double straightLineProbability(int trials, long seed) {
        if (sums.isStraight()) {
            return 1;
        }
        double saved = saved(sums.straightSquares(), squares);
        double freedom = sums.size() - 3.0;
        double bound = sums.size() * new StudentT(freedom).twoSidedP(Math.sqrt(saved * freedom));
        if (bound < BEYOND_DOUBT) {
            return bound;
        }
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        int hits = 0;
        for (int trial = 0; trial < trials; trial++) {
            double[] scatter = new double[sums.size()];
            for (int i = 0; i < scatter.length; i++) {
                scatter[i] = normal(random);
            }
            StickSums drawn = sums.with(scatter);
            hits += saved(drawn.straightSquares(), least(drawn).squares()) >= saved ? 1 : 0;
        }
        return (1.0 + hits) / (1.0 + trials);
    }

    private static double saved(double straight, double bent) {
        return bent > 0 ? Math.max(0, straight - bent) / bent : Double.POSITIVE_INFINITY;
    }

    /** Marsaglia's polar method, one of its two numbers. */
    private static double normal(UniformRandomProvider random) {
        while (true) {
            double first = 2 * random.nextDouble() - 1;
            double second = 2 * random.nextDouble() - 1;
            double square = first * first + second * second;
            if (square > 0 && square < 1) {
                return first * Math.sqrt(-2 * StrictMath.log(square) / square);
            }
        }
    }

    /**
     * Returns how many standard deviations the runs of one sign among the residuals above the bend
     * are more than chance would give; far below zero where the upper branch is curved.
     *
     * <pre>(R − 1 − 2pm/(p + m)) / √( 2pm(2pm − p − m)/((p + m)²(p + m − 1)) )</pre>
     *
     * <p>Source: A. Wald and J. Wolfowitz, Ann. Math. Stat. 11 (1940), 147 to 162. Returns 0 where
     * fewer than three residuals have either sign.
     */
    public double runsScore() {
        int runs = 0;
        int plus = 0;
        int minus = 0;
        int before = 0;
        for (int i = 0; i < sums.size(); i++) {
            double residual = sums.residual(i, bend);
            if (sums.x(i) > bend && residual != 0) {
                int sign = residual > 0 ? 1 : -1;
                runs += sign == before ? 0 : 1;
                plus += sign > 0 ? 1 : 0;
                minus += sign < 0 ? 1 : 0;
                before = sign;
            }
        }
        if (plus < ON_EACH_SIDE || minus < ON_EACH_SIDE) {
            return 0;
        }
        double all = plus + minus;
        double twice = 2.0 * plus * minus;
        double variance = twice * (twice - all) / (all * all * (all - 1));
        return (runs - 1 - twice / all) / Math.sqrt(variance);
    }
}
