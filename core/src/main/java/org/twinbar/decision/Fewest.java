package org.twinbar.decision;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.twinbar.statistics.Normal;

/** Looks for the fewest specimens with which a study has the power that is wanted. */
final class Fewest {

    /** What is wanted unless something else is said; common practice, no source. */
    static final double POWER = 0.8;

    /** Beyond it nobody makes specimens. */
    static final int MOST = 10_000;

    /** A simulated chance is asked for at so many numbers at most, and for fewer specimens. */
    private static final int MOST_LOOKS = 6;

    private static final int MOST_SIMULATED = 200;

    /** Nearer than this share of their number a simulation can't tell two numbers apart. */
    private static final double NEAR = 0.05;

    private static final double LEAST_SHARE = 0.005;
    private static final double INTERVAL_POINT = 1.96;

    /** A number with the chance that it has. */
    record Reached(int n, double power) {}

    private Fewest() {}

    /**
     * Returns the fewest where the chance grows with the number; empty where 10 000 are too few.
     */
    static Optional<Reached> growing(IntToDoubleFunction power, int from) {
        int high = from;
        while (power.applyAsDouble(high) < POWER) {
            if (high >= MOST) {
                return Optional.empty();
            }
            high = Math.min(MOST, 2 * high);
        }
        int low = Math.max(from - 1, high / 2);
        if (high == from) {
            low = from - 1;
        }
        while (high - low > 1) {
            int middle = low + (high - low) / 2;
            if (power.applyAsDouble(middle) < POWER) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(new Reached(high, power.applyAsDouble(high)));
    }

    /**
     * Returns the fewest where the chance goes up and down a little, as it does when outcomes are
     * counted: every number is tried up to a limit, and from there on it is taken to grow.
     */
    static Optional<Reached> first(
            IntToDoubleFunction power, int from, int everyOneUpTo, int most) {
        for (int n = from; n <= everyOneUpTo; n++) {
            double reached = power.applyAsDouble(n);
            if (reached >= POWER) {
                return Optional.of(new Reached(n, reached));
            }
        }
        return growing(n -> n > most ? 1 : power.applyAsDouble(n), everyOneUpTo + 1)
                .filter(reached -> reached.n() <= most);
    }

    /**
     * Returns about the fewest where the chance is simulated.
     *
     * <p>Φ⁻¹(power) + 1.96 grows like √n where an interval is about normal, which gives the next
     * number to be tried; between one that is too few and one that is enough, until they are as
     * near as a simulation can tell.
     */
    static Optional<Reached> simulated(IntToDoubleFunction power, int start, int from) {
        int few = from - 1;
        int n = Math.max(from, Math.min(start, MOST_SIMULATED));
        Optional<Reached> enough = Optional.empty();
        for (int look = 0; look < MOST_LOOKS; look++) {
            double reached = power.applyAsDouble(n);
            if (reached >= POWER) {
                enough = Optional.of(new Reached(n, reached));
            } else {
                few = n;
            }
            int most = enough.map(Reached::n).orElse(MOST_SIMULATED + 1);
            if (most - few <= Math.max(1, NEAR * most)) {
                break;
            }
            n = Math.max(few + 1, Math.min(most - 1, next(n, reached)));
        }
        return enough;
    }

    private static int next(int n, double power) {
        double share = Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, power));
        double perRoot = (Normal.STANDARD.quantile(share) + INTERVAL_POINT) / Math.sqrt(n);
        double root = (Normal.STANDARD.quantile(POWER) + INTERVAL_POINT) / Math.max(perRoot, 1e-3);
        return (int) Math.min(MOST, Math.ceil(root * root));
    }
}
