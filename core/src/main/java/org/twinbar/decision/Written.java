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
    private static final String ABOUT = "about ";

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

    /**
     * Returns a ratio with its interval as {@code 18 % more (11 to 26 %)}; where the two ends can't
     * be told apart by the digits that a bench gives, as {@code about 18 % more}.
     */
    static String change(Amount ratio, Amount low, Amount high) {
        if (!(ratio instanceof Amount.Known known)) {
            return "not known";
        }
        double percent = percentOf(known);
        String interval = changes(low, high);
        boolean about = interval.startsWith(ABOUT);
        int decimals = about ? plainDecimals(percent) : decimals(low, high);
        String change =
                fixed(Math.abs(percent), decimals) + THIN + "%" + (percent < 0 ? " less" : " more");
        return about ? ABOUT + change : change + " (" + interval + ")";
    }

    /** Returns two ratios as {@code 8 to 14 %}, {@code 5 to 9 % less} or {@code −4 to +2 %}. */
    static String changes(Amount low, Amount high) {
        int decimals = decimals(low, high);
        if (!(low instanceof Amount.Known from) || !(high instanceof Amount.Known to)) {
            return changed(low, decimals) + " to " + changed(high, decimals) + THIN + "%";
        }
        double least = percentOf(from);
        double most = percentOf(to);
        String one = fixed(least, decimals);
        if (one.equals(fixed(most, decimals))) {
            return ABOUT + changed(low, plainDecimals(least)) + THIN + "%";
        }
        if (least >= 0) {
            return one + " to " + fixed(most, decimals) + THIN + "%";
        }
        if (most <= 0) {
            return fixed(-most, decimals) + " to " + fixed(-least, decimals) + THIN + "% less";
        }
        return one + " to " + changed(high, decimals) + THIN + "%";
    }

    private static String changed(Amount ratio, int decimals) {
        if (!(ratio instanceof Amount.Known known)) {
            return "no bound";
        }
        double percent = percentOf(known);
        return (percent > 0 ? "+" : "") + fixed(percent, decimals);
    }

    /** Without an interval less than two per cent shows a tenth. */
    private static int plainDecimals(double percent) {
        return Math.abs(percent) < 2 ? 1 : 0;
    }

    private static double percentOf(Amount.Known ratio) {
        return 100 * (ratio.value() - 1);
    }

    /** As the half-width allows, and more where a bound near nothing would lose its side. */
    private static int decimals(Amount low, Amount high) {
        if (!(low instanceof Amount.Known from) || !(high instanceof Amount.Known to)) {
            return 0;
        }
        double half = Math.abs(percentOf(to) - percentOf(from)) / 2;
        int decimals = half > 0 ? decimalsOfPercent(half) : 0;
        while (decimals < MOST_DECIMALS_OF_PERCENT
                && (losesItsSide(percentOf(from), decimals)
                        || losesItsSide(percentOf(to), decimals))) {
            decimals++;
        }
        return decimals;
    }

    private static boolean losesItsSide(double percent, int decimals) {
        return percent != 0 && Math.abs(percent) < StrictMath.pow(10, -decimals) / 2;
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
