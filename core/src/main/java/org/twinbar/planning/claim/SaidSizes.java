package org.twinbar.planning.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

/** Numbers with units that the words of a claim name. */
final class SaidSizes {

    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\w.,])(\\d+(?:[.,]\\d+)?)\\s*(%|per ?cent|°\\s?[CF]|degrees|[µu]?m\\b|mm\\b|cm\\b"
                    + "|h\\b|hours?|days?|weeks?|min\\b|minutes?|MPa|kPa|N\\b|kN\\b|J\\b|times)");

    private static final int DAYS_OF_A_WEEK = 7;

    private final List<Quantity> said = new ArrayList<>();
    private Optional<String> change = Optional.empty();

    SaidSizes(String words) {
        Matcher number = NUMBER.matcher(words);
        while (number.find()) {
            take(number.group(1), number.group(2));
        }
        String small = words.toLowerCase(Locale.ROOT);
        if (change.isEmpty() && small.matches(".*\\b(twice|double[sd]?)\\b.*")) {
            change = Optional.of("100%");
        }
    }

    private void take(String number, String unit) {
        String plain = unit.toLowerCase(Locale.ROOT).replace(" ", "");
        if (plain.equals("%") || plain.startsWith("percent")) {
            change = change.or(() -> Optional.of(number + "%"));
        } else if (plain.equals("times")) {
            double times = Double.parseDouble(number.replace(',', '.'));
            if (times > 1) {
                change = change.or(() -> Optional.of(written(100 * (times - 1)) + "%"));
            }
        } else {
            try {
                Quantity one = Quantity.parse(number + " " + unitOf(plain, unit));
                said.add(
                        plain.startsWith("week")
                                ? new Quantity(DAYS_OF_A_WEEK * one.value(), one.unit())
                                : one);
            } catch (QuantityException e) {
                // Words of a claim are anybody's: a number that means nothing here is left aside.
                return;
            }
        }
    }

    private static String unitOf(String plain, String unit) {
        return switch (plain) {
            case "hour", "hours" -> "h";
            case "day", "days", "week", "weeks" -> "d";
            case "minute", "minutes" -> "min";
            case "degrees" -> "°C";
            default -> unit.replace(" ", "");
        };
    }

    /** Returns the change that is claimed, in per cent. */
    Optional<String> change() {
        return change;
    }

    /** Returns the first quantity that can be given in a unit, written in it. */
    Optional<String> in(Unit unit) {
        for (Quantity quantity : said) {
            try {
                return Optional.of(written(quantity.in(unit)) + " " + unit.symbol());
            } catch (QuantityException e) {
                // It measures something else; the next may not.
                continue;
            }
        }
        return Optional.empty();
    }

    private static String written(double value) {
        return java.math.BigDecimal.valueOf(value)
                .round(new java.math.MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
