package org.twinbar.planning.claim;

import java.util.List;
import java.util.Optional;

/**
 * Something that the guide asks.
 *
 * @param key what the answer goes by
 * @param question in plain words
 * @param why what hangs on it
 * @param options to choose from; where the answer is a size or a name, what is often taken
 * @param answer what was answered, what the words of the claim say, or what is usual
 * @param need whether there is no question without it
 * @param kind what sort of answer is asked for
 */
public record Prompt(
        String key,
        String question,
        String why,
        List<Option> options,
        Optional<String> answer,
        Need need,
        Kind kind) {

    /** Whether there is no question without an answer. */
    public enum Need {
        NEEDED,
        OPTIONAL
    }

    /** What sort of answer is asked for. */
    public enum Kind {
        /** One of the options. */
        CHOICE,
        /** One or more of the options, with commas between. */
        CHOICES,
        /** A number with its unit. */
        SIZE,
        /** A few words. */
        WORDS
    }

    /**
     * One answer.
     *
     * @param value what is answered
     * @param label what people read
     * @param leads what it leads to; may be empty
     */
    public record Option(String value, String label, String leads) {}

    public Prompt {
        options = List.copyOf(options);
    }

    /** Returns whether the guide waits for it. */
    public boolean waits() {
        return need == Need.NEEDED && answer.isEmpty();
    }
}
