package org.twinbar.method;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that others need to know of a test method to ask for readings, show results and explain.
 *
 * @param name what it is called on the command line, words joined by hyphens
 * @param version raised whenever the same readings give another number
 * @param title what people call the test
 * @param standard the standard that it follows and where it departs, in one sentence
 * @param asks what it asks for of each specimen
 * @param settings numbers and choices of the calculation; {@link Setting} or {@link Choice}
 * @param marks places on the curve, in the order in which they are shown
 * @param properties what it yields, the one that matters most first
 * @param cautions dangers of doing the test
 */
public record Description(
        String name,
        int version,
        String title,
        String standard,
        List<Ask> asks,
        List<Named> settings,
        List<Mark> marks,
        List<Property> properties,
        List<Caution> cautions) {

    public Description {
        asks = List.copyOf(asks);
        settings = List.copyOf(settings);
        marks = List.copyOf(marks);
        properties = List.copyOf(properties);
        cautions = List.copyOf(cautions);
        if (properties.isEmpty()) {
            throw new IllegalArgumentException(name + " yields no property");
        }
        Set<String> names = new HashSet<>();
        for (Property property : properties) {
            if (!names.add(property.name())) {
                throw new IllegalArgumentException(name + " yields " + property.name() + " twice");
            }
        }
    }

    /** Returns everything that is asked for, once each, in the order of the asks. */
    public List<Named> asked() {
        List<Named> all = new ArrayList<>();
        asks.forEach(ask -> ask.ways().forEach(way -> way.forEach(all::add)));
        return all.stream().distinct().toList();
    }

    public List<Input> inputs() {
        return only(Input.class);
    }

    public List<Words> words() {
        return only(Words.class);
    }

    public List<Channel> channels() {
        return only(Channel.class);
    }

    private <T extends Named> List<T> only(Class<T> type) {
        return asked().stream().filter(type::isInstance).map(type::cast).toList();
    }

    /** Returns the property of this name or column. */
    public Optional<Property> property(String nameOrColumn) {
        return properties.stream()
                .filter(p -> p.name().equals(nameOrColumn) || p.column().equals(nameOrColumn))
                .findFirst();
    }
}
