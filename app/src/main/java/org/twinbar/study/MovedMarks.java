package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.store.Entry;
import org.twinbar.study.judged.Change;

/** Where a person put marks on curves, in place of where the method finds them. */
final class MovedMarks {

    private final Map<Of, Integer> rows = new HashMap<>();
    private final Map<Of, UUID> last = new HashMap<>();

    /** A mark on one specimen's curve. */
    record Of(UUID test, String specimen, String mark) {}

    Change take(Entry entry, JsonNode value) {
        Of mark = new Of(
                UUID.fromString(value.path("test").asText()),
                value.path("specimen").asText(),
                value.path("mark").asText());
        last.put(mark, entry.id());
        boolean moved = value.has("row");
        if (moved) {
            rows.put(mark, value.path("row").asInt());
        } else {
            rows.remove(mark);
        }
        String label = mark.mark().replace('_', ' ');
        return new Change(
                moved
                        ? "%s of %s was put at %s"
                                .formatted(
                                        label, mark.specimen(), value.path("at").asText())
                        : "%s of %s is where the method finds it again"
                                .formatted(label, mark.specimen()),
                entry.at().atZone(entry.zone()),
                entry.who(),
                entry.reason().orElse("no reason was given"));
    }

    /** @param at the place in words, such as {@code 0.35 mm} */
    static ObjectNode put(Of mark, int row, String at) {
        return json(mark).put("row", row).put("at", at);
    }

    static ObjectNode foundAgain(Of mark) {
        return json(mark);
    }

    private static ObjectNode json(Of mark) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("test", mark.test().toString())
                .put("specimen", mark.specimen())
                .put("mark", mark.mark());
    }

    boolean isMoved(Of mark) {
        return rows.containsKey(mark);
    }

    /** Returns the rows of a specimen's moved marks, by the mark's name. */
    Map<String, Integer> of(UUID test, String specimen) {
        Map<String, Integer> moved = new HashMap<>();
        rows.forEach((mark, row) -> {
            if (mark.test().equals(test) && mark.specimen().equals(specimen)) {
                moved.put(mark.mark(), row);
            }
        });
        return moved;
    }

    /** Returns the last entry on a mark. */
    Optional<UUID> last(Of mark) {
        return Optional.ofNullable(last.get(mark));
    }
}
