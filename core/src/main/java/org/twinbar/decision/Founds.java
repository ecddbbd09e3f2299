package org.twinbar.decision;

import org.twinbar.statistics.Estimate;

/** Estimates of the statistics as effects that were found. */
final class Founds {

    private Founds() {}

    static Found of(Effect kind, Estimate estimate, Amount p) {
        return new Found(
                kind,
                Amount.finite(estimate.value(), Wording.NO_BOUND),
                Amount.finite(estimate.low(), Wording.NO_BOUND),
                Amount.finite(estimate.high(), Wording.NO_BOUND),
                estimate.level(),
                Amount.finite(estimate.df(), Wording.NO_SCATTER),
                estimate.method(),
                p);
    }
}
