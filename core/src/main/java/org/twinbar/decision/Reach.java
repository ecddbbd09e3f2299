package org.twinbar.decision;

/** Whether the size that a claim names is reached. */
public enum Reach {
    REACHED("reached"),
    NOT_REACHED("not reached"),
    OPEN("open");

    private final String word;

    Reach(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
