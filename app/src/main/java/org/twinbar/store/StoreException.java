package org.twinbar.store;

import java.util.Objects;

/** Says in one sentence what is wrong with a workspace, or with what was to be written to it. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public StoreException(String message) {
        super(message);
    }

    StoreException(String message, Throwable cause) {
        super(message, cause);
    }

    /** The sentence; there always is one. */
    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
