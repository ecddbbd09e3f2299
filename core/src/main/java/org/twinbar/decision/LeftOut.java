package org.twinbar.decision;

import java.time.ZonedDateTime;

/**
 * Why a specimen doesn't count; it stays listed.
 *
 * @param who as they named themselves
 * @param when with the zone that it was done in
 * @param why their reason
 * @param sight whether its value was known by then; if so, the weaker of two verdicts stands
 */
public record LeftOut(String who, ZonedDateTime when, String why, Sight sight) {

    /** Whether the specimen's value was known when it was left out. */
    public enum Sight {
        BEFORE_VALUE_WAS_SEEN("before its value was seen"),
        AFTER_VALUE_WAS_SEEN("after its value was seen");

        private final String words;

        Sight(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public LeftOut {
        if (why.isBlank()) {
            throw new IllegalArgumentException("Leaving a specimen out needs a reason.");
        }
    }
}
