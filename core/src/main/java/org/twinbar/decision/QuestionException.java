package org.twinbar.decision;

/** A question that cannot be asked so; the message is one sentence for whoever asked it. */
public final class QuestionException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public QuestionException(String sentence) {
        super(sentence);
    }
}
