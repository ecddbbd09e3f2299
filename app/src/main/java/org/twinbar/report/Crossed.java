package org.twinbar.report;

import java.util.List;
import java.util.Optional;

/**
 * What groups come to in several places, flat and upright say: where the lines run alike, the
 * treatment acts alike.
 *
 * @param up what was measured, with its unit
 * @param places in their order, two or more
 * @param groups the control first
 */
public record Crossed(String up, List<String> places, List<Group> groups) {

    public Crossed {
        places = List.copyOf(places);
        groups = List.copyOf(groups);
    }

    /**
     * One group.
     *
     * @param means one for each place; empty where the group has none there
     */
    public record Group(String name, Sign sign, List<Optional<Clusters.Mean>> means) {
        public Group {
            means = List.copyOf(means);
        }
    }
}
