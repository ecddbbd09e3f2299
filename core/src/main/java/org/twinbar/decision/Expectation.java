package org.twinbar.decision;

/**
 * Which way a claim points on the scale of its effect: for a rate, "lower" means that it happens
 * more slowly.
 */
public enum Expectation {
    HIGHER("higher"),
    LOWER("lower"),
    SAME("same");

    private final String word;

    Expectation(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
