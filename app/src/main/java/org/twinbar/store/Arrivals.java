package org.twinbar.store;

import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/**
 * When entries arrived last, by their place in the one order that all have. Entries are only added,
 * so that each question reads no more than what came since the one before it, from this program or
 * from another.
 */
final class Arrivals {

    private final Map<String, Long> lastAbout = new HashMap<>();
    private final Map<String, Long> lastOf = new HashMap<>();
    private long seen;

    /** Returns the place of the last entry on a subject; 0 where there is none. */
    long lastAbout(Handle handle, String subject) {
        catchUp(handle);
        return lastAbout.getOrDefault(subject, 0L);
    }

    /** Returns the place of the last entry of an aspect; 0 where there is none. */
    long lastOf(Handle handle, String aspect) {
        catchUp(handle);
        return lastOf.getOrDefault(aspect, 0L);
    }

    private void catchUp(Handle handle) {
        handle.createQuery("SELECT subject, aspect, max(arrival) AS last FROM entry"
                        + " WHERE arrival > :seen GROUP BY subject, aspect")
                .bind("seen", seen)
                .map((row, context) -> new Last(
                        row.getString("subject"), row.getString("aspect"), row.getLong("last")))
                .forEach(last -> {
                    lastAbout.merge(last.subject(), last.arrival(), Math::max);
                    lastOf.merge(last.aspect(), last.arrival(), Math::max);
                    seen = Math.max(seen, last.arrival());
                });
    }

    private record Last(String subject, String aspect, long arrival) {}
}
