package org.twinbar.treatment;

/** A mix or coat that cannot be had so; the message is one sentence for whoever asked for it. */
public final class TreatmentException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public TreatmentException(String sentence) {
        super(sentence);
    }
}
