package org.twinbar.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.twinbar.quantity.Unit;

/**
 * Numbers as they stand in a sentence, the same in every locale.
 *
 * <p>A half-width is written with two digits, in per cent with one or two, and what it belongs to
 * ends at the same place. Source: JCGM 100:2008, 7.2.6; LOOK.md, "Numbers".
 */
final class Written {

    static final String THIN = "\u2009";

    /** No bench gives hundredths of a per cent. */
    private static final int MOST_DECIMALS_OF_PERCENT = 2;

    private static final int MOST_DECIMALS = 12;

    private Written() {}

    /** Returns the unit behind a thin space, nothing for a plain number. */
    static String unit(Unit unit) {
        return unit.symbol().isEmpty() ? "" : THIN + unit.symbol();
    }

    /** Returns {@code 1 mix} or {@code 3 mixes}. */
    static String count(int number, String kind) {
        return number + " " + (number == 1 ? kind : plural(kind));
    }

    static String plural(String kind) {
        boolean hissing = kind.endsWith("x") || kind.endsWith("s") || kind.endsWith("ch");
        return kind + (hissing ? "es" : "s");
    }

    /** Returns a number as somebody typed it, without zeros behind the mark. */
    static String exact(double value) {
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_EVEN));
        return plain(rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros());
    }

    /** Returns a share as per cent, as somebody typed it. */
    static String percent(double share) {
        return exact(100 * share) + THIN + "%";
    }

    /**
     * Returns a number with so many places behind the decimal mark; negative places round before
     * it.
     */
    static String fixed(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return plain(decimals < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded);
    }

    /** Returns the decimals at which a half-width in per cent has one digit or two. */
    static int decimalsOfPercent(double half) {
        return Math.max(0, Math.min(MOST_DECIMALS_OF_PERCENT, decimals(half / 3)));
    }

    /** Returns the decimals at which a half-width has two digits. */
    static int decimalsOf(double half) {
        return Math.min(MOST_DECIMALS, decimals(half / 10));
    }

    /** Returns a ratio as {@code 18 % more} or {@code 3 % less}. */
    static String change(Amount ratio) {
        if (!(ratio instanceof Amount.Known known)) {
            return "not known";
        }
        double percent = 100 * (known.value() - 1);
        return fixed(Math.abs(percent), percentDecimals(percent))
                + THIN
                + "%"
                + (percent < 0 ? " less" : " more");
    }

    /** Returns two ratios as {@code −4 to +2 %}. */
    static String changes(Amount low, Amount high) {
        return changed(low) + " to " + changed(high) + THIN + "%";
    }

    private static String changed(Amount ratio) {
        if (!(ratio instanceof Amount.Known known)) {
            return "no bound";
        }
        double percent = 100 * (known.value() - 1);
        return (percent > 0 ? "+" : "") + fixed(percent, percentDecimals(percent));
    }

    /** Less than two per cent shows a tenth, so that a bound near nothing keeps its side. */
    private static int percentDecimals(double percent) {
        return Math.abs(percent) < 2 ? 1 : 0;
    }

    private static int decimals(double smallestToShow) {
        return smallestToShow > 0 && Double.isFinite(smallestToShow)
                ? -(int) Math.floor(StrictMath.log10(smallestToShow))
                : 1;
    }

    private static String plain(BigDecimal number) {
        boolean negative = number.signum() < 0;
        return (negative ? "−" : "") + number.abs().toPlainString();
    }
}
