package org.twinbar.specimen;

/** A shape or mesh that cannot be had so; the message is one sentence for whoever asked for it. */
public final class ShapeException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public ShapeException(String sentence) {
        super(sentence);
    }
}
