package org.twinbar.statistics;

/** The share of parts that are "yes", from a few specimens. */
public final class Share {

    private Share() {}

    /**
     * The exact two-sided interval (Clopper–Pearson).
     *
     * <p>Beta⁻¹(α/2; x, n − x + 1) to Beta⁻¹(1 − α/2; x + 1, n − x); 0 and 1 at the ends of the
     * scale. It covers at least as often as it says, at few specimens more often. Source: C. J.
     * Clopper, E. S. Pearson, The use of confidence or fiducial limits illustrated in the case of
     * the binomial (1934), doi:10.1093/biomet/26.4.404.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static Estimate exact(Count count, double level) {
        double tail = (1 - Arguments.requireInside(level, "level")) / 2;
        return new Estimate(
                count.share(),
                lower(count, tail),
                upper(count, tail),
                level,
                Double.POSITIVE_INFINITY,
                count.n(),
                "Clopper–Pearson, exact");
    }

    /**
     * The exact one-sided upper limit: at most this share of all parts is "yes".
     *
     * <p>With none in n it is 1 − (1 − confidence)^(1/n): none of 5 leaves up to 45 % at 95 %.
     */
    public static double exactUpperLimit(Count count, double confidence) {
        return upper(count, 1 - Arguments.requireInside(confidence, "confidence"));
    }

    /** The exact one-sided lower limit: at least this share of all parts is "yes". */
    public static double exactLowerLimit(Count count, double confidence) {
        return lower(count, 1 - Arguments.requireInside(confidence, "confidence"));
    }

    /**
     * The score interval (Wilson).
     *
     * <p>The shares p with (p̂ − p)² ≤ z²·p(1 − p)/n. Shorter than the exact one, and right on
     * average over shares rather than for each. Source: E. B. Wilson, Probable inference, the law
     * of succession, and statistical inference (1927), doi:10.1080/01621459.1927.10502953.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static Estimate score(Count count, double level) {
        double z = Normal.STANDARD.quantile((1 + Arguments.requireInside(level, "level")) / 2);
        double n = count.n();
        double share = count.share();
        double middle = share + z * z / (2 * n);
        double half = z * Math.sqrt(share * (1 - share) / n + z * z / (4 * n * n));
        double scale = 1 + z * z / n;
        double low = count.yes() == 0 ? 0 : (middle - half) / scale;
        double high = count.no() == 0 ? 1 : (middle + half) / scale;
        return new Estimate(
                share, low, high, level, Double.POSITIVE_INFINITY, count.n(), "Wilson's score");
    }

    private static double lower(Count count, double tail) {
        return count.yes() == 0 ? 0 : new Beta(count.yes(), count.no() + 1).quantile(tail);
    }

    private static double upper(Count count, double tail) {
        return count.no() == 0 ? 1 : new Beta(count.yes() + 1, count.no()).quantile(1 - tail);
    }
}
