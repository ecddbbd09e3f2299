package org.twinbar.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's header taken apart: its name and the unit that it carries.
 *
 * @param name the words without the unit, as in the header
 * @param unit the unit, empty where the header names none
 */
public record Labelled(String name, Optional<Unit> unit) {

    private static final Pattern BRACKETED = Pattern.compile("(.*?)\\s*[(\\[]([^()\\[\\]]*)[)\\]]");
    private static final Pattern AFTER_COMMA = Pattern.compile("(.*?)\\s*,\\s*([^,]+)");

    /** A quantity divided by its unit, as ISO 80000-1 heads the columns of its tables. */
    private static final Pattern AFTER_STROKE = Pattern.compile("(.*?)\\s+/\\s+(.+)");

    /**
     * Reads {@code force_N}, {@code force (N)}, {@code force [N]}, {@code force, N} and
     * {@code force / N}.
     */
    public static Labelled parse(String header) {
        String text = header.strip();
        for (Pattern form : new Pattern[] {BRACKETED, AFTER_COMMA, AFTER_STROKE}) {
            Matcher parts = form.matcher(text);
            if (parts.matches() && !parts.group(1).isBlank() && !parts.group(2).isBlank()) {
                Optional<Unit> unit = Units.find(parts.group(2));
                if (unit.isPresent()) {
                    return new Labelled(parts.group(1).strip(), unit);
                }
            }
        }
        return suffixed(text);
    }

    /** The longest tail between underscores that is a unit: {@code _N_per_g} before {@code _g}. */
    private static Labelled suffixed(String text) {
        for (int at = text.indexOf('_'); at > 0; at = text.indexOf('_', at + 1)) {
            Optional<Unit> unit = Units.find(text.substring(at + 1));
            if (unit.isPresent() && !unit.get().equals(Unit.ONE)) {
                return new Labelled(text.substring(0, at), unit);
            }
        }
        return new Labelled(text, Optional.empty());
    }
}
