package org.twinbar.decision;

/** The answer to a question. */
public enum Verdict {
    SUPPORTED("supported"),
    BETTER_SIZE_OPEN("better, size open"),
    OPEN("open"),
    TOO_SMALL("too small"),
    CONTRADICTED("contradicted"),
    /** No test on a home bench can establish it: conditions, evidence, who decides. */
    NOT_FOR_THIS_BENCH("not for this bench");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /**
     * Returns the one of two verdicts that says less. Two that point opposite ways leave the
     * question open: whoever leaves a specimen out after its value was seen chooses between them.
     */
    public Verdict weakerOf(Verdict other) {
        if (this == other) {
            return this;
        }
        if (this == NOT_FOR_THIS_BENCH || other == NOT_FOR_THIS_BENCH) {
            return NOT_FOR_THIS_BENCH;
        }
        if (Integer.signum(says()) != Integer.signum(other.says())) {
            return OPEN;
        }
        return Math.abs(says()) < Math.abs(other.says()) ? this : other;
    }

    /** How much is said for the claim (above zero) or against it. */
    private int says() {
        return switch (this) {
            case SUPPORTED -> 2;
            case BETTER_SIZE_OPEN -> 1;
            case OPEN, NOT_FOR_THIS_BENCH -> 0;
            case TOO_SMALL -> -1;
            case CONTRADICTED -> -2;
        };
    }
}
