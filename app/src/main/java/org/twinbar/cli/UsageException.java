package org.twinbar.cli;

/** Says in one sentence how a command was called wrongly. */
final class UsageException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UsageException(String message) {
        super(message);
    }
}
