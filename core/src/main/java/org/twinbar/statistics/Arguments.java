package org.twinbar.statistics;

import java.math.BigDecimal;
import java.util.Locale;

/** Guards of arguments, each written so that NaN fails it, and how their messages write a share. */
public final class Arguments {

    private Arguments() {}

    public static double requireFinite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw refused("The %s must be a finite number, not %s.", name, value);
        }
        return value;
    }

    public static double requirePositive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused("The %s must be above zero and finite, not %s.", name, value);
        }
        return value;
    }

    public static double requireNotNegative(double value, String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused("The %s must be zero or more and finite, not %s.", name, value);
        }
        return value;
    }

    /** Infinite degrees of freedom say that the variance is known. */
    public static double requireDegreesOfFreedom(double value) {
        if (!(value > 0)) {
            throw refused("The %s must be above zero, not %s.", "degrees of freedom", value);
        }
        return value;
    }

    public static double requireShare(double value, String name) {
        if (!(value >= 0 && value <= 1)) {
            throw refused("The %s must lie from 0 to 1, not %s.", name, value);
        }
        return value;
    }

    /** A level, a power or an error rate: neither never nor always. */
    public static double requireInside(double value, String name) {
        if (!(value > 0 && value < 1)) {
            throw refused("The %s must lie between 0 and 1, not %s.", name, value);
        }
        return value;
    }

    public static int requireAtLeast(int value, int least, String name) {
        if (value < least) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "The %s must be at least %d, not %d.", name, least, value));
        }
        return value;
    }

    public static double[] requireFinite(double[] values, int least, String name) {
        requireAtLeast(values.length, least, "number of " + name);
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "Number %d of the %s must be finite, not %s.",
                        i + 1,
                        name,
                        values[i]));
            }
        }
        return values;
    }

    /** A share as people read it: 0.95 is 95 %. */
    public static String perCent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString()
                + " %";
    }

    public static IllegalArgumentException refused(String format, String name, double value) {
        return new IllegalArgumentException(String.format(Locale.ROOT, format, name, value));
    }
}
