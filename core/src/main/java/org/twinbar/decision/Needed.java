package org.twinbar.decision;

import java.util.Optional;
import java.util.OptionalInt;

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
     * @param simulated what studies drawn from the scatter that was seen make of it
     * @param ifClaimHolds the same for the claimed size
     */
    record Specimens(
            int perGroup,
            Optional<InBlocks> blocks,
            double power,
            String method,
            String assuming,
            Optional<Simulated> simulated,
            Optional<Specimens> ifClaimHolds)
            implements Needed {

        Specimens(
                int perGroup,
                Optional<InBlocks> blocks,
                double power,
                String method,
                String assuming,
                Optional<Specimens> ifClaimHolds) {
            this(perGroup, blocks, power, method, assuming, Optional.empty(), ifClaimHolds);
        }

        Specimens with(Simulated drawn) {
            return new Specimens(
                    perGroup, blocks, power, method, assuming, Optional.of(drawn), ifClaimHolds);
        }

        /** Returns {@code 12 specimens per group}, with the runs that they come in. */
        public String words() {
            String specimens = perGroup + (perGroup == 1 ? " specimen" : " specimens");
            return blocks.map(in -> in.words(specimens)).orElse(specimens + " per group");
        }
    }

    /**
     * What studies drawn from the deviations that were seen make of a number, by the real rule.
     *
     * @param power share of them that end in "supported" with as many specimens as the exact way
     *     asks for
     * @param enough specimens per group, or runs of each, with which they have the power that is
     *     wanted; none where no number up to some hundred was enough
     * @param agrees whether that is what the exact way asks for, as far as so many studies tell
     * @param words the same in a sentence
     */
    record Simulated(double power, OptionalInt enough, boolean agrees, String words) {}

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
