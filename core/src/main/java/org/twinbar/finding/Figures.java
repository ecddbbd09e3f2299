package org.twinbar.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they stand in the sentence of a finding, the same in every locale. */
public final class Figures {

    private Figures() {}

    /** Returns a number with three figures, never as a power of ten. */
    public static String three(double value) {
        return rounded(value, 3);
    }

    /** Returns a number with four figures, never as a power of ten. */
    public static String four(double value) {
        return rounded(value, 4);
    }

    /** Returns a number with two figures, never as a power of ten. */
    public static String two(double value) {
        return rounded(value, 2);
    }

    private static String rounded(double value, int figures) {
        if (value == 0 || !Double.isFinite(value)) {
            return "0";
        }
        int whole = (int) Math.floor(StrictMath.log10(Math.abs(value))) + 1;
        return BigDecimal.valueOf(value)
                .setScale(Math.max(0, figures - whole), RoundingMode.HALF_UP)
                .toPlainString();
    }
}
