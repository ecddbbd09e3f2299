package org.twinbar.study;

import java.util.Optional;

/**
 * One thing that was read on a specimen, as it came.
 *
 * @param column the header that it stood under
 * @param text what stood there
 * @param file where it stood
 * @param line the line in that file, counted from 1
 * @param corrected what it was corrected to, where it was
 */
public record Reading(
        String column, String text, KeptFile file, int line, Optional<Corrected> corrected) {

    /** What a reading was corrected to; what stood there stays beside it. */
    public record Corrected(String text, Change change) {}

    /** Returns what counts: the correction, where there is one. */
    public String counting() {
        return corrected.map(Corrected::text).orElse(text);
    }
}
