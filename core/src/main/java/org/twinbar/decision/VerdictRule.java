package org.twinbar.decision;

/**
 * The rule that turns the ends of an interval into a verdict; exactly one row fits any pair of
 * ends.
 *
 * <p>It sees nothing but the ends, no change, and what is worth having. Source: DESIGN.md, "The
 * verdict rule".
 */
final class VerdictRule {

    private VerdictRule() {}

    /**
     * Returns the verdict on an interval.
     *
     * @param low lower end, −∞ where there is none
     * @param high upper end, at least {@code low}, ∞ where there is none
     * @throws IllegalArgumentException unless low ≤ high
     */
    static Verdict read(double low, double high, Question question) {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "An interval runs upwards, not from %s to %s.".formatted(low, high));
        }
        return switch (question.expectation()) {
            case HIGHER -> upward(low, high, question.none(), question.worth());
            case LOWER -> upward(-high, -low, -question.none(), -question.worth());
            case SAME -> within(low, high, question);
        };
    }

    /**
     * Returns the verdict on a level: supported where the lower limit of what the stated share of
     * parts reaches clears it, contradicted where the upper limit stays short of it.
     */
    static Verdict level(double low, double high, double level) {
        if (low >= level) {
            return Verdict.SUPPORTED;
        }
        return high < level ? Verdict.CONTRADICTED : Verdict.OPEN;
    }

    /** Returns whether the size that the claim names is reached; the question names one. */
    static Reach reach(double low, double high, Question question) {
        double claimed = question.claimed().orElseThrow();
        boolean upwards = question.expectation() == Expectation.HIGHER;
        if (upwards ? low >= claimed : high <= claimed) {
            return Reach.REACHED;
        }
        return (upwards ? high < claimed : low > claimed) ? Reach.NOT_REACHED : Reach.OPEN;
    }

    private static Verdict upward(double low, double high, double none, double worth) {
        if (worth > none ? low >= worth : low > none) {
            return Verdict.SUPPORTED;
        }
        if (high < none) {
            return Verdict.CONTRADICTED;
        }
        if (high < worth) {
            return Verdict.TOO_SMALL;
        }
        return low > none ? Verdict.BETTER_SIZE_OPEN : Verdict.OPEN;
    }

    private static Verdict within(double low, double high, Question question) {
        double size = question.worthSize().orElseThrow();
        double least = question.none() - size;
        double most = question.none() + size;
        if (least <= low && high <= most) {
            return Verdict.SUPPORTED;
        }
        return high < least || low > most ? Verdict.CONTRADICTED : Verdict.OPEN;
    }
}
