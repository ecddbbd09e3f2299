package org.twinbar.web;

import io.javalin.http.Context;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person typed and chose, kept so that a form that is refused shows it again.
 *
 * @param fields by the name that the form gives them
 */
public record Form(Map<String, String> fields) {

    static final Form EMPTY = new Form(Map.of());

    /** More than anybody types into one field. */
    private static final int LONGEST = 4000;

    public Form {
        fields = Map.copyOf(fields);
    }

    /**
     * Returns what a form sent.
     *
     * @throws Refusal where a field is longer than anybody types
     */
    static Form of(Context request) {
        return filled(request.formParamMap());
    }

    private static Form filled(Map<String, List<String>> sent) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Map.Entry<String, List<String>> field : sent.entrySet()) {
            String text =
                    field.getValue().isEmpty() ? "" : field.getValue().get(0).strip();
            if (text.length() > LONGEST) {
                throw Refusal.badRequest("'%s' has %s characters, must have %s or fewer."
                        .formatted(field.getKey(), text.length(), LONGEST));
            }
            fields.put(field.getKey(), text);
        }
        return new Form(fields);
    }

    /** Returns what the address asks for, which a form that only asks is sent with. */
    static Form asked(Context request) {
        return filled(request.queryParamMap());
    }

    /** Returns what stands in a field, nothing where it is empty. */
    public String text(String field) {
        return fields.getOrDefault(field, "");
    }

    public boolean is(String field, String value) {
        return text(field).equals(value);
    }

    Optional<String> said(String field) {
        return Optional.of(text(field)).filter(text -> !text.isEmpty());
    }

    /** Returns a form that also has the fields of another, which counts where both have one. */
    Form withAll(Form other) {
        Map<String, String> more = new LinkedHashMap<>(fields);
        more.putAll(other.fields);
        return new Form(more);
    }

    Form with(String field, String value) {
        Map<String, String> more = new LinkedHashMap<>(fields);
        more.put(field, value);
        return new Form(more);
    }
}
