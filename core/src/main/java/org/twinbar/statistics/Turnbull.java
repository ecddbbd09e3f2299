package org.twinbar.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * When it happened, for times that two looks enclose: the shares that the data put between looks.
 *
 * <p>The most likely distribution gives shares to the innermost intervals alone and says nothing of
 * where within. It is found by self-consistency: each specimen's share is spread over the intervals
 * that it may lie in, in proportion to what they have. Source: B. W. Turnbull, The empirical
 * distribution function with arbitrarily grouped, censored and truncated data (1976),
 * doi:10.1111/j.2517-6161.1976.tb01597.x.
 *
 * @param masses innermost intervals with their shares, in the order of time; those with no share
 *     are left out
 * @param n number of specimens
 * @param converged whether the shares had settled before the limit of iterations
 */
public record Turnbull(List<Mass> masses, int n, boolean converged) {

    private static final int MOST_ITERATIONS = 100_000;
    private static final double SETTLED = 1e-12;
    private static final double NOTHING = 1e-9;

    /**
     * A share of specimens.
     *
     * @param after time after which it happened to them (or at which, where both are the same)
     * @param until time by which it had; ∞ for those that outlast the tests
     * @param share of all specimens
     */
    public record Mass(double after, double until, double share) {}

    public Turnbull {
        masses = List.copyOf(masses);
    }

    /**
     * The distribution of one group.
     *
     * @throws IllegalArgumentException if the group is empty
     */
    public static Turnbull of(List<Lifetime> lives) {
        Arguments.requireAtLeast(lives.size(), 1, "number of specimens");
        List<Mass> innermost = innermost(lives);
        double[] shares = new double[innermost.size()];
        Arrays.fill(shares, 1.0 / shares.length);
        boolean converged = false;
        for (int i = 0; i < MOST_ITERATIONS && !converged; i++) {
            double[] next = spread(lives, innermost, shares);
            double change = 0;
            for (int j = 0; j < shares.length; j++) {
                change = Math.max(change, Math.abs(next[j] - shares[j]));
            }
            converged = change < SETTLED;
            shares = next;
        }
        List<Mass> masses = new ArrayList<>();
        for (int j = 0; j < shares.length; j++) {
            if (shares[j] > NOTHING) {
                masses.add(new Mass(innermost.get(j).after(), innermost.get(j).until(), shares[j]));
            }
        }
        return new Turnbull(masses, lives.size(), converged);
    }

    /**
     * The least share that can be left just after a time: all that may have happened by then has.
     */
    public double leastSurvival(double time) {
        return 1
                - masses.stream()
                        .filter(mass -> mass.after() < time || mass.until() <= time)
                        .mapToDouble(Mass::share)
                        .sum();
    }

    /** The largest share that can be left just after a time. */
    public double mostSurvival(double time) {
        return 1
                - masses.stream()
                        .filter(mass -> mass.until() <= time)
                        .mapToDouble(Mass::share)
                        .sum();
    }

    /** The end of an interval; the order says what comes first at the same time. */
    private record End(double time, int order, boolean left) {
        static final int EXACT_LEFT = 0;
        static final int RIGHT = 1;
        static final int OPEN_LEFT = 2;
    }

    /** Intervals between a left end and a right end that follow each other directly. */
    private static List<Mass> innermost(List<Lifetime> lives) {
        List<End> ends = new ArrayList<>();
        for (Lifetime life : lives) {
            boolean exact = life.after() == life.until();
            ends.add(new End(life.after(), exact ? End.EXACT_LEFT : End.OPEN_LEFT, true));
            ends.add(new End(life.until(), End.RIGHT, false));
        }
        ends.sort(Comparator.comparingDouble(End::time).thenComparingInt(End::order));
        List<Mass> innermost = new ArrayList<>();
        for (int i = 1; i < ends.size(); i++) {
            if (ends.get(i - 1).left() && !ends.get(i).left()) {
                innermost.add(new Mass(ends.get(i - 1).time(), ends.get(i).time(), 0));
            }
        }
        return innermost;
    }

    private static double[] spread(List<Lifetime> lives, List<Mass> innermost, double[] shares) {
        double[] next = new double[shares.length];
        for (Lifetime life : lives) {
            double sum = 0;
            for (int j = 0; j < shares.length; j++) {
                sum += mayHold(life, innermost.get(j)) ? shares[j] : 0;
            }
            for (int j = 0; j < shares.length; j++) {
                next[j] += mayHold(life, innermost.get(j)) ? shares[j] / sum / lives.size() : 0;
            }
        }
        return next;
    }

    private static boolean mayHold(Lifetime life, Mass mass) {
        boolean moment = mass.after() == mass.until();
        boolean exact = life.after() == life.until();
        boolean fromLeft =
                moment && !exact ? life.after() < mass.after() : life.after() <= mass.after();
        return fromLeft && mass.until() <= life.until();
    }
}
