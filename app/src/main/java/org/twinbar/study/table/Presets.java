package org.twinbar.study.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Named;
import org.twinbar.method.Readings;
import org.twinbar.method.Setting;
import org.twinbar.method.Words;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.judged.Ordered;

/**
 * What was set for all specimens: inputs and words that each would otherwise have a column for, and
 * settings of the calculation.
 */
public record Presets(Map<Named, Double> numbers, Map<Named, String> words) {

    private static final Pattern APART = Pattern.compile("[\\s_-]+");

    public Presets {
        numbers = Ordered.copy(numbers);
        words = Ordered.copy(words);
    }

    /**
     * Reads names and values as a person wrote them.
     *
     * @throws InputException where a name is none of the method's, or a value is none of the name's
     */
    public static Presets of(Description description, Map<String, String> set) {
        Map<Named, Double> numbers = new LinkedHashMap<>();
        Map<Named, String> words = new LinkedHashMap<>();
        set.forEach((name, text) -> {
            Named named = find(description, name);
            if (named instanceof Input input) {
                numbers.put(named, number(name, text, input.unit(), input.limits()));
            } else if (named instanceof Setting setting) {
                numbers.put(named, number(name, text, setting.unit(), setting.limits()));
            } else if (named instanceof Choice choice) {
                words.put(named, word(name, text, choice.allowed()));
            } else if (named instanceof Words noted) {
                words.put(named, word(name, text, noted.allowed()));
            }
        });
        return new Presets(numbers, words);
    }

    private static Named find(Description description, String name) {
        List<Named> settable = new ArrayList<>(description.inputs());
        settable.addAll(description.words());
        settable.addAll(description.settings());
        Optional<Named> found = settable.stream()
                .filter(named -> key(name).equals(key(named.name()))
                        || key(name).equals(key(named.column())))
                .findFirst();
        return found.orElseThrow(() -> new InputException("%s has nothing called '%s' to be set%s"
                .formatted(
                        description.name(),
                        name,
                        Spelling.hint(name, settable.stream().map(Named::name).toList()))));
    }

    public static String key(String name) {
        return APART.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
    }

    private static double number(String name, String text, Unit unit, Limits limits) {
        double value;
        try {
            value = Quantity.parse(text, unit);
        } catch (QuantityException e) {
            throw new InputException("%s: %s".formatted(name, e.getMessage()));
        }
        if (!limits.allow(value)) {
            throw new InputException(
                    "%s is %s, must be %s".formatted(name, text.strip(), limits.describe(unit)));
        }
        return value;
    }

    public static String word(String name, String text, List<String> allowed) {
        if (allowed.isEmpty()) {
            return text.strip();
        }
        return allowed.stream()
                .filter(word -> word.equalsIgnoreCase(text.strip()))
                .findFirst()
                .orElseThrow(() -> new InputException("%s is '%s', must be one of %s"
                        .formatted(name, text.strip(), String.join(", ", allowed))));
    }

    public boolean has(Named named) {
        return numbers.containsKey(named) || words.containsKey(named);
    }

    /** Returns what was set. */
    public Set<Named> names() {
        Set<Named> names = new HashSet<>(numbers.keySet());
        names.addAll(words.keySet());
        return names;
    }

    /** Puts what was set in front of a specimen's own readings, which take its place. */
    public void into(Readings.Builder readings) {
        numbers.forEach((named, value) -> {
            if (named instanceof Input input) {
                readings.numberForAll(input, value);
            } else if (named instanceof Setting setting) {
                readings.setting(setting, value);
            }
        });
        words.forEach(readings::word);
    }
}
