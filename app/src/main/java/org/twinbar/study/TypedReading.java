package org.twinbar.study;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.study.table.OnPicture;

/**
 * What a person typed into one field, and what they knew when they did.
 *
 * @param method of the test
 * @param specimen its code
 * @param column header of the field
 * @param text as typed; empty takes the reading away again
 * @param seen the last entry on the cell that the form had seen, none where there was none
 * @param why the reason, where it takes the place of something
 * @param doubt whether the person stands by a value that was doubted
 * @param noted when it was typed, where that is not now
 * @param picture how it was had, where that was from a picture
 */
public record TypedReading(
        String method,
        String specimen,
        String column,
        String text,
        Optional<UUID> seen,
        Optional<String> why,
        Doubt doubt,
        Optional<Instant> noted,
        Optional<OnPicture> picture) {

    /** Whether a person stands by an unusual value. */
    public enum Doubt {
        /** They have not been asked. */
        ASK,
        /** They were asked, and it stays. */
        CONFIRMED
    }

    /** What was typed by hand. */
    public TypedReading(
            String method,
            String specimen,
            String column,
            String text,
            Optional<UUID> seen,
            Optional<String> why,
            Doubt doubt,
            Optional<Instant> noted) {
        this(method, specimen, column, text, seen, why, doubt, noted, Optional.empty());
    }

    public TypedReading {
        text = text.strip();
        why = why.map(String::strip).filter(words -> !words.isEmpty());
    }
}
