package org.twinbar.planning;

import org.twinbar.statistics.PlannedEffect;

/**
 * What a study expects and what would be worth having, as people say it, made a planned effect.
 *
 * <p>The sign of the expected change says which way; what is worth having is a size on that side.
 */
public final class Expected {

    private Expected() {}

    /**
     * Returns a change of the mean relative to the control's.
     *
     * @param change expected, 0.15 for 15 % more, −0.15 for 15 % less
     * @param worth smallest size worth having, 0.05 for 5 % more or less; 0 where any will do
     * @param scatter standard deviation of a specimen over the mean, the same in both groups
     * @throws PlanException unless change > −1, 0 ≤ worth < |change| and 0 < scatter < 1
     */
    public static PlannedEffect ratio(double change, double worth, double scatter) {
        if (!(scatter > 0 && scatter < 1)) {
            throw new PlanException(
                    "The scatter must lie above 0 and below 100 %% of the mean, not at %s %%."
                            .formatted(written(100 * scatter)));
        }
        if (!(change > -1 && change < Double.POSITIVE_INFINITY)) {
            throw new PlanException("The expected change must be above −100 %%, not %s %%."
                    .formatted(written(100 * change)));
        }
        requireWorth(change, worth, 100, " %");
        return new PlannedEffect.Ratio(1 + change, 1 + Math.signum(change) * worth, scatter);
    }

    /**
     * Returns a change of the mean by an amount.
     *
     * @param change expected, in the unit of the scatter
     * @param worth smallest size worth having; 0 where any will do
     * @param scatter standard deviation of a specimen, the same in both groups
     * @throws PlanException unless scatter > 0 and 0 ≤ worth < |change|
     */
    public static PlannedEffect difference(double change, double worth, double scatter) {
        if (!(scatter > 0 && scatter < Double.POSITIVE_INFINITY)) {
            throw new PlanException(
                    "The scatter must be above zero, not %s.".formatted(written(scatter)));
        }
        requireWorth(change, worth, 1, "");
        return new PlannedEffect.Difference(change, Math.signum(change) * worth, scatter);
    }

    private static void requireWorth(double change, double worth, double times, String unit) {
        if (!(Math.abs(change) > 0 && Math.abs(change) < Double.POSITIVE_INFINITY)) {
            throw new PlanException(
                    "An expected change of none is never told from none, by any number of specimens.");
        }
        if (!(worth >= 0 && worth < Double.POSITIVE_INFINITY)) {
            throw new PlanException("The change worth having is a size of zero or more, not %s%s."
                    .formatted(written(times * worth), unit));
        }
        if (!(worth < Math.abs(change))) {
            throw new PlanException(
                    "The expected change of %s%s must be larger than the %s%s worth having, or no number of specimens shows it."
                            .formatted(
                                    written(times * Math.abs(change)),
                                    unit,
                                    written(times * worth),
                                    unit));
        }
    }

    private static String written(double value) {
        return Double.isFinite(value)
                ? java.math.BigDecimal.valueOf(value)
                        .round(new java.math.MathContext(4))
                        .stripTrailingZeros()
                        .toPlainString()
                : "no number";
    }
}
