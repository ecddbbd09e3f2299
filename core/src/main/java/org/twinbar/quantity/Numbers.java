package org.twinbar.quantity;

import java.util.regex.Pattern;

/** Reads one number as people write it, with a decimal comma or a decimal point. */
public final class Numbers {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern MAYBE_THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");
    private static final Pattern GROUPED_BY_COMMA =
            Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+\\.\\d*");
    private static final Pattern GROUPED_BY_POINT =
            Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+,\\d*");

    private Numbers() {}

    /**
     * Reads a number whose decimal mark may be either.
     *
     * @throws QuantityException where the text is no finite number, or where its comma may stand for
     *     thousands or for decimals
     */
    public static double parse(String text) {
        String plain = clean(text);
        if (MAYBE_THOUSANDS.matcher(plain).matches()) {
            throw new QuantityException(
                    "'%s' may be a thousand or one and a bit: write %s or %s"
                            .formatted(text.strip(), plain.replace(',', '.'), plain.replace(",", "")));
        }
        if (GROUPED_BY_COMMA.matcher(plain).matches()) {
            return parse(plain, '.', text);
        }
        if (GROUPED_BY_POINT.matcher(plain).matches()) {
            return parse(plain, ',', text);
        }
        return parse(plain, plain.indexOf(',') >= 0 ? ',' : '.', text);
    }

    /**
     * Reads a number whose decimal mark is known; the other mark groups thousands.
     *
     * @throws QuantityException where the text is no finite number
     */
    public static double parse(String text, char decimalMark) {
        return parse(clean(text), decimalMark, text);
    }

    private static double parse(String plain, char decimalMark, String original) {
        String number =
                decimalMark == ','
                        ? plain.replace(".", "").replace(',', '.')
                        : plain.replace(",", "");
        if (!NUMBER.matcher(number).matches()) {
            throw new QuantityException("'" + original.strip() + "' is not a number");
        }
        double value = Double.parseDouble(number);
        if (!Double.isFinite(value)) {
            throw new QuantityException("'" + original.strip() + "' is too large for a number");
        }
        return value;
    }

    private static String clean(String text) {
        return text.strip()
                .replace('−', '-')
                .replace("\u00a0", "")
                .replace("\u202f", "")
                .replace("\u2009", "")
                .replace("'", "");
    }
}
