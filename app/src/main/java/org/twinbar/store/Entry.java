package org.twinbar.store;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * One thing that somebody said of a subject, and when.
 *
 * @param id made by whoever enters it, so that a retry is known as one
 * @param subject what it is about: an identity, never a label
 * @param aspect what of it, such as {@code specimen} or {@code left out}
 * @param value JSON
 * @param at when, to the millisecond
 * @param zone the zone that it was entered in
 * @param who as they named themselves
 * @param reason why; a correction needs one
 * @param supersedes the entry of the same subject and aspect that this one takes the place of
 */
public record Entry(
        UUID id,
        String subject,
        String aspect,
        String value,
        Instant at,
        ZoneId zone,
        String who,
        Optional<String> reason,
        Optional<UUID> supersedes) {

    public Entry {
        at = at.truncatedTo(ChronoUnit.MILLIS);
        requireText("subject", subject);
        requireText("aspect", aspect);
        requireText("value", value);
        requireText("who", who);
        reason.ifPresent(words -> requireText("reason", words));
        if (supersedes.isPresent() && reason.isEmpty()) {
            throw new StoreException("a correction of %s needs a reason".formatted(aspect));
        }
        if (supersedes.filter(id::equals).isPresent()) {
            throw new StoreException("entry %s can't supersede itself".formatted(id));
        }
    }

    private static void requireText(String what, String text) {
        if (text.isBlank()) {
            throw new StoreException("an entry needs its %s".formatted(what));
        }
    }

    /** Whether another entry is this one, sent again: all but the time is the same. */
    boolean isRetriedBy(Entry other) {
        return id.equals(other.id)
                && subject.equals(other.subject)
                && aspect.equals(other.aspect)
                && value.equals(other.value)
                && who.equals(other.who)
                && Objects.equals(reason, other.reason)
                && supersedes.equals(other.supersedes);
    }
}
