package org.twinbar.specimen;

/** Guards of sizes; written so that NaN fails them. */
final class Sizes {

    private Sizes() {}

    static void requirePositive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The %s must be above zero and finite, not %s.".formatted(name, value));
        }
    }
}
