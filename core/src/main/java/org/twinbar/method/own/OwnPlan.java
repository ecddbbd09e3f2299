package org.twinbar.method.own;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Limits;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Setting;

/**
 * What a person wrote down of a method of their own.
 *
 * @param name words joined by hyphens
 * @param version raised by the person whenever a formula changes
 * @param title what they call it
 * @param standard the standard that it follows, or that there is none
 * @param asks inputs and channels, each asked for by itself
 * @param settings numbers of the calculation that are the same for all specimens
 * @param steps intermediate values, each from what stands before it
 * @param results what it yields, the one that matters most first
 * @param cautions dangers of doing the test
 */
public record OwnPlan(
        String name,
        int version,
        String title,
        String standard,
        List<Ask> asks,
        List<Setting> settings,
        List<Step> steps,
        List<Wanted> results,
        List<Caution> cautions) {

    private static final String NAME = "[a-z]+(-[a-z]+)*";
    private static final String WORD = "[a-z][a-z0-9]*(_[a-z0-9]+)*";
    private static final int MOST_PARTS = 50;

    /** An intermediate value, in SI units, that later formulas may name. */
    public record Step(String name, String formula) {}

    /**
     * A property and its formula.
     *
     * @param valid the range for which the method is good; beyond it the result is flagged
     */
    public record Wanted(Property property, String formula, Limits valid) {}

    /**
     * @throws FormulaException where a name is unfit or stands for two things, or where nothing is
     *     yielded or more than 50 things are
     */
    public OwnPlan {
        asks = List.copyOf(asks);
        settings = List.copyOf(settings);
        steps = List.copyOf(steps);
        results = List.copyOf(results);
        cautions = List.copyOf(cautions);
        if (!name.matches(NAME)) {
            throw new FormulaException(
                    "the name '%s' must be small letters, words joined by hyphens".formatted(name));
        }
        if (version < 1) {
            throw new FormulaException("the version is %s, must be 1 or more".formatted(version));
        }
        requireWords(title, "title");
        requireWords(standard, "standard");
        if (results.isEmpty()) {
            throw new FormulaException("the method yields nothing: it needs a result");
        }
        int parts = asks.size() + settings.size() + steps.size() + results.size();
        if (parts > MOST_PARTS) {
            throw new FormulaException(
                    "the method has %s inputs, channels, settings, steps and results, at most %s are allowed"
                            .formatted(parts, MOST_PARTS));
        }
        requireNames(asks, settings, steps, results);
    }

    private static void requireWords(String text, String what) {
        if (text.isBlank()) {
            throw new FormulaException("the %s is empty".formatted(what));
        }
    }

    private static void requireNames(
            List<Ask> asks, List<Setting> settings, List<Step> steps, List<Wanted> results) {
        Set<String> taken = new HashSet<>();
        asks.forEach(ask ->
                ask.ways().forEach(way -> way.forEach(named -> requireName(named, taken))));
        settings.forEach(setting -> requireName(setting, taken));
        steps.forEach(step -> requireName(step.name(), taken));
        results.forEach(result -> requireName(result.property(), taken));
    }

    private static void requireName(Named named, Set<String> taken) {
        requireName(named.name(), taken);
        if (!named.label().matches("(?s)\\p{Lu}.*[^.]")) {
            throw new FormulaException(
                    "the label '%s' of %s must begin with a capital letter and end without a full stop"
                            .formatted(named.label(), named.name()));
        }
    }

    private static void requireName(String name, Set<String> taken) {
        if (!name.matches(WORD)) {
            throw new FormulaException(
                    "the name '%s' must be small letters and digits, words joined by underscores"
                            .formatted(name));
        }
        if (FormulaParser.isReserved(name)) {
            throw new FormulaException(
                    "the name '%s' is a function or constant of formulas".formatted(name));
        }
        if (!taken.add(name)) {
            throw new FormulaException("the name '%s' stands for two things".formatted(name));
        }
    }
}
