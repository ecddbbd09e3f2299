package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.finding.Finding;

/**
 * One thing that a comparison takes for granted, and what the readings say of it.
 *
 * @param what such as {@code spread} or {@code order of testing}
 * @param words what was seen, in a sentence
 * @param p how surprising the readings are if it holds, for reference only
 * @param doubt what a person should know, where it is doubted
 */
public record Ground(String what, String words, Amount p, Optional<Finding> doubt) {

    static Ground untold(String what, String words) {
        return new Ground(what, words, Amount.none(words), Optional.empty());
    }

    static Ground holds(String what, String words, double p) {
        return new Ground(what, words, Amount.of(p), Optional.empty());
    }

    static Ground doubted(String what, Finding finding, double p) {
        return new Ground(what, finding.text(), Amount.of(p), Optional.of(finding));
    }
}
