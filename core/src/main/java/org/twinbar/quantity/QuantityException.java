package org.twinbar.quantity;

import java.util.Objects;

/** Says in one sentence why a text is not a quantity, or why two units don't go together. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public QuantityException(String message) {
        super(message);
    }

    /** The sentence; there always is one. */
    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
