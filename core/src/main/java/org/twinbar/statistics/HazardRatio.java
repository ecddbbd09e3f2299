package org.twinbar.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How much more often it happens to the treated, at any moment, than to the control: below 1 where
 * the treatment helps.
 *
 * <p>The interval holds every ratio e^β at which the score of Cox's partial likelihood, ties by
 * Efron, is within z of zero: U(β)²/I(β) ≤ z². The score needs no maximum, so that it also answers
 * where one group had no event: the interval then has one end, and 0 or ∞ in place of the other.
 * The normal point z is an approximation that gets better with the number of events, not of
 * specimens.
 *
 * <p>Specimens that were made in strata, print runs say, are compared within each: its risk sets
 * are its own, and the scores and their variances are summed, so that a run whose parts all fail
 * early tells nothing for or against the treatment.
 *
 * <p>Where times are known only to lie between two looks, their order within is anyone's. The lower
 * end is then that of the order which favours the treated most (theirs late, the control's early),
 * the upper end that of the opposite order, and the estimate that of the middles: as wide as what
 * was not seen deserves, instead of pretending to exact times. Likelihood methods for such data (a
 * shared baseline between looks) give shorter intervals, but lean on many specimens where we have a
 * few.
 *
 * <p>Sources: D. R. Cox, Regression models and life-tables (1972); B. Efron, The efficiency of
 * Cox's likelihood function for censored data (1977), doi:10.1080/01621459.1977.10480613;
 * METHODS.md E.
 */
public sealed interface HazardRatio {

    /** The method's name where times lie between looks. */
    String BETWEEN = "score of the partial likelihood, widest over the times between looks";

    /** Which ends the data set. */
    enum Ends {
        /** Both. */
        BOTH,
        /** An upper end alone: it happened to no treated specimen while a control was at risk. */
        UPPER,
        /**
         * A lower end alone: it happened to no control specimen while a treated one was at risk.
         */
        LOWER
    }

    /**
     * An interval.
     *
     * @param estimate the ratio; 0 with lower end 0, or ∞ with upper end ∞, where only the other
     *     end is set
     * @param ends which ends the data set
     * @param test the score at a ratio of 1, squared over its variance, with one degree of freedom
     */
    record Known(Estimate estimate, Ends ends, Significance test) implements HazardRatio {}

    /**
     * Nothing is known of the ratio.
     *
     * @param reason a sentence
     */
    record Unknown(String reason) implements HazardRatio {}

    /**
     * The hazard ratio of two groups.
     *
     * @param level of the interval, 0.95 say
     * @throws IllegalArgumentException if a group is empty, or unless 0 < level < 1
     */
    static HazardRatio of(List<Lifetime> treated, List<Lifetime> control, double level) {
        return of(Stratum.one(treated, control), level);
    }

    /**
     * The hazard ratio of two groups in strata, taken for the same in each.
     *
     * @throws IllegalArgumentException if a group is empty in all strata, or unless 0 < level < 1
     */
    static HazardRatio of(List<Stratum> strata, double level) {
        int n = Stratum.count(strata);
        Arguments.requireInside(level, "level");
        if (strata.stream().noneMatch(Stratum::isAnyBetweenLooks)) {
            return PartialLikelihood.of(strata).invert(level, n);
        }
        return widest(
                at(strata, Look.MIDDLE, Look.MIDDLE).invert(level, n),
                at(strata, Look.LAST, Look.FIRST).invert(level, n),
                at(strata, Look.FIRST, Look.LAST).invert(level, n));
    }

    private static PartialLikelihood at(List<Stratum> strata, Look treated, Look control) {
        return PartialLikelihood.of(strata.stream()
                .map(one -> new Stratum(each(one.treated(), treated), each(one.control(), control)))
                .toList());
    }

    /**
     * Whether the interval of {@link #of} lies below a ratio, without looking for its ends.
     *
     * <p>It does where the standardised score is below −z at that ratio. For whoever judges
     * thousands of studies; a test holds both to each other.
     *
     * @param ratio to lie below, above zero
     * @throws IllegalArgumentException under the conditions of {@link #of}
     */
    static boolean liesBelow(double ratio, List<Stratum> strata, double level) {
        if (strata.stream().noneMatch(Stratum::isAnyBetweenLooks)) {
            return PartialLikelihood.of(strata).excludesFrom(ratio, level);
        }
        return at(strata, Look.FIRST, Look.LAST).excludesFrom(ratio, level)
                && at(strata, Look.MIDDLE, Look.MIDDLE).excludesFrom(ratio, level);
    }

    /** Whether the interval of {@link #of} lies above a ratio: below its inverse, turned round. */
    static boolean liesAbove(double ratio, List<Stratum> strata, double level) {
        return liesBelow(
                1 / ratio,
                strata.stream()
                        .map(each -> new Stratum(each.control(), each.treated()))
                        .toList(),
                level);
    }

    private static HazardRatio widest(HazardRatio middle, HazardRatio best, HazardRatio worst) {
        if (!(middle instanceof Known m)
                || !(best instanceof Known b)
                || !(worst instanceof Known w)) {
            return new Unknown(
                    "Between the looks at which something was found changed, the order of the specimens is "
                            + "unknown, and some orders say nothing of the hazard ratio.");
        }
        double low = Math.min(m.estimate().low(), b.estimate().low());
        double high = Math.max(m.estimate().high(), w.estimate().high());
        if (low == 0 && high == Double.POSITIVE_INFINITY) {
            return new Unknown(
                    "Between the looks at which something was found changed, the order of the specimens is "
                            + "unknown, and depending on it the hazard ratio may be anything.");
        }
        Estimate estimate = new Estimate(
                m.estimate().value(),
                low,
                high,
                m.estimate().level(),
                m.estimate().df(),
                m.estimate().n(),
                BETWEEN);
        Ends ends =
                low == 0 ? Ends.UPPER : high == Double.POSITIVE_INFINITY ? Ends.LOWER : Ends.BOTH;
        return new Known(estimate, ends, weakest(m, b, w));
    }

    /**
     * Where one order speaks for the treated and another against, some order between shows nothing
     * at all.
     */
    private static Significance weakest(Known middle, Known best, Known worst) {
        if (best.estimate().value() < 1 && worst.estimate().value() > 1) {
            return new Significance(0, 1, 1, BETWEEN + ", two-sided");
        }
        Significance weakest = Stream.of(middle.test(), best.test(), worst.test())
                .max(Comparator.comparingDouble(Significance::p))
                .orElseThrow();
        return new Significance(
                weakest.statistic(), weakest.df(), weakest.p(), BETWEEN + ", two-sided");
    }

    static List<Lifetime> each(List<Lifetime> lives, Look look) {
        return lives.stream()
                .map(life -> switch (look) {
                    case FIRST -> life.atFirst();
                    case MIDDLE -> life.atMiddle();
                    case LAST -> life.atLast();
                })
                .toList();
    }

    /** Where between two looks a time is put. */
    enum Look {
        FIRST,
        MIDDLE,
        LAST
    }
}
