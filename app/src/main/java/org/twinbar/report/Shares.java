package org.twinbar.report;

import java.util.List;

/**
 * Specimens that say yes or no, group by group.
 *
 * @param yes what "yes" means, such as "leak-free"
 * @param no what "no" means
 */
public record Shares(String yes, String no, List<Group> groups) {

    public Shares {
        groups = List.copyOf(groups);
    }

    /** One group; a specimen whose answer is not known is in neither list. */
    public record Group(
            String name,
            Sign sign,
            List<String> saidYes,
            List<String> saidNo,
            List<String> unknown) {
        public Group {
            saidYes = List.copyOf(saidYes);
            saidNo = List.copyOf(saidNo);
            unknown = List.copyOf(unknown);
        }
    }
}
