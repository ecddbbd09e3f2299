package org.twinbar.study;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/**
 * One thing that a person does to a workspace.
 *
 * @param id made by whoever asks for it, so that a retry is done once
 * @param who as they name themselves
 */
public record Act(UUID id, String who) {

    private static final String FIRST = "0";

    /** Returns an act that is nobody's retry. */
    public static Act by(String who) {
        return new Act(UUID.randomUUID(), who);
    }

    /** Returns the identity of one of several things that an act makes, the same in a retry. */
    UUID entry(String part) {
        return UUID.nameUUIDFromBytes((id + " " + part).getBytes(StandardCharsets.UTF_8));
    }

    UUID entry(int number) {
        return entry(Integer.toString(number));
    }

    /** Whether an entry is the first that this act makes. */
    public boolean wrote(UUID entry) {
        return entry.equals(entry(FIRST));
    }
}
