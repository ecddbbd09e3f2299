package org.twinbar.study.judged;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * One thing that was read on a specimen, as it came.
 *
 * @param column the header that it stood under
 * @param text what stood there, or what was typed first
 * @param file where it stood, or the table that had no value there
 * @param line the line in that file, counted from 1
 * @param typed who typed it and when, where the file had no value
 * @param corrected what it was corrected to, where it was
 * @param picture name of the photo or film on which what counts was measured, where it was
 */
public record Reading(
        String column,
        String text,
        KeptFile file,
        int line,
        Optional<Typed> typed,
        Optional<Corrected> corrected,
        Optional<String> picture) {

    /** A reading that stands in a file. */
    public static Reading inFile(
            String column, String text, KeptFile file, int line, Optional<Corrected> corrected) {
        return new Reading(column, text, file, line, Optional.empty(), corrected, Optional.empty());
    }

    /** A reading that was typed into a cell without one. */
    public record Typed(String text, ZonedDateTime when, String who) {}

    /** What a reading was corrected to; what stood there stays beside it. */
    public record Corrected(String text, Change change) {}

    /** Returns what counts: the correction, where there is one. */
    public String counting() {
        return corrected.map(Corrected::text).orElse(text);
    }
}
