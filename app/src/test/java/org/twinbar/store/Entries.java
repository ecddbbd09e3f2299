package org.twinbar.store;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;

/** Entries for tests: only what a test is about is said. */
final class Entries {

    static final Instant NOON = Instant.parse("2026-05-04T10:00:00.123Z");
    static final ZoneId ZONE = ZoneId.of("Europe/Rome");

    private Entries() {}

    static Entry said(String subject, String value) {
        return said(UUID.randomUUID(), subject, value);
    }

    static Entry said(UUID id, String subject, String value) {
        return new Entry(
                id,
                subject,
                "width",
                value,
                NOON,
                ZONE,
                "the sailing club",
                Optional.empty(),
                Optional.empty());
    }

    static Entry correcting(Entry before, String value, String reason) {
        return new Entry(
                UUID.randomUUID(),
                before.subject(),
                before.aspect(),
                value,
                NOON.plusSeconds(60),
                ZONE,
                "the sailing club",
                Optional.of(reason),
                Optional.of(before.id()));
    }
}
