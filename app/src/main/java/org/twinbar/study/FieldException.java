package org.twinbar.study;

import java.util.Objects;

/** Says in one sentence what is wrong with one field of a form, so that it can stand beside it. */
public final class FieldException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    public FieldException(String field, String sentence) {
        super(sentence);
        this.field = field;
    }

    /** Returns the name of the field. */
    public String field() {
        return field;
    }

    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
