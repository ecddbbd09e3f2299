package org.twinbar.planning.resolving;

import java.util.List;
import org.twinbar.method.Property;

/**
 * What a bench can tell apart.
 *
 * @param property what is compared
 * @param value typical value of it
 * @param perGroup specimens per group
 * @param own standard uncertainty of one result from errors of its own
 * @param apart standard uncertainty of the difference from what one group has and the other not
 * @param scatter standard deviation of one result from specimen to specimen
 * @param fromInstruments if the specimens of a group were all alike
 * @param withScatter as they are
 * @param limits where the uncertainty that stays in a comparison comes from, the largest share
 *     first
 * @param cancelling what moves both groups alike, the largest first
 * @param levers what would help, the best first
 */
public record Resolution(
        Property property,
        double value,
        int perGroup,
        double own,
        double apart,
        double scatter,
        Smallest fromInstruments,
        Smallest withScatter,
        List<Part> limits,
        List<Shared> cancelling,
        List<Lever> levers) {

    public Resolution {
        limits = List.copyOf(limits);
        cancelling = List.copyOf(cancelling);
        levers = List.copyOf(levers);
    }

    /**
     * One source of what stays in a comparison.
     *
     * @param name of the source, without the specimen's
     * @param u standard uncertainty that it brings one result
     * @param share of the variance, from 0 to 1
     */
    public record Part(String name, double u, double share) {}

    /**
     * One source that both groups share.
     *
     * @param u standard uncertainty that it brings any single value
     */
    public record Shared(String name, double u) {}

    /**
     * One change, and what it would do.
     *
     * @param change in words: what, instead of what
     * @param fromInstruments afterwards
     * @param withScatter afterwards
     * @param doubts codes of findings that the changed test would raise and the present one does
     *     not
     */
    public record Lever(
            String change, Smallest fromInstruments, Smallest withScatter, List<String> doubts) {
        public Lever {
            doubts = List.copyOf(doubts);
        }
    }
}
