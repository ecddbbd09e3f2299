package org.twinbar.decision;

import java.util.Objects;

/** A question that cannot be asked so; the message is one sentence for whoever asked it. */
public final class QuestionException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public QuestionException(String sentence) {
        super(sentence);
    }

    /** The sentence; there always is one. */
    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
