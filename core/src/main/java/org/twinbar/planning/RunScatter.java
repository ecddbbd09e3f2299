package org.twinbar.planning;

/**
 * Scatter of specimens that were made in print runs.
 *
 * <p>Where a whole run has one treatment the run is the unit. The mean of a run of k specimens
 * scatters by √(σ_B² + σ_e²/k), σ_B from run to run and σ_e within one. Source: METHODS.md I.6.
 *
 * @param between σ_B, in the unit of the effect, or a share of the mean
 * @param within σ_e, likewise
 * @param perRun k, specimens in a run
 */
public record RunScatter(double between, double within, int perRun) {

    /** @throws PlanException unless both are zero or more, not both zero, and 1 ≤ k ≤ 1000 */
    public RunScatter {
        requireScatter(between, "between runs");
        requireScatter(within, "within a run");
        if (!(between + within > 0)) {
            throw new PlanException("Without any scatter one run per group would tell everything.");
        }
        if (perRun < 1 || perRun > 1000) {
            throw new PlanException(
                    "A print run has from 1 to 1000 specimens, not %s.".formatted(perRun));
        }
    }

    /** Returns the standard deviation of a run's mean. */
    public double ofRunMean() {
        return Math.sqrt(between * between + within * within / perRun);
    }

    private static void requireScatter(double value, String where) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new PlanException(
                    "The scatter %s must be zero or more, not %s.".formatted(where, value));
        }
    }
}
