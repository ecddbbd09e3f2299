package org.twinbar.statistics;

/** The difference of two shares, treated minus control. */
public final class ShareDifference {

    private ShareDifference() {}

    /**
     * The interval of Agresti and Caffo.
     *
     * <p>One "yes" and one "no" are added to each group, p̃ = (x + 1)/(n + 2), and p̃_T − p̃_C ±
     * z·√(Σp̃(1 − p̃)/(n + 2)), cut at ±1. The estimate is the difference as seen. Source: A.
     * Agresti, B. Caffo, Simple and effective confidence intervals for proportions and differences
     * of proportions result from adding two successes and two failures (2000),
     * doi:10.1080/00031305.2000.10474560.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static Estimate agrestiCaffo(Count treated, Count control, double level) {
        double z = Normal.STANDARD.quantile((1 + Arguments.requireInside(level, "level")) / 2);
        double shareT = (treated.yes() + 1.0) / (treated.n() + 2);
        double shareC = (control.yes() + 1.0) / (control.n() + 2);
        double middle = shareT - shareC;
        double half = z
                * Math.sqrt(shareT * (1 - shareT) / (treated.n() + 2)
                        + shareC * (1 - shareC) / (control.n() + 2));
        return estimate(treated, control, middle - half, middle + half, level, "Agresti–Caffo");
    }

    /**
     * {@link #agrestiCaffo} with an exact guard: where Fisher's exact two-sided p is above 1 −
     * level, the end nearer to no difference becomes no difference.
     *
     * <p>Six specimens cannot prove what chance alone gives one time in ten. Source: COMMANDS.md.
     */
    public static Estimate guarded(Count treated, Count control, double level) {
        Estimate free = agrestiCaffo(treated, control, level);
        if (free.holds(0) || !(FisherExact.twoSided(treated, control).p() > 1 - level)) {
            return free;
        }
        return estimate(
                treated,
                control,
                Math.min(0, free.low()),
                Math.max(0, free.high()),
                level,
                "Agresti–Caffo, held at no difference by Fisher's exact test");
    }

    /**
     * Newcombe's hybrid score interval, from the score intervals of the two shares.
     *
     * <p>d − √((p_T − l_T)² + (u_C − p_C)²) to d + √((u_T − p_T)² + (p_C − l_C)²). Source: R. G.
     * Newcombe, Interval estimation for the difference between independent proportions (1998),
     * method 10, doi:10.1002/(SICI)1097-0258(19980430)17:8<873::AID-SIM779>3.0.CO;2-I.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static Estimate newcombe(Count treated, Count control, double level) {
        Estimate t = Share.score(treated, level);
        Estimate c = Share.score(control, level);
        double difference = t.value() - c.value();
        return estimate(
                treated,
                control,
                difference - hypotenuse(t.value() - t.low(), c.high() - c.value()),
                difference + hypotenuse(t.high() - t.value(), c.value() - c.low()),
                level,
                "Newcombe's hybrid score");
    }

    private static double hypotenuse(double one, double other) {
        return Math.sqrt(one * one + other * other);
    }

    private static Estimate estimate(
            Count treated, Count control, double low, double high, double level, String method) {
        double difference = treated.share() - control.share();
        return new Estimate(
                difference,
                Math.max(-1, low),
                Math.min(1, high),
                level,
                Double.POSITIVE_INFINITY,
                treated.n() + control.n(),
                method);
    }
}
