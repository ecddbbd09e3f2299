package org.twinbar.exchange;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** What the writing of a cell tells about the decimal mark of its file. */
enum Numeral {
    BLANK,
    TEXT,
    /** A word for a value that is not there, such as {@code NaN}. */
    MISSING,
    WHOLE,
    /** {@code 12.5}: can only be a decimal point. */
    POINT,
    /** {@code 12,5}: can only be a decimal comma. */
    COMMA,
    /** {@code 1.234}: a decimal point, or groups of three digits. */
    MAYBE_POINT,
    /** {@code 1,234}: a decimal comma, or groups of three digits. */
    MAYBE_COMMA,
    /** {@code 1,234.5} or {@code 1,234,567}. */
    POINT_GROUPED,
    /** {@code 1.234,5} or {@code 1.234.567}. */
    COMMA_GROUPED;

    private static final Set<String> MISSING_WORDS =
            Set.of("nan", "inf", "+inf", "-inf", "infinity", "-infinity", "n/a", "na", "null", "-");
    private static final int LONGEST_MISSING = 9;

    private static final Pattern GROUPED_BY_COMMA =
            Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d*)?");
    private static final Pattern GROUPED_BY_POINT =
            Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+(,\\d*)?");

    boolean isNumber() {
        return ordinal() >= WHOLE.ordinal();
    }

    static Numeral of(String cell) {
        int length = cell.length();
        if (length == 0) {
            return BLANK;
        }
        char first = cell.charAt(0);
        int start = first == '+' || first == '-' || first == '−' ? 1 : 0;
        int digits = 0;
        int points = 0;
        int commas = 0;
        int mark = -1;
        int end = start;
        for (; end < length; end++) {
            char c = cell.charAt(end);
            if (c >= '0' && c <= '9') {
                digits++;
            } else if (c == '.' || c == ',') {
                points += c == '.' ? 1 : 0;
                commas += c == ',' ? 1 : 0;
                mark = end;
            } else {
                break;
            }
        }
        if (digits == 0 || !isExponent(cell, end)) {
            return isMissing(cell) ? MISSING : TEXT;
        }
        if (points + commas == 0) {
            return WHOLE;
        }
        if (points + commas > 1) {
            return grouped(cell, end);
        }
        int before = mark - start;
        boolean maybeGroups = end == length
                && end - mark == 4
                && before >= 1
                && before <= 3
                && cell.charAt(start) != '0';
        if (points == 1) {
            return maybeGroups ? MAYBE_POINT : POINT;
        }
        return maybeGroups ? MAYBE_COMMA : COMMA;
    }

    private static Numeral grouped(String cell, int end) {
        String plain = cell.substring(0, end).replace('−', '-');
        if (GROUPED_BY_COMMA.matcher(plain).matches()) {
            return POINT_GROUPED;
        }
        return GROUPED_BY_POINT.matcher(plain).matches() ? COMMA_GROUPED : TEXT;
    }

    /** Returns whether the rest of a number is empty or a power of ten. */
    private static boolean isExponent(String cell, int from) {
        int length = cell.length();
        if (from == length) {
            return true;
        }
        if ((cell.charAt(from) | 0x20) != 'e') {
            return false;
        }
        int i = from + 1;
        if (i < length && (cell.charAt(i) == '+' || cell.charAt(i) == '-')) {
            i++;
        }
        boolean any = i < length;
        for (; i < length; i++) {
            any &= cell.charAt(i) >= '0' && cell.charAt(i) <= '9';
        }
        return any;
    }

    private static boolean isMissing(String cell) {
        return cell.length() <= LONGEST_MISSING
                && MISSING_WORDS.contains(cell.toLowerCase(Locale.ROOT));
    }
}
