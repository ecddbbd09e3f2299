package org.twinbar.study.calculation;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.twinbar.decision.Observed;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.study.table.Presets;
import org.twinbar.study.table.SpecimenRow;

/**
 * One row of a table of results.
 *
 * @param place file and line
 * @param decimalMark of its numbers
 * @param cells texts by header
 * @param given what cells are that no text could say, such as a missing value with its reason
 */
record ResultRow(
        Place place, char decimalMark, Map<String, String> cells, Map<String, Observed> given) {

    private static final Pattern AT_LEAST = Pattern.compile("(?:≥|>=|>)\\s*(.+)");
    private static final Pattern BELOW = Pattern.compile("(?:≤|<=|<)\\s*(.+)");

    String text(String header) {
        return cells.getOrDefault(header, "");
    }

    String specimen() {
        return cells.entrySet().stream()
                .filter(cell -> Presets.key(cell.getKey()).equals("specimen"))
                .map(Map.Entry::getValue)
                .filter(code -> !code.isEmpty())
                .findFirst()
                .orElseGet(() -> "line " + place.line().orElse(0));
    }

    /**
     * Returns a cell's value; where an event is told apart, what had not happened is "at least".
     */
    Observed observed(String header, Optional<String> event) {
        Observed observed =
                given.containsKey(header) ? given.get(header) : parse(header, text(header));
        boolean happened = event.map(this::happenedBy).orElse(true);
        return !happened && observed instanceof Observed.Number number
                ? new Observed.AtLeast(number.value())
                : observed;
    }

    private boolean happenedBy(String event) {
        return happened(text(event))
                .orElseThrow(() -> place.column(event)
                        .value(text(event))
                        .refuseValue("is neither 1 (it happened) nor 0 (the test ended first)"));
    }

    /** Returns what a cell says of whether it happened; nothing where it says neither. */
    static Optional<Boolean> happened(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "1", "yes" -> Optional.of(true);
            case "0", "no" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    private Observed parse(String header, String text) {
        String word = text.toLowerCase(Locale.ROOT);
        if (SpecimenRow.isNothing(text)) {
            return new Observed.Unknown("nothing stands in the table");
        }
        if (word.equals("yes") || word.equals("no")) {
            return Observing.word(word);
        }
        Matcher atLeast = AT_LEAST.matcher(text);
        if (atLeast.matches()) {
            return new Observed.AtLeast(number(header, atLeast.group(1)));
        }
        Matcher below = BELOW.matcher(text);
        if (below.matches()) {
            return new Observed.Below(number(header, below.group(1)));
        }
        return new Observed.Number(number(header, text));
    }

    /** Returns an amount; an empty cell has none. */
    OptionalDouble amount(String header) {
        return SpecimenRow.isNothing(text(header))
                ? OptionalDouble.empty()
                : OptionalDouble.of(number(header));
    }

    double number(String header) {
        return number(header, text(header));
    }

    private double number(String header, String text) {
        try {
            return Numbers.parse(text, decimalMark);
        } catch (QuantityException e) {
            InputException refusal =
                    place.column(header).value(text).refuseValue("is not a number");
            refusal.initCause(e);
            throw refusal;
        }
    }
}
