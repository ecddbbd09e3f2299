package org.twinbar.method;

/** A part of a description that has a name: what is asked for, set, marked or yielded. */
public sealed interface Named permits Input, Words, Channel, Setting, Choice, Mark, Property {

    /** Returns the name, words joined by underscores, without a unit. */
    String name();

    /** Returns what people read, beginning with a capital letter. */
    String label();

    /** Returns the column's header: the name and, where there is one, the unit. */
    default String column() {
        return name();
    }
}
