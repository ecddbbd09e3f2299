package org.twinbar.planning;

/** A plan that cannot be kept or proves nothing; the message is one sentence with the way out. */
public final class PlanException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public PlanException(String sentence) {
        super(sentence);
    }
}
