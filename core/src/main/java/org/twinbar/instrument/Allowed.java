package org.twinbar.instrument;

/**
 * How far a reading may lie from the line of its calibration.
 *
 * @param limit in the instrument's unit, above zero
 * @param words as somebody stated it, such as {@code 0.5 % of the range}
 */
public record Allowed(double limit, String words) {

    /** @throws IllegalArgumentException unless the limit is above zero and finite */
    public Allowed {
        if (!(limit > 0 && limit < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the limit %s is %s, must be above 0".formatted(words, limit));
        }
    }
}
