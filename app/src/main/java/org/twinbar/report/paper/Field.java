package org.twinbar.report.paper;

import java.util.List;

/**
 * Something to be written down by pen.
 *
 * @param label what it is
 * @param unit in which it is written; empty where it has none
 * @param how it is read: the instrument and its smallest step
 * @param times at how many places it is read
 * @param choices words of which one is marked; empty where anything may stand
 */
public record Field(String label, String unit, String how, int times, List<String> choices) {

    public Field {
        choices = List.copyOf(choices);
        if (times < 1) {
            throw new IllegalArgumentException(label + " is read " + times + " times");
        }
    }

    /** Returns a field for words. */
    static Field words(String label) {
        return new Field(label, "", "", 1, List.of());
    }

    /** Returns a field for a number. */
    static Field number(String label, String unit) {
        return new Field(label, unit, "", 1, List.of());
    }
}
