package org.twinbar.decision;

import java.util.Arrays;
import java.util.stream.Collectors;

/** An interval that may be asked for beside the default one. */
public enum IntervalKind {
    FIELLER("fieller"),
    WELCH("welch"),
    LOG("log"),
    BCA("bca"),
    PERMUTATION("permutation");

    private final String word;

    IntervalKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** @throws QuestionException unless the word is one of {@link #word()} */
    public static IntervalKind parse(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new QuestionException("The interval '%s' is none of %s."
                        .formatted(
                                word,
                                Arrays.stream(values())
                                        .map(IntervalKind::word)
                                        .collect(Collectors.joining(", ")))));
    }
}
