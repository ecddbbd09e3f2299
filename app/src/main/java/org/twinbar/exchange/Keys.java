package org.twinbar.exchange;

import com.fasterxml.jackson.databind.JsonNode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The keys of one table of a study file, read strictly: a key that nobody knows is refused, for
 * what it was meant to say would be lost in silence.
 */
public final class Keys {

    private final String where;
    private final JsonNode table;

    private Keys(String where, JsonNode table) {
        this.where = where;
        this.table = table;
    }

    /**
     * @param where the file, and where in it
     * @throws InputException where the node is no table, or has a key that is none of those known
     */
    public static Keys of(String where, JsonNode node, Set<String> known) {
        if (!node.isObject()) {
            throw new InputException("%s: must be a table of keys and values".formatted(where));
        }
        node.fieldNames().forEachRemaining(key -> {
            if (!known.contains(key)) {
                throw new InputException("%s: the key '%s' is none of %s%s"
                        .formatted(
                                where,
                                key,
                                String.join(", ", known.stream().sorted().toList()),
                                Spelling.hint(key, known)));
            }
        });
        return new Keys(where, node);
    }

    /** @throws InputException where the key is missing or blank */
    public String text(String key) {
        return optional(key)
                .orElseThrow(() ->
                        new InputException("%s: the key '%s' is missing".formatted(where, key)));
    }

    public Optional<String> optional(String key) {
        JsonNode value = table.get(key);
        if (value == null) {
            return Optional.empty();
        }
        return Optional.of(scalar(key, value)).map(String::strip).filter(it -> !it.isEmpty());
    }

    /** @throws InputException where it is no whole number */
    public OptionalInt whole(String key) {
        Optional<String> text = optional(key);
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(Integer.parseInt(text.get()));
        } catch (NumberFormatException e) {
            throw new InputException(
                    "%s: '%s' is %s, must be a whole number".formatted(where, key, text.get()));
        }
    }

    public boolean yes(String key) {
        JsonNode value = table.get(key);
        if (value != null && !value.isBoolean()) {
            throw new InputException("%s: '%s' must be true or false".formatted(where, key));
        }
        return value != null && value.booleanValue();
    }

    public Map<String, String> map(String key) {
        JsonNode value = table.get(key);
        Map<String, String> map = new LinkedHashMap<>();
        if (value != null) {
            if (!value.isObject()) {
                throw new InputException("%s: '%s' must be a table such as { name = \"value\" }"
                        .formatted(where, key));
            }
            value.fields()
                    .forEachRemaining(field -> map.put(
                            field.getKey(),
                            scalar(field.getKey(), field.getValue()).strip()));
        }
        return map;
    }

    public Optional<JsonNode> node(String key) {
        return Optional.ofNullable(table.get(key));
    }

    /** Returns a table within this one, where it is there. */
    public Optional<Keys> table(String key, Set<String> known) {
        return Optional.ofNullable(table.get(key))
                .map(node -> Keys.of("%s, %s".formatted(where, key), node, known));
    }

    /** Returns tables in a list, each with the keys that it may have. */
    public List<Keys> tables(String key, Set<String> known) {
        return list(key).stream()
                .map(node -> Keys.of("%s, %s".formatted(where, key), node, known))
                .toList();
    }

    /** Returns one of the words of an enumeration, or another where none stands. */
    public <T> T word(
            String key, T[] values, java.util.function.Function<T, String> words, T otherwise) {
        Optional<String> text = optional(key);
        if (text.isEmpty()) {
            return otherwise;
        }
        List<String> all = java.util.Arrays.stream(values).map(words).toList();
        int at = all.indexOf(text.get().toLowerCase(java.util.Locale.ROOT));
        if (at < 0) {
            throw new InputException("%s: the %s '%s' is none of %s%s"
                    .formatted(
                            where,
                            key.replace('_', ' '),
                            text.get(),
                            String.join(", ", all),
                            Spelling.hint(text.get(), all)));
        }
        return values[at];
    }

    public List<JsonNode> list(String key) {
        JsonNode value = table.get(key);
        List<JsonNode> list = new ArrayList<>();
        if (value != null) {
            if (!value.isArray()) {
                throw new InputException("%s: '%s' must be a list".formatted(where, key));
            }
            value.forEach(list::add);
        }
        return list;
    }

    /** Returns texts; one that stands alone is a list of one. */
    public List<String> texts(String key) {
        JsonNode value = table.get(key);
        return value == null || value.isArray()
                ? list(key).stream().map(one -> scalar(key, one)).toList()
                : List.of(scalar(key, value));
    }

    private String scalar(String key, JsonNode value) {
        if (!value.isValueNode() || value.isNull()) {
            throw new InputException("%s: '%s' must be one value".formatted(where, key));
        }
        return value.asText();
    }
}
