package org.twinbar.decision;

import java.util.Optional;

/** What would settle an open question. */
public sealed interface Needed {

    /** Returns what would if the claimed size were the true one, where that can be reckoned. */
    Optional<Specimens> ifClaimHolds();

    /**
     * So many specimens.
     *
     * @param perGroup specimens in each group
     * @param blocks the print runs, mixes or units that they come in, where those are what counts
     * @param power chance that the verdict would be "supported" with them, if the assumption holds
     * @param method how the chance was reckoned, in the words of a report
     * @param assuming what the true effect and scatter are taken to be, in words
     * @param ifClaimHolds the same for the claimed size
     */
    record Specimens(
            int perGroup,
            Optional<InBlocks> blocks,
            double power,
            String method,
            String assuming,
            Optional<Specimens> ifClaimHolds)
            implements Needed {

        /** Returns {@code 12 specimens per group}, with the runs that they come in. */
        public String words() {
            String specimens = perGroup + (perGroup == 1 ? " specimen" : " specimens");
            return blocks.map(in -> in.words(specimens)).orElse(specimens + " per group");
        }
    }

    /**
     * What specimens were made in.
     *
     * @param number how many
     * @param kind what it is, such as {@code print run}
     * @param holding whether each holds both groups
     */
    record InBlocks(int number, String kind, Holding holding) {

        String words(String specimens) {
            String many = Written.count(number, kind);
            return switch (holding) {
                case BOTH_GROUPS -> many + " (" + specimens + " per group)";
                case ONE_GROUP -> many + " per group (" + specimens + ")";
            };
        }
    }

    /** Whether blocks hold both groups. */
    enum Holding {
        BOTH_GROUPS,
        ONE_GROUP
    }

    /** No number of specimens, or none is needed, for this reason. */
    record None(String reason, Optional<Specimens> ifClaimHolds) implements Needed {

        public None(String reason) {
            this(reason, Optional.empty());
        }
    }
}
