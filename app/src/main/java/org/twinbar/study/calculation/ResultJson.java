package org.twinbar.study.calculation;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.twinbar.decision.Observed;
import org.twinbar.exchange.Place;

/** Reads what {@code calculate --json} wrote. */
final class ResultJson {

    private static final JsonMapper JSON = new JsonMapper();

    private final Map<String, String> cells = new LinkedHashMap<>();
    private final Map<String, Observed> given = new LinkedHashMap<>();

    private ResultJson() {}

    static ResultTable read(String name, String json) {
        JsonNode root;
        try {
            root = JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw Place.of(name).refuse("is not JSON: " + e.getOriginalMessage());
        }
        JsonNode results = root.path("results");
        if (!results.isArray() || results.isEmpty()) {
            throw Place.of(name).refuse("has no 'results', which 'calculate --json' writes");
        }
        Set<String> headers = new LinkedHashSet<>();
        List<ResultRow> rows = new ArrayList<>();
        int number = 0;
        for (JsonNode result : results) {
            ResultJson row = new ResultJson();
            result.fields().forEachRemaining(field -> row.field(field.getKey(), field.getValue()));
            headers.addAll(row.cells.keySet());
            rows.add(new ResultRow(Place.of(name).line(++number), '.', row.cells, row.given));
        }
        return new ResultTable(name, List.copyOf(headers), rows);
    }

    private void field(String key, JsonNode value) {
        if (key.equals("values")) {
            value.fields().forEachRemaining(it -> value(it.getKey(), it.getValue()));
        } else if (value.isValueNode()) {
            cells.put(key, value.asText());
        }
    }

    private void value(String header, JsonNode value) {
        cells.put(header, value.path("value").asText(""));
        if (value.path("value").isNumber()) {
            given.put(header, new Observed.Number(value.path("value").doubleValue()));
        } else if (value.has("atLeast") && value.has("below")) {
            given.put(
                    header,
                    new Observed.Between(
                            value.path("atLeast").doubleValue(),
                            value.path("below").doubleValue()));
        } else if (value.has("atLeast")) {
            given.put(header, new Observed.AtLeast(value.path("atLeast").doubleValue()));
        } else if (value.has("below")) {
            given.put(header, new Observed.Below(value.path("below").doubleValue()));
        } else if (value.has("is")) {
            given.put(header, Observing.word(value.path("is").asText()));
        } else {
            given.put(header, new Observed.Unknown(value.path("reason").asText("no reason given")));
        }
        if (value.has("own")) {
            cells.put(header + "_own_u", value.path("own").asText());
        }
        value.path("moves")
                .fields()
                .forEachRemaining(move -> cells.put(
                        header + "_move_" + move.getKey(), move.getValue().asText()));
    }
}
