package org.twinbar.method;

import java.util.List;

/**
 * One thing that a method asks for, and the ways in which it may be known.
 *
 * @param question what is asked, in plain words
 * @param need whether the method yields nothing without it
 * @param ways alternatives, the best first; each lists what it needs together
 */
public record Ask(String question, Need need, List<List<Named>> ways) {

    /** Whether a method can do without an answer. */
    public enum Need {
        REQUIRED,
        OPTIONAL
    }

    public Ask {
        if (ways.isEmpty() || ways.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("'" + question + "' has no way of being known");
        }
        ways = ways.stream().map(List::copyOf).toList();
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
}
