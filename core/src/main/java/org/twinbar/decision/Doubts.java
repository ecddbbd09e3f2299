package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;

/**
 * The specimen of a group that lies so far from its fellows that chance does so one time in twenty
 * or less; it is named, never dropped.
 *
 * <p>Grubbs: G = max|x − x̄|/s against (n − 1)/√n · √(t²/(n − 2 + t²)), t the upper α/(2n) point of
 * Student's t with n − 2 degrees of freedom. With five specimens it sees gross errors only, and two
 * bad ones hide each other. Source: F. E. Grubbs, Procedures for detecting outlying observations in
 * samples (1969), doi:10.1080/00401706.1969.10490657; METHODS.md I.5.
 */
final class Doubts {

    private static final double ALPHA_TWO_SIDED = 0.05;
    private static final int FEWEST = 3;

    private Doubts() {}

    /** Returns the doubted specimen of a group, where there is one. */
    static Optional<Observation> doubted(Sample sample) {
        double[] values = sample.values();
        if (values.length < FEWEST) {
            return Optional.empty();
        }
        Summary summary = Summary.of(values);
        double sd = summary.sd();
        Observation farthest = null;
        double distance = -1;
        for (Observation observation : sample.numbers()) {
            if (observation.observed() instanceof Observed.Number number) {
                double off = Math.abs(number.value() - summary.mean());
                if (off > distance) {
                    distance = off;
                    farthest = observation;
                }
            }
        }
        return sd > 0 && distance / sd > critical(values.length)
                ? Optional.ofNullable(farthest)
                : Optional.empty();
    }

    /** Returns the two-sided 5 % point of Grubbs's G for n values, n ≥ 3. */
    static double critical(int n) {
        double t = new StudentT(n - 2).quantile(1 - ALPHA_TWO_SIDED / (2 * n));
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }
}
