package org.twinbar.decision;

import java.math.BigDecimal;
import java.util.stream.DoubleStream;

/** The smallest step of values, as their decimals show it. */
final class Step {

    private Step() {}

    /**
     * Returns one unit of the last decimal that any of the values has, and 1 for whole numbers.
     *
     * <p>Zeros at the end of what was read are lost in a number, so that the step may be taken
     * coarser than it was, never finer.
     */
    static double of(DoubleStream values) {
        int decimals = values.mapToInt(
                        value -> BigDecimal.valueOf(value).stripTrailingZeros().scale())
                .max()
                .orElse(0);
        return BigDecimal.ONE.movePointLeft(Math.max(0, decimals)).doubleValue();
    }
}
