package org.twinbar.study.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.quantity.Labelled;
import org.twinbar.quantity.Unit;
import org.twinbar.study.file.OwnMethods;

/**
 * What a person says of a reference: specimens that are all alike and of which one is tested now
 * and then, so that a change of the bench shows.
 *
 * @param name such as {@code bars of spool 12}
 * @param method the test that it is tested by
 * @param property what is read, by its column, such as {@code strength_MPa}
 * @param first how many of the first values set the limits
 */
public record ReferenceSheet(String name, String method, String property, int first) {

    /** Ten or more set limits that hold; common practice, no source. */
    public static final int USUAL_FIRST = 10;

    public ReferenceSheet {
        name = name.strip();
        method = method.strip();
        property = property.strip();
    }

    /**
     * Returns the sheet with the property as its method calls it.
     *
     * @throws InputException where there is no such method or property, the property is no number,
     *     or too few values would set the limits
     */
    public ReferenceSheet checked(Methods methods) {
        if (name.isEmpty()) {
            throw new InputException("the reference needs a name");
        }
        if (first < Drift.FEWEST) {
            throw new InputException("%s values should set the limits of '%s', at least %s must"
                    .formatted(first, name, Drift.FEWEST));
        }
        var description = OwnMethods.named(methods, method).description();
        var columns = description.properties().stream().map(Property::column).toList();
        Property found = description
                .property(property)
                .orElseThrow(() -> new InputException("the %s test yields no '%s' among %s%s"
                        .formatted(
                                method,
                                property,
                                String.join(", ", columns),
                                Spelling.hint(property, columns))));
        if (found.scale() == Property.Scale.YES_NO) {
            throw new InputException(
                    "'%s' is yes or no, and a chart needs numbers".formatted(property));
        }
        return new ReferenceSheet(name, description.name(), found.column(), first);
    }

    /** Returns the unit that the column names; one for a plain number. */
    public Unit unit() {
        return Labelled.parse(property).unit().orElse(Unit.ONE);
    }

    public boolean isCalled(String other) {
        return name.toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }

    public static ReferenceSheet read(JsonNode value) {
        return new ReferenceSheet(
                value.path("name").asText(),
                value.path("method").asText(),
                value.path("property").asText(),
                value.path("first").asInt(USUAL_FIRST));
    }

    public ObjectNode json() {
        return JsonNodeFactory.instance
                .objectNode()
                .put("name", name)
                .put("method", method)
                .put("property", property)
                .put("first", first);
    }
}
