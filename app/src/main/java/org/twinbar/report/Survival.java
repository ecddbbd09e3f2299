package org.twinbar.report;

import java.util.List;
import org.twinbar.statistics.LeftOver;

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

    /**
     * One group's specimens.
     *
     * @param falls of the share left, in the order of time
     */
    public record Group(String name, Sign sign, List<Time> times, List<LeftOver.Fall> falls) {
        public Group {
            times = List.copyOf(times);
            falls = List.copyOf(falls);
        }
    }

    /**
     * When it happened to a specimen, or until when it had not.
     *
     * @param from the look before, where two looks enclose it; else the same as {@code time}
     */
    public record Time(String specimen, double from, double time, End end) {
        public Time(String specimen, double time, End end) {
            this(specimen, time, time, end);
        }
    }

    /** How the watching of a specimen ended. */
    public enum End {
        HAPPENED,
        WATCHING_ENDED
    }
}
