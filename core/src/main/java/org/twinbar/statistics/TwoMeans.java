package org.twinbar.statistics;

import java.util.List;

/**
 * The means of a treated group and its control, with the errors that they share.
 *
 * <p>The means' own variances hold what differs from specimen to specimen. A shared error is in
 * neither; it is carried here, so that it cancels in a difference or a ratio as far as it does.
 * Source: METHODS.md J.5.
 *
 * @param treated mean of the treated group
 * @param control mean of the control
 * @param shared moves by shared errors, and by errors that one group alone has
 */
public record TwoMeans(MeanEstimate treated, MeanEstimate control, List<Shift> shared) {

    public TwoMeans {
        shared = List.copyOf(shared);
    }

    /** Two groups without shared errors. */
    public static TwoMeans of(MeanEstimate treated, MeanEstimate control) {
        return new TwoMeans(treated, control, List.of());
    }

    /** Two groups of values without shared errors. */
    public static TwoMeans of(double[] treated, double[] control) {
        return of(MeanEstimate.of(treated), MeanEstimate.of(control));
    }

    /** Treated and control exchanged. */
    public TwoMeans swapped() {
        return new TwoMeans(
                control, treated, shared.stream().map(Shift::swapped).toList());
    }

    int n() {
        return treated.n() + control.n();
    }

    /** The variance of treated − ratio · control: v_T + ρ²·v_C + Σ(Δ_T − ρΔ_C)². */
    double variance(double ratio) {
        double sum = treated.variance() + ratio * ratio * control.variance();
        for (Shift shift : shared) {
            sum += shift.of(ratio) * shift.of(ratio);
        }
        return sum;
    }

    /**
     * Satterthwaite's degrees of freedom of {@link #variance}: the square of the sum over the sum
     * of the squares, each over its own degrees of freedom. Where nothing varies there is nothing
     * to weigh, and the fewest of the two groups are taken.
     */
    double df(double ratio) {
        double fourth = ratio * ratio * ratio * ratio;
        double sum = square(treated.variance()) / treated.df()
                + fourth * square(control.variance()) / control.df();
        for (Shift shift : shared) {
            sum += square(square(shift.of(ratio))) / shift.df();
        }
        double all = square(variance(ratio));
        if (sum > 0) {
            return all / sum;
        }
        return all > 0 ? Double.POSITIVE_INFINITY : Math.min(treated.df(), control.df());
    }

    private static double square(double x) {
        return x * x;
    }
}
