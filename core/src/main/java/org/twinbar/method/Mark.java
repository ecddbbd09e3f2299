package org.twinbar.method;

/** A place on a curve that a method finds and a person may move; it is an index of a row. */
public record Mark(String name, String label) implements Named {

    /** By name alone, as marks are found by it in every world. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
