package org.twinbar.report;

import java.util.Arrays;
import java.util.Set;

/**
 * The outlines of a font, of which those that a page does without are emptied in place.
 *
 * <p>Source: Adobe technical note 5176, The Compact Font Format Specification (2003), sections 4, 5
 * and 14; 5177 for the operator that ends an outline.
 */
final class CompactFont {

    private static final byte END_OF_OUTLINE = 14;
    private static final int OUTLINES = 17;
    private static final int ESCAPE = 12;

    private final byte[] font;

    private CompactFont(byte[] font) {
        this.font = font;
    }

    /** Returns the table, of the same length, with every outline empty but the used ones. */
    static byte[] emptied(byte[] table, Set<Integer> used) {
        CompactFont compact = new CompactFont(table.clone());
        Index names = compact.index(table[2]);
        Index top = compact.index(names.end());
        Index strings = compact.index(top.end());
        // Names of glyphs are for programs that edit fonts.
        Arrays.fill(compact.font, strings.from(0), strings.end(), (byte) 'x');
        Index outlines = compact.index(compact.offsetOf(OUTLINES, top.from(0), top.from(1)));
        for (int glyph = 0; glyph < outlines.count(); glyph++) {
            if (!used.contains(glyph)) {
                Arrays.fill(
                        compact.font,
                        outlines.from(glyph),
                        outlines.from(glyph + 1),
                        END_OF_OUTLINE);
            }
        }
        return compact.font;
    }

    /** A list of objects: where each begins; the one behind the last is the end. */
    private record Index(int[] starts) {
        int count() {
            return starts.length - 1;
        }

        int from(int at) {
            return starts[at];
        }

        int end() {
            return starts[starts.length - 1];
        }
    }

    private Index index(int at) {
        int count = number(at, 2);
        if (count == 0) {
            return new Index(new int[] {at + 2});
        }
        int size = number(at + 2, 1);
        int data = at + 3 + size * (count + 1) - 1;
        int[] starts = new int[count + 1];
        for (int i = 0; i <= count; i++) {
            starts[i] = data + number(at + 3 + size * i, size);
        }
        return new Index(starts);
    }

    /** Returns the operand of an operator in a dictionary of numbers, each before its operator. */
    private int offsetOf(int operator, int from, int to) {
        int operand = 0;
        int at = from;
        while (at < to) {
            int first = number(at, 1);
            if (first <= 21) {
                if (first == operator) {
                    return operand;
                }
                at += first == ESCAPE ? 2 : 1;
            } else if (first == 30) {
                at = endOfReal(at + 1);
            } else {
                operand = integer(first, at);
                at += first == 28 ? 3 : first == 29 ? 5 : first <= 246 ? 1 : 2;
            }
        }
        throw new IllegalArgumentException("the font has no outlines");
    }

    private int integer(int first, int at) {
        if (first == 28) {
            return (short) number(at + 1, 2);
        }
        if (first == 29) {
            return number(at + 1, 4);
        }
        if (first <= 246) {
            return first - 139;
        }
        int second = number(at + 1, 1);
        return first <= 250
                ? (first - 247) * 256 + second + 108
                : -(first - 251) * 256 - second - 108;
    }

    /** A real number is written in half bytes, of which fifteen is the end. */
    private int endOfReal(int from) {
        int at = from;
        while ((number(at, 1) & 15) != 15 && number(at, 1) >> 4 != 15) {
            at++;
        }
        return at + 1;
    }

    private int number(int at, int bytes) {
        int value = 0;
        for (int i = 0; i < bytes; i++) {
            value = (value << 8) | (font[at + i] & 0xff);
        }
        return value;
    }
}
