package org.twinbar.report;

import java.util.List;

/**
 * The share of specimens to which something has not happened yet, over time.
 *
 * @param across time, with its unit
 * @param up what the share is of, such as "still dry"
 */
public record Survival(String across, String up, List<Group> groups) {

    public Survival {
        groups = List.copyOf(groups);
    }

    /** One group's specimens. */
    public record Group(String name, Sign sign, List<Time> times) {
        public Group {
            times = List.copyOf(times);
        }
    }

    /** When it happened to a specimen, or until when it had not. */
    public record Time(String specimen, double time, End end) {}

    /** How the watching of a specimen ended. */
    public enum End {
        HAPPENED,
        WATCHING_ENDED
    }
}
