package org.twinbar.exchange;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.twinbar.quantity.Labelled;
import org.twinbar.quantity.Unit;

/**
 * A column of a table, its header taken apart.
 *
 * @param index its place in a row, from 0
 * @param header as it stands in the file
 * @param label the header without its unit: {@code width_1} of {@code width_1_mm}
 * @param name the label without the number of a repeated reading: {@code width}
 * @param repeat that number, where there is one
 * @param unit the unit, from the header, the row below it, or by hand
 */
public record Column(
        int index,
        String header,
        String label,
        String name,
        OptionalInt repeat,
        Optional<Unit> unit) {

    private static final Pattern APART = Pattern.compile("[\\s_]+");
    private static final Pattern REPEATED = Pattern.compile("(.*\\D)[_ ]([1-9]\\d{0,3})");

    static Column of(int index, String header) {
        Labelled labelled = Labelled.parse(header);
        return labelled(index, header, labelled.name(), labelled.unit());
    }

    private static Column labelled(int index, String header, String label, Optional<Unit> unit) {
        Matcher parts = REPEATED.matcher(label);
        return parts.matches()
                ? new Column(
                        index,
                        header,
                        label,
                        parts.group(1).strip(),
                        OptionalInt.of(Integer.parseInt(parts.group(2))),
                        unit)
                : new Column(index, header, label, label, OptionalInt.empty(), unit);
    }

    /** The unit from the row below the header; a unit in the header itself goes before it. */
    Column withUnitBelow(Optional<Unit> below) {
        return unit.isPresent() ? this : new Column(index, header, label, name, repeat, below);
    }

    Column named(ReadAs.NamedColumn byHand) {
        return labelled(
                index, header, byHand.name(), byHand.unit().isPresent() ? byHand.unit() : unit);
    }

    /** Returns "area in mm²", or the label alone where there is no unit. */
    String describe() {
        return unit.filter(it -> !it.symbol().isEmpty())
                .map(it -> label + " in " + it.symbol())
                .orElse(label);
    }

    boolean isCalled(String wanted) {
        String key = key(wanted);
        return key(header).equals(key) || key(label).equals(key);
    }

    /** What stays of a header when case, blanks and underscores play no part. */
    static String key(String text) {
        return APART.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("");
    }
}
