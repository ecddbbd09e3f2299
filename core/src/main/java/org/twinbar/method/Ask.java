package org.twinbar.method;

import java.util.List;

/**
 * One thing that a method asks for, and the ways in which it may be known.
 *
 * @param question what is asked, in plain words
 * @param need whether the method yields nothing without it
 * @param ways alternatives, the best first; each lists what it needs together
 * @param times how often it is answered at the bench
 */
public record Ask(String question, Need need, List<List<Named>> ways, Times times) {

    /** Whether a method can do without an answer. */
    public enum Need {
        REQUIRED,
        OPTIONAL
    }

    /** How often something is answered, as a rule: a table may hold it for each specimen anyway. */
    public enum Times {
        EACH_SPECIMEN,
        /** As the span of the supports, which stands for all specimens of a test. */
        ONCE
    }

    public Ask {
        if (ways.isEmpty() || ways.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("'" + question + "' has no way of being known");
        }
        ways = ways.stream().map(List::copyOf).toList();
    }

    /** Something that is asked of each specimen. */
    public Ask(String question, Need need, List<List<Named>> ways) {
        this(question, need, ways, Times.EACH_SPECIMEN);
    }

    /** Returns something without which the method yields nothing. */
    @SafeVarargs
    @SuppressWarnings("varargs")
    public static Ask required(String question, List<Named>... ways) {
        return new Ask(question, Need.REQUIRED, List.of(ways));
    }

    /** Returns something without which the method yields less. */
    @SafeVarargs
    @SuppressWarnings("varargs")
    public static Ask optional(String question, List<Named>... ways) {
        return new Ask(question, Need.OPTIONAL, List.of(ways));
    }

    /** Returns this as something that is answered once for all specimens. */
    public Ask once() {
        return new Ask(question, need, ways, Times.ONCE);
    }
}
