package org.twinbar.specimen;

import java.math.BigDecimal;
import java.math.MathContext;

/** Guards of sizes, and how sentences write them. */
final class Sizes {

    private static final MathContext FOUR_FIGURES = new MathContext(4);

    private Sizes() {}

    /** Written so that NaN fails it. */
    static void requirePositive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new ShapeException(
                    "The %s must be above zero and finite, not %s.".formatted(name, value));
        }
    }

    /** Returns a finite number with at most four figures and none that says nothing. */
    static String text(double value) {
        return new BigDecimal(value, FOUR_FIGURES).stripTrailingZeros().toPlainString();
    }
}
