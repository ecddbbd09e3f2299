package org.twinbar.study;

import java.util.Optional;
import java.util.UUID;

/** What became of a reading that was typed; all but {@link Saved} wrote nothing. */
public sealed interface Typed {

    /**
     * It is kept.
     *
     * @param entry the last entry on the cell, none where nothing was ever said of it
     */
    record Saved(Optional<UUID> entry) implements Typed {}

    /** It is unusual, and the person is asked whether it stays. */
    record Doubted(String sentence) implements Typed {}

    /** It takes the place of another value, and the person is asked why. */
    record WhyAsked(String before) implements Typed {}

    /**
     * Somebody else said something of the cell that the form had not seen.
     *
     * @param theirs what counts now
     * @param who said so
     * @param entry theirs, for whoever wants to put theirs aside
     */
    record Conflict(String theirs, String who, Optional<UUID> entry) implements Typed {}
}
