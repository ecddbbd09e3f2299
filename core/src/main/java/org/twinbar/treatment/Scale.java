package org.twinbar.treatment;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A scale that shows mass in steps.
 *
 * @param step d, smallest step of the display (g)
 */
public record Scale(double step) {

    /** @throws TreatmentException unless the step is above zero */
    public Scale {
        Amounts.requirePositive(step, "scale's step", "g");
    }

    /** Returns the nearest mass that the scale can show (g); half a step goes up. */
    public double nearest(double grams) {
        BigDecimal decimalStep = BigDecimal.valueOf(step);
        return BigDecimal.valueOf(grams)
                .divide(decimalStep, 0, RoundingMode.HALF_UP)
                .multiply(decimalStep)
                .doubleValue();
    }

    /** Returns how many decimals the scale shows. */
    public int decimals() {
        return Math.max(0, BigDecimal.valueOf(step).stripTrailingZeros().scale());
    }

    /**
     * Returns the smallest batch from which on every batch of the recipe keeps each ratio within a
     * limit, with the targets rounded to what the scale shows and the display's half step against
     * them.
     *
     * <p>The rounded targets, and with them the worst error, stand still between the batches at
     * which one component's target changes its figure. Above M = d(1/w_i + (1 + L)/w_j)/L, w shares
     * of mass, no rounding can break the limit; from there the figures are followed downwards to
     * the first that breaks it, and the batch is that at which it begins to hold. Source:
     * METHODS.md G for the error; the search is our own.
     *
     * @param limit L, relative, 0.02 for 2 %
     * @return grams
     * @throws TreatmentException unless 0.001 ≤ L < 1
     */
    public double smallestBatch(Recipe recipe, double limit) {
        requireLimit(limit);
        return new Figures(recipe.massShares(), step).smallest(limit);
    }

    /**
     * Returns the smallest batch that keeps each ratio within a limit if the targets could be read
     * off exactly, from the display's half step alone: M = (d/2)(1/w_i + (1 + L)/w_j)/L (g).
     */
    public double smallestBatchByResolution(Recipe recipe, double limit) {
        return Ratios.enough(recipe.massShares(), step / 2, limit);
    }

    static void requireLimit(double limit) {
        if (!(limit >= 0.001 && limit < 1)) {
            throw new TreatmentException(
                    "The limit of the ratio must lie from 0.1 to 100 %%, not at %s %%."
                            .formatted(Amounts.written(100 * limit)));
        }
    }
}
