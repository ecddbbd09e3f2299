package org.twinbar.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as people read them: value and uncertainty share their last digit, the uncertainty has
 * two significant digits, the unit follows after a thin space, a minus is a minus and not a hyphen.
 *
 * <p>Source: JCGM 100:2008, 7.2.6.
 */
public final class Written {

    static final String THIN = "\u2009";
    private static final int DIGITS_OF_UNCERTAINTY = 2;
    private static final int DIGITS_WITHOUT_UNCERTAINTY = 4;
    private static final double SMALLEST_P = 1e-4;
    private static final double WORTH_A_LOOK = 0.002;

    private Written() {}

    /** Returns {@code 30.80 ± 0.22 MPa}; without the uncertainty where it is zero. */
    public static String value(double value, double u, String unit) {
        if (!(u > 0) || Double.isInfinite(u)) {
            return number(value, DIGITS_WITHOUT_UNCERTAINTY) + behind(unit);
        }
        int decimals = decimals(u);
        String plain = fixed(value, decimals) + " ± " + fixed(u, decimals);
        // Without brackets a reader can't tell whether a percent sign belongs to both.
        return unit.equals("%") ? "(" + plain + ")" + behind(unit) : plain + behind(unit);
    }

    /**
     * Returns an end of what is known to lie between, above or below; with its uncertainty where
     * that is worth a look beside the size of the ends: a clock's second is not, beside a day.
     */
    public static String bound(double value, double u, double size) {
        return u > WORTH_A_LOOK * Math.abs(size)
                ? value(value, u, "")
                : number(value, DIGITS_WITHOUT_UNCERTAINTY);
    }

    /** Returns an uncertainty with its two significant digits. */
    public static String uncertainty(double u) {
        return u > 0 && !Double.isInfinite(u) ? fixed(u, decimals(u)) : number(u, 2);
    }

    /** Returns a value alone, with the digits that its uncertainty allows. */
    public static String rounded(double value, double u) {
        return u > 0 && !Double.isInfinite(u)
                ? fixed(value, decimals(u))
                : number(value, DIGITS_WITHOUT_UNCERTAINTY);
    }

    /** Returns a number with so many significant digits, zeros behind the mark dropped. */
    public static String number(double value, int significant) {
        if (!Double.isFinite(value)) {
            return value > 0 ? "∞" : value < 0 ? "−∞" : "not known";
        }
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(significant, RoundingMode.HALF_EVEN));
        return signed(rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros());
    }

    /**
     * Returns a number with so many places behind the decimal mark, or before it where negative.
     */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return signed(decimals < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded);
    }

    /** Returns {@code 12 %} of a share. */
    public static String percent(double share) {
        return change(100 * share) + THIN + "%";
    }

    /** Returns {@code = 0.019} of a p; what is smaller than anybody can use is said so. */
    static String p(double p) {
        return p < SMALLEST_P ? "below " + number(SMALLEST_P, 1) : "= " + number(p, 2);
    }

    /** Returns {@code +13 %} of a ratio. */
    public static String ratioChange(double ratio) {
        double change = 100 * (ratio - 1);
        return withSign(change, change(change)) + THIN + "%";
    }

    /**
     * Returns a size of an effect, such as {@code +13 %}, {@code 3.2 K} or {@code 40 points}.
     *
     * @param unit of the property; empty for a plain number
     */
    public static String effect(org.twinbar.decision.Effect kind, String unit, double value) {
        return switch (kind) {
            case RATIO -> ratioChange(value);
            case SHARE -> number(100 * value, 3) + " points";
            case DIFFERENCE, LEVEL -> number(value, 3) + (unit.isEmpty() ? "" : " " + unit);
            case RATE -> number(value, 3) + " times";
            case RANK -> number(value, 3);
        };
    }

    /** Returns {@code +13 %} of a ratio, {@code +3.2 K} of a difference. */
    static String withSign(double value, String written) {
        boolean zero = written.chars().allMatch(c -> c == '0' || c == '.');
        return value > 0 && !zero ? "+" + written : written;
    }

    /** Returns per cent in whole ones from ten up, else to a tenth where that shows anything. */
    static String change(double percent) {
        return Math.abs(percent) >= 9.95 ? fixed(percent, 0) : trimmed(fixed(percent, 1));
    }

    private static String trimmed(String number) {
        return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    }

    /** Returns the unit behind a thin space, nothing for a plain number. */
    static String behind(String unit) {
        return unit.isEmpty() ? "" : THIN + unit;
    }

    private static int decimals(double u) {
        BigDecimal rounded = new BigDecimal(u)
                .round(new MathContext(DIGITS_OF_UNCERTAINTY, RoundingMode.HALF_EVEN));
        int digitsBeforeMark = rounded.precision() - rounded.scale();
        return DIGITS_OF_UNCERTAINTY - digitsBeforeMark;
    }

    private static String signed(BigDecimal number) {
        boolean negative = number.signum() < 0;
        String digits = grouped(number.abs().toPlainString());
        return negative ? "−" + digits : digits;
    }

    /**
     * Groups five and more digits before the mark by thin spaces, which no one reads as decimals.
     */
    private static String grouped(String digits) {
        int end = digits.indexOf('.') < 0 ? digits.length() : digits.indexOf('.');
        if (end < 5) {
            return digits;
        }
        StringBuilder text = new StringBuilder(digits);
        for (int at = end - 3; at > 0; at -= 3) {
            text.insert(at, THIN);
        }
        return text.toString();
    }
}
