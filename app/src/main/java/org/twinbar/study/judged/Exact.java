package org.twinbar.study.judged;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Numbers as text that reads back as the same double, in as few digits as that takes.
 *
 * <p>The text is the same on every JDK; that of {@code Double.toString} changed in JDK 19.
 */
public final class Exact {

    private static final int ALWAYS_ENOUGH = 17;
    private static final int OFTEN_ENOUGH = 15;

    /** Whole numbers below are written without an exponent. */
    private static final double LARGEST_PLAIN = 1e15;

    private Exact() {}

    /** @throws IllegalArgumentException unless the value is finite */
    public static String of(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("%s is no number to be kept".formatted(value));
        }
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_PLAIN) {
            return Long.toString((long) value);
        }
        BigDecimal whole = new BigDecimal(value);
        BigDecimal text = whole;
        for (int digits = OFTEN_ENOUGH; digits <= ALWAYS_ENOUGH; digits++) {
            text = whole.round(new MathContext(digits));
            if (text.doubleValue() == value) {
                break;
            }
        }
        return text.stripTrailingZeros().toString();
    }
}
