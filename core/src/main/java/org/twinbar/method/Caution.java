package org.twinbar.method;

/** A danger of the step, said where the step is done. */
public record Caution(String text) {
    public Caution {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a caution needs its words");
        }
    }
}
