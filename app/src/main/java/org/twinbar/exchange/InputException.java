package org.twinbar.exchange;

import java.util.Objects;
import java.util.Optional;

/**
 * Says in one sentence what is wrong with what somebody gave Twinbar to read.
 *
 * <p>The message is complete: it names file, line, column, value and limit as far as there are any.
 * The command line ends with status 2, a page answers with 400; nothing was written.
 */
public final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Optional<Place> place;

    public InputException(String message) {
        super(message);
        this.place = Optional.empty();
    }

    public InputException(Place place, String message) {
        super(message);
        this.place = Optional.of(place);
    }

    /** Where it stands; empty where the message is about no file. */
    public Optional<Place> place() {
        return place;
    }

    /** The sentence; there always is one. */
    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
