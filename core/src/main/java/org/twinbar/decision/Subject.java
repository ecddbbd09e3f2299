package org.twinbar.decision;

import org.twinbar.quantity.Unit;

/**
 * What is compared, in words.
 *
 * @param label the property, such as {@code tensile strength}
 * @param unit unit of its values
 * @param things what the specimens are called, such as {@code bars}
 */
public record Subject(String label, Unit unit, String things) {

    public Subject {
        if (label.isBlank() || things.isBlank()) {
            throw new IllegalArgumentException("What is compared needs a name.");
        }
    }

    public static Subject of(String label, Unit unit) {
        return new Subject(label, unit, "specimens");
    }
}
