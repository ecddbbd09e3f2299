package org.twinbar.decision;

/**
 * Specimens that were printed, coated, heated or paired together.
 *
 * @param kind what it is, such as {@code print run}, {@code mix} or {@code oven load}
 * @param name which one
 */
public record Block(String kind, String name) {

    public Block {
        if (kind.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("A block needs to be named, and to say what it is.");
        }
    }
}
