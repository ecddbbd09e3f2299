package org.twinbar.exchange;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;

/** Reads plain decimal numbers straight from the bytes of a line. */
final class Decimals {

    /** Powers of ten that doubles hold exactly. */
    private static final double[] EXACT_POWERS = new double[23];

    /** Whole numbers up to this one are exact as doubles. */
    private static final long LARGEST_EXACT = 1L << 53;

    /** Digits that a long holds whatever they are. */
    private static final int MOST_DIGITS = 18;

    /** Beyond this an exponent is read no further: the number is zero or too large already. */
    private static final int LARGEST_EXPONENT = 10_000;

    static {
        EXACT_POWERS[0] = 1;
        for (int i = 1; i < EXACT_POWERS.length; i++) {
            EXACT_POWERS[i] = 10 * EXACT_POWERS[i - 1];
        }
    }

    private Decimals() {}

    /**
     * Returns the double nearest to the number that stands in a range of bytes, or NaN where no
     * plain, finite decimal number does: no thousands marked off, no sign but {@code +} and
     * {@code -}, nothing beside it but spaces.
     *
     * <p>A number of at most 53 bits times a power of ten up to 22 is one multiplication or
     * division of exact doubles, rounded once (W. D. Clinger, How to read floating point numbers
     * accurately, 1990, section 4); others are left to the library.
     */
    static double parse(byte[] bytes, int from, int to, byte mark) {
        int start = from;
        int end = to;
        while (start < end && bytes[start] == ' ') {
            start++;
        }
        while (end > start && bytes[end - 1] == ' ') {
            end--;
        }
        int at = start;
        boolean negative = at < end && bytes[at] == '-';
        at += negative || at < end && bytes[at] == '+' ? 1 : 0;
        long digits = 0;
        int significant = 0;
        int decimals = 0;
        boolean any = false;
        boolean marked = false;
        for (; at < end; at++) {
            int digit = bytes[at] - '0';
            if (digit >= 0 && digit <= 9) {
                any = true;
                significant += significant > 0 || digit > 0 ? 1 : 0;
                digits = 10 * digits + digit;
                decimals += marked ? 1 : 0;
            } else if (bytes[at] == mark && !marked) {
                marked = true;
            } else {
                break;
            }
        }
        if (!any) {
            return Double.NaN;
        }
        int power = -decimals;
        if (at < end) {
            int exponent = exponent(bytes, at, end);
            if (exponent == Integer.MIN_VALUE) {
                return Double.NaN;
            }
            power += exponent;
        }
        if (significant <= MOST_DIGITS
                && digits <= LARGEST_EXACT
                && Math.abs(power) < EXACT_POWERS.length) {
            double value = power < 0 ? digits / EXACT_POWERS[-power] : digits * EXACT_POWERS[power];
            return negative ? -value : value;
        }
        return byLibrary(bytes, start, end, mark);
    }

    /** Returns the power of ten that stands there; the least integer where none does. */
    private static int exponent(byte[] bytes, int from, int end) {
        if ((bytes[from] | 0x20) != 'e') {
            return Integer.MIN_VALUE;
        }
        int at = from + 1;
        boolean negative = at < end && bytes[at] == '-';
        at += negative || at < end && bytes[at] == '+' ? 1 : 0;
        if (at == end) {
            return Integer.MIN_VALUE;
        }
        int exponent = 0;
        for (; at < end; at++) {
            int digit = bytes[at] - '0';
            if (digit < 0 || digit > 9) {
                return Integer.MIN_VALUE;
            }
            exponent = Math.min(LARGEST_EXPONENT, 10 * exponent + digit);
        }
        return negative ? -exponent : exponent;
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
