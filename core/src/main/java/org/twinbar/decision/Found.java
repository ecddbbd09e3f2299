package org.twinbar.decision;

/**
 * The effect that was found, on the effect's own scale, with the default interval of its kind.
 *
 * @param kind what the number is
 * @param estimate the effect as seen
 * @param low lower end
 * @param high upper end
 * @param level of the interval, 0.95 say
 * @param df degrees of freedom of the scatter that it rests on
 * @param method how it was calculated, in the words of a report
 * @param p how surprising the data are without an effect; for reference only
 */
public record Found(
        Effect kind,
        Amount estimate,
        Amount low,
        Amount high,
        double level,
        Amount df,
        String method,
        Amount p) {

    /** Returns the effect of which nothing but its estimate could be told. */
    static Found open(Effect kind, Amount estimate, double level, String method, String reason) {
        Amount none = Amount.none(reason);
        return new Found(kind, estimate, none, none, level, none, method, none);
    }

    /** Returns the lower end as the verdict rule reads it. */
    double lowest() {
        return low.orElse(Double.NEGATIVE_INFINITY);
    }

    /** Returns the upper end as the verdict rule reads it. */
    double highest() {
        return high.orElse(Double.POSITIVE_INFINITY);
    }
}
