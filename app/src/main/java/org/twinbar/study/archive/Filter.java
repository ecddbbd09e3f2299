package org.twinbar.study.archive;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.twinbar.method.Property;

/**
 * What is looked for; what isn't said fits all.
 *
 * @param property by name, column or label
 * @param group the treated group of a gain, the group of a mean
 * @param where factors that all its specimens must share
 */
public record Filter(
        Optional<String> method,
        Optional<String> property,
        Optional<String> group,
        Map<String, String> where) {

    public static final Filter ALL =
            new Filter(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

    public Filter {
        where = Map.copyOf(where);
    }

    /** Returns the filter that lets any group through. */
    public Filter anyGroup() {
        return new Filter(method, property, Optional.empty(), where);
    }

    /** Returns the filter for another property of the same groups, whatever test measures it. */
    public Filter of(String otherProperty) {
        return new Filter(Optional.empty(), Optional.of(otherProperty), group, where);
    }

    boolean fits(Gain gain) {
        return fits(gain.method(), gain.property(), gain.treated(), gain.alike());
    }

    boolean fits(
            String itsMethod, Property itsProperty, String itsGroup, Map<String, String> alike) {
        return method.map(it -> same(it, itsMethod)).orElse(true)
                && property.map(it -> isCalled(it, itsProperty)).orElse(true)
                && group.map(it -> same(it, itsGroup)).orElse(true)
                && where.entrySet().stream()
                        .allMatch(it -> alike.entrySet().stream()
                                .anyMatch(mine -> same(mine.getKey(), it.getKey())
                                        && same(mine.getValue(), it.getValue())));
    }

    private static boolean isCalled(String wanted, Property property) {
        return same(wanted, property.name())
                || same(wanted, property.column())
                || same(wanted, property.label());
    }

    private static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "");
    }
}
