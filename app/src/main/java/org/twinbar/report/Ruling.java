package org.twinbar.report;

import org.twinbar.decision.Comparison;
import org.twinbar.decision.Found;
import org.twinbar.decision.Question;
import org.twinbar.decision.Verdict;

/**
 * How the verdict reads off the interval, said of the interval itself, so that a sentence is true
 * even where something else made the verdict weaker.
 */
enum Ruling {
    BEYOND_WORTH(Verdict.SUPPORTED, "All of it lies at or beyond what is worth having."),
    BEYOND_NONE(Verdict.SUPPORTED, "All of it lies beyond no change."),
    OTHER_SIDE(Verdict.CONTRADICTED, "All of it lies on the other side of no change."),
    SHORT_OF_WORTH(Verdict.TOO_SMALL, "All of it lies short of what is worth having."),
    AROUND_WORTH(
            Verdict.BETTER_SIZE_OPEN,
            "All of it lies beyond no change, but what is worth having lies within it."),
    AROUND_BOTH(Verdict.OPEN, "It takes in no change, and what is worth having too."),
    AROUND_NONE(Verdict.OPEN, "It takes in no change."),
    INSIDE(Verdict.SUPPORTED, "All of it lies within what counts as no change."),
    OUTSIDE(Verdict.CONTRADICTED, "All of it lies beyond what counts as no change."),
    ACROSS_EDGE(
            Verdict.OPEN, "It reaches beyond what counts as no change, and takes some of it in."),
    ENDLESS(Verdict.OPEN, "There is no finite interval, so that nothing can be read off it.");

    private static final String WEAKER =
            " The verdict says less than this interval alone would: what limits it stands below.";

    private final Verdict alone;
    private final String words;

    Ruling(Verdict alone, String words) {
        this.alone = alone;
        this.words = words;
    }

    Verdict alone() {
        return alone;
    }

    /** Returns the sentence for a comparison. */
    static String of(Comparison comparison) {
        Found found = comparison.found();
        Ruling ruling = of(
                comparison.question(),
                found.low().orElse(Double.NEGATIVE_INFINITY),
                found.high().orElse(Double.POSITIVE_INFINITY));
        return ruling.words + (ruling.alone == comparison.verdict() ? "" : WEAKER);
    }

    static Ruling of(Question question, double low, double high) {
        if (Double.isInfinite(low) && Double.isInfinite(high)) {
            return ENDLESS;
        }
        return switch (question.expectation()) {
            case HIGHER -> upward(low, high, question.none(), question.worth());
            case LOWER -> upward(-high, -low, -question.none(), -question.worth());
            case SAME -> alike(question, low, high);
        };
    }

    private static Ruling upward(double low, double high, double none, double worth) {
        if (worth > none ? low >= worth : low > none) {
            return worth > none ? BEYOND_WORTH : BEYOND_NONE;
        }
        if (high < none) {
            return OTHER_SIDE;
        }
        if (high < worth) {
            return SHORT_OF_WORTH;
        }
        if (low > none) {
            return AROUND_WORTH;
        }
        return worth > none ? AROUND_BOTH : AROUND_NONE;
    }

    private static Ruling alike(Question question, double low, double high) {
        double most = question.worth();
        double least = 2 * question.none() - most;
        if (least <= low && high <= most) {
            return INSIDE;
        }
        return high < least || low > most ? OUTSIDE : ACROSS_EDGE;
    }
}
