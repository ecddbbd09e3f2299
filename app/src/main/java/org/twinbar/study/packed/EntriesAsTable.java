package org.twinbar.study.packed;

import static org.twinbar.exchange.datapackage.Field.Type.DATETIME;
import static org.twinbar.exchange.datapackage.Field.Type.OBJECT;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.exchange.datapackage.DataTable.Reference;
import org.twinbar.exchange.datapackage.Field;
import org.twinbar.store.Entry;
import org.twinbar.store.StoreException;
import org.twinbar.study.judged.KeptFile;

/** Entries as a table of a package, and back. They are all that a study is made of. */
public final class EntriesAsTable {

    public static final String NAME = "entries";

    private static final JsonMapper JSON = new JsonMapper();

    private static final List<Field> FIELDS = List.of(
            Field.text("id", "Identity of the entry.").required(),
            Field.text("subject", "Identity of what it is about: the study.").required(),
            Field.text("aspect", "What of it.").required(),
            Field.of("value", OBJECT, "What was entered, as JSON.").required(),
            Field.of("at", DATETIME, "When it was entered, in UTC.").required(),
            Field.text("zone", "Time zone that it was entered in.").required(),
            Field.text("who", "Who entered it, as they named themselves.").required(),
            Field.text("reason", "Why; corrections have one."),
            Field.text("supersedes", "The entry that this one takes the place of."));

    private EntriesAsTable() {}

    public static DataTable of(List<Entry> entries) {
        return new DataTable(
                NAME,
                "Everything that somebody entered, in its order: the study is made of it, and"
                        + " everything else is calculated. No entry is ever changed.",
                FIELDS,
                List.of("id"),
                List.of(new Reference(List.of("supersedes"), "", List.of("id"))),
                entries.stream().map(EntriesAsTable::row).toList());
    }

    private static List<String> row(Entry entry) {
        return List.of(
                entry.id().toString(),
                entry.subject(),
                entry.aspect(),
                entry.value(),
                entry.at().toString(),
                entry.zone().getId(),
                entry.who(),
                entry.reason().orElse(""),
                entry.supersedes().map(UUID::toString).orElse(""));
    }

    /**
     * Reads entries back.
     *
     * @param where the file, for messages
     * @throws InputException where a row is no entry
     */
    public static List<Entry> read(String where, List<String> columns, List<List<String>> rows) {
        List<String> wanted = FIELDS.stream().map(Field::name).toList();
        if (!columns.equals(wanted)) {
            throw new InputException("%s: its columns must be %s, not %s"
                    .formatted(where, String.join(", ", wanted), String.join(", ", columns)));
        }
        List<Entry> entries = new ArrayList<>();
        Set<UUID> seen = new LinkedHashSet<>();
        for (List<String> row : rows) {
            Entry entry = entry(where, entries.size() + 1, row);
            if (!seen.add(entry.id())) {
                throw new InputException(
                        "%s: entry %s stands there twice".formatted(where, entry.id()));
            }
            if (entry.supersedes().filter(it -> !seen.contains(it)).isPresent()) {
                throw new InputException("%s: entry %s supersedes one that does not come before it"
                        .formatted(where, entry.id()));
            }
            entries.add(entry);
        }
        return entries;
    }

    private static Entry entry(String where, int number, List<String> row) {
        try {
            if (!JSON.readTree(row.get(3)).isObject()) {
                throw new StoreException("its value is no JSON object");
            }
            return new Entry(
                    UUID.fromString(row.get(0)),
                    row.get(1),
                    row.get(2),
                    row.get(3),
                    Instant.parse(row.get(4)),
                    ZoneId.of(row.get(5)),
                    row.get(6),
                    Optional.of(row.get(7)).filter(it -> !it.isEmpty()),
                    Optional.of(row.get(8)).filter(it -> !it.isEmpty()).map(UUID::fromString));
        } catch (JsonProcessingException
                | DateTimeException
                | IllegalArgumentException
                | StoreException e) {
            throw new InputException("%s: entry %s is damaged: %s"
                    .formatted(
                            where,
                            number,
                            String.valueOf(e.getMessage())
                                    .lines()
                                    .findFirst()
                                    .orElse("it can't be read")));
        }
    }

    /** Returns every file that entries name, in their order, each once. */
    public static List<KeptFile> files(List<Entry> entries) {
        Set<KeptFile> files = new LinkedHashSet<>();
        for (Entry entry : entries) {
            try {
                collect(JSON.readTree(entry.value()), files);
            } catch (JsonProcessingException e) {
                throw new StoreException("entry %s is damaged".formatted(entry.id()));
            }
        }
        return List.copyOf(files);
    }

    private static void collect(JsonNode node, Set<KeptFile> files) {
        boolean named = node.path("name").isTextual() && node.path("bytes").isNumber();
        if (named && node.path("sha256").asText().matches("[0-9a-f]{64}")) {
            files.add(new KeptFile(
                    node.path("name").asText(),
                    node.path("sha256").asText(),
                    node.path("bytes").asLong()));
        }
        node.forEach(each -> collect(each, files));
    }
}
