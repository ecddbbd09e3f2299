package org.twinbar.quantity;

import java.util.regex.Pattern;

/**
 * Reads one number as people write it, with a decimal comma or a decimal point.
 *
 * <p>Groups of three digits may be parted by the mark that is not the decimal mark, by a narrow or
 * unbreakable blank, or by an apostrophe. A mark that parts anything but three digits is refused
 * rather than passed over: {@code 1.5} in a file of decimal commas is not fifteen.
 */
public final class Numbers {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern MAYBE_THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");
    private static final Pattern GROUPED_BY_COMMA =
            Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d*)?");
    private static final Pattern GROUPED_BY_POINT =
            Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+(,\\d*)?");
    private static final Pattern SEVERAL_GROUPS = Pattern.compile("[+-]?\\d{1,3}([.,])\\d{3}\\1.*");

    private static final String BLANKS = "['\u2019\u00a0\u202f\u2009]";
    private static final Pattern ANY_BLANK = Pattern.compile(BLANKS);
    private static final Pattern GROUPED_BY_BLANK = Pattern.compile(
            "[+-]?\\d{1,3}(" + BLANKS + "\\d{3})*([.,](\\d{3}" + BLANKS + ")*\\d*)?");

    private Numbers() {}

    /**
     * Reads a number whose decimal mark may be either.
     *
     * @throws QuantityException where the text is no finite number, or where its comma may stand
     *     for thousands or for decimals
     */
    public static double parse(String text) {
        String plain = withoutBlanks(text);
        if (MAYBE_THOUSANDS.matcher(plain).matches()) {
            throw new QuantityException("'%s' may be a thousand or one and a bit: write %s or %s"
                    .formatted(text.strip(), plain.replace(',', '.'), plain.replace(",", "")));
        }
        boolean both = plain.indexOf(',') >= 0 && plain.indexOf('.') >= 0;
        if (both || SEVERAL_GROUPS.matcher(plain).matches()) {
            boolean byComma = GROUPED_BY_COMMA.matcher(plain).matches();
            return parse(plain, byComma ? '.' : ',', text);
        }
        return parse(plain, plain.indexOf(',') >= 0 ? ',' : '.', text);
    }

    /**
     * Reads a number whose decimal mark is known; the other mark may part groups of three digits.
     *
     * @param decimalMark point or comma
     * @throws QuantityException where the text is no finite number
     */
    public static double parse(String text, char decimalMark) {
        return parse(withoutBlanks(text), decimalMark, text);
    }

    private static double parse(String plain, char decimalMark, String original) {
        char groupMark = decimalMark == ',' ? '.' : ',';
        String number = plain;
        if (plain.indexOf(groupMark) >= 0) {
            Pattern grouped = decimalMark == ',' ? GROUPED_BY_POINT : GROUPED_BY_COMMA;
            if (!grouped.matcher(plain).matches()) {
                boolean otherwise = NUMBER.matcher(plain.replace(',', '.')).matches();
                throw new QuantityException("'%s' is not a number%s"
                        .formatted(
                                original.strip(),
                                otherwise ? " with a decimal " + word(decimalMark) : ""));
            }
            number = plain.replace(String.valueOf(groupMark), "");
        }
        number = number.replace(',', '.');
        if (!NUMBER.matcher(number).matches()) {
            throw new QuantityException("'" + original.strip() + "' is not a number");
        }
        double value = Double.parseDouble(number);
        if (!Double.isFinite(value)) {
            throw new QuantityException("'" + original.strip() + "' is too large for a number");
        }
        return value;
    }

    private static String word(char decimalMark) {
        return decimalMark == ',' ? "comma" : "point";
    }

    private static String withoutBlanks(String text) {
        String plain = text.strip().replace('−', '-');
        return GROUPED_BY_BLANK.matcher(plain).matches()
                ? ANY_BLANK.matcher(plain).replaceAll("")
                : plain;
    }
}
