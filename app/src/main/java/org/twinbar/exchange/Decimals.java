package org.twinbar.exchange;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;

/**
 * Reads plain decimal numbers straight from bytes, one after another: no thousands marked off, and
 * no sign but {@code +} and {@code -}. One thread at a time uses it.
 */
final class Decimals {

    /** Powers of ten that doubles hold exactly. */
    private static final double[] EXACT_POWERS = new double[23];

    /** Whole numbers up to this one are exact as doubles. */
    private static final long LARGEST_EXACT = 1L << 53;

    /** Digits that a long holds whatever they are. */
    private static final int MOST_DIGITS = 18;

    /** Beyond this an exponent is read no further: the number is zero or too large already. */
    private static final int LARGEST_EXPONENT = 10_000;

    private static final int NO_EXPONENT = Integer.MIN_VALUE;

    static {
        EXACT_POWERS[0] = 1;
        for (int i = 1; i < EXACT_POWERS.length; i++) {
            EXACT_POWERS[i] = 10 * EXACT_POWERS[i - 1];
        }
    }

    private int end;

    /** Returns the first byte behind the number that was read last. */
    int end() {
        return end;
    }

    /**
     * Returns the double nearest to the plain decimal number that begins at a byte, and remembers
     * where it {@linkplain #end ends}; NaN where none begins there, or it is not finite.
     *
     * <p>A number of at most 53 bits times a power of ten up to 22 is one multiplication or
     * division of exact doubles, rounded once (W. D. Clinger, How to read floating point numbers
     * accurately, 1990, section 4); others are left to the library.
     */
    double read(byte[] bytes, int start, int limit, byte mark) {
        int at = start;
        boolean negative = at < limit && bytes[at] == '-';
        at += negative || at < limit && bytes[at] == '+' ? 1 : 0;
        int first = at;
        int markedAt = -1;
        long digits = 0;
        for (; at < limit; at++) {
            int digit = bytes[at] - '0';
            if (digit >= 0 && digit <= 9) {
                digits = 10 * digits + digit;
            } else if (bytes[at] == mark && markedAt < 0) {
                markedAt = at;
            } else {
                break;
            }
        }
        int written = at - first - (markedAt < 0 ? 0 : 1);
        end = at;
        if (written <= 0) {
            return Double.NaN;
        }
        int power = markedAt < 0 ? 0 : markedAt + 1 - at;
        if (at < limit && (bytes[at] | 0x20) == 'e') {
            int exponent = exponent(bytes, at + 1, limit);
            if (exponent == NO_EXPONENT) {
                return Double.NaN;
            }
            power += exponent;
        }
        if (written <= MOST_DIGITS
                && digits <= LARGEST_EXACT
                && Math.abs(power) < EXACT_POWERS.length) {
            double value = power < 0 ? digits / EXACT_POWERS[-power] : digits * EXACT_POWERS[power];
            return negative ? -value : value;
        }
        return byLibrary(bytes, start, end, mark);
    }

    /** Returns the power of ten that stands there, and moves the end behind it. */
    private int exponent(byte[] bytes, int from, int limit) {
        int at = from;
        boolean negative = at < limit && bytes[at] == '-';
        at += negative || at < limit && bytes[at] == '+' ? 1 : 0;
        int first = at;
        int exponent = 0;
        for (; at < limit && bytes[at] >= '0' && bytes[at] <= '9'; at++) {
            exponent = Math.min(LARGEST_EXPONENT, 10 * exponent + bytes[at] - '0');
        }
        end = at;
        return at == first ? NO_EXPONENT : negative ? -exponent : exponent;
    }

    private static double byLibrary(byte[] bytes, int start, int end, byte mark) {
        double value;
        if (mark == '.') {
            value = JavaDoubleParser.parseDouble(bytes, start, end - start);
        } else {
            byte[] pointed = new byte[end - start];
            for (int i = 0; i < pointed.length; i++) {
                pointed[i] = bytes[start + i] == mark ? (byte) '.' : bytes[start + i];
            }
            value = JavaDoubleParser.parseDouble(pointed);
        }
        return Double.isFinite(value) ? value : Double.NaN;
    }
}
