package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.store.Entry;
import org.twinbar.study.bench.KeptReference;
import org.twinbar.study.bench.ReferenceSheet;

/** References as the entries on an instrument tell of them. */
final class KeptReferences {

    private KeptReferences() {}

    /** Returns the references that the entries on an instrument tell of. */
    static List<KeptReference> among(String instrument, List<Entry> entries) {
        Map<UUID, Taking> found = new LinkedHashMap<>();
        for (Entry entry : entries) {
            if (entry.aspect().equals(Aspect.REFERENCE.word())) {
                found.put(entry.id(), new Taking(ReferenceSheet.read(KeptShelf.value(entry))));
            } else if (entry.aspect().equals(Aspect.REFERENCE_VALUE.word())) {
                JsonNode value = KeptShelf.value(entry);
                Taking of = found.get(UUID.fromString(value.path("reference").asText()));
                if (of != null) {
                    of.take(entry, value);
                }
            }
        }
        List<KeptReference> kept = new ArrayList<>();
        found.forEach((id, of) ->
                kept.add(new KeptReference(id, instrument, of.sheet, of.inOrder(), of.withdrawn)));
        return kept;
    }

    /** A reference while its entries are read. */
    private static final class Taking {
        final ReferenceSheet sheet;
        final List<KeptReference.Value> values = new ArrayList<>();
        final List<KeptReference.Withdrawn> withdrawn = new ArrayList<>();

        Taking(ReferenceSheet sheet) {
            this.sheet = sheet;
        }

        void take(Entry entry, JsonNode value) {
            if (entry.supersedes().isPresent()) {
                values.stream()
                        .filter(it -> entry.supersedes().equals(Optional.of(it.id())))
                        .findFirst()
                        .ifPresent(gone -> {
                            values.remove(gone);
                            withdrawn.add(new KeptReference.Withdrawn(
                                    gone, entry.reason().orElse(""), entry.who()));
                        });
            } else {
                values.add(new KeptReference.Value(
                        entry.id(),
                        LocalDate.parse(value.path("date").asText()),
                        value.path("value").asDouble(),
                        entry.who()));
            }
        }

        List<KeptReference.Value> inOrder() {
            return values.stream()
                    .sorted(Comparator.comparing(KeptReference.Value::date))
                    .toList();
        }
    }
}
