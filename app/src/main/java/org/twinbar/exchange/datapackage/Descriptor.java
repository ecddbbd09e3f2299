package org.twinbar.exchange.datapackage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * The {@code datapackage.json} of a package. It keeps to what versions 1 and 2 of the standard have
 * in common; units of columns stand under {@code unit}, which both leave to the publisher.
 */
final class Descriptor {

    static final String FILE = "datapackage.json";
    static final String README = "README.md";
    static final String TABLE_PROFILE = "tabular-data-resource";

    private static final Map<String, String> MEDIA = Map.of(
            "csv", "text/csv",
            "tsv", "text/tab-separated-values",
            "txt", "text/plain",
            "md", "text/markdown",
            "toml", "application/toml",
            "json", "application/json",
            "xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            "jpg", "image/jpeg",
            "png", "image/png");

    private Descriptor() {}

    /** A file of the package with what is known of its bytes. */
    record Written(String path, String sha256, long bytes) {}

    static byte[] of(DataPackage made, Map<String, Written> files) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("profile", "data-package");
        json.put("name", name(made.name()));
        json.put("id", made.id());
        json.put("title", made.title());
        json.put("description", made.description());
        made.licence().ifPresent(licence -> licences(json.putArray("licenses"), licence));
        if (!made.contributors().isEmpty()) {
            ArrayNode contributors = json.putArray("contributors");
            made.contributors().forEach(who -> contributors.addObject().put("title", who));
        }
        json.set(made.own().key(), made.own().value());
        ArrayNode resources = json.putArray("resources");
        for (DataTable table : made.tables()) {
            table(resources.addObject(), table, files);
        }
        int number = 0;
        for (DataPackage.RawFile raw : made.files()) {
            number++;
            ObjectNode resource = resources.addObject();
            file(resource, "file-" + number, raw.title(), written(files, raw.path()));
        }
        file(resources.addObject(), "readme", "About this package", written(files, README));
        return bytes(json);
    }

    private static Written written(Map<String, Written> files, String path) {
        Written file = files.get(path);
        if (file == null) {
            throw new IllegalStateException("the file '%s' was not written".formatted(path));
        }
        return file;
    }

    /** Returns a name in the letters that the standard leaves to names. */
    static String name(String free) {
        String plain = free.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9._-]+", "-")
                .replaceAll("^[-.]+|[-.]+$", "");
        return plain.isEmpty() ? "study" : plain;
    }

    private static void licences(ArrayNode licences, Licence licence) {
        licences.addObject()
                .put("name", licence.identifier())
                .put("path", licence.address())
                .put("title", licence.title());
    }

    private static void file(ObjectNode json, String name, String title, Written file) {
        String ending =
                file.path().substring(file.path().lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        json.put("profile", "data-resource");
        json.put("name", name);
        json.put("title", title);
        json.put("path", file.path());
        json.put("mediatype", MEDIA.getOrDefault(ending, "application/octet-stream"));
        json.put("bytes", file.bytes());
        json.put("hash", "sha256:" + file.sha256());
    }

    private static void table(ObjectNode json, DataTable table, Map<String, Written> files) {
        Written file = written(files, table.path());
        json.put("profile", TABLE_PROFILE);
        json.put("name", table.name());
        json.put("description", table.says());
        json.put("path", file.path());
        json.put("format", "csv");
        json.put("mediatype", "text/csv");
        json.put("encoding", "utf-8");
        json.put("bytes", file.bytes());
        json.put("hash", "sha256:" + file.sha256());
        json.putObject("dialect")
                .put("delimiter", ",")
                .put("lineTerminator", "\r\n")
                .put("quoteChar", "\"")
                .put("doubleQuote", true)
                .put("header", true);
        ObjectNode schema = json.putObject("schema");
        ArrayNode fields = schema.putArray("fields");
        table.fields().forEach(field -> field(fields.addObject(), field));
        schema.putArray("missingValues").add("");
        ArrayNode key = schema.putArray("primaryKey");
        table.key().forEach(key::add);
        if (!table.references().isEmpty()) {
            ArrayNode keys = schema.putArray("foreignKeys");
            for (DataTable.Reference reference : table.references()) {
                ObjectNode one = keys.addObject();
                ArrayNode mine = one.putArray("fields");
                reference.columns().forEach(mine::add);
                ObjectNode there = one.putObject("reference").put("resource", reference.table());
                ArrayNode theirs = there.putArray("fields");
                reference.theirs().forEach(theirs::add);
            }
        }
    }

    private static void field(ObjectNode json, Field field) {
        json.put("name", field.name());
        json.put("type", field.type().word());
        if (field.type() == Field.Type.DATETIME) {
            json.put("format", "any");
        }
        json.put("description", field.says());
        if (!field.unit().isEmpty()) {
            json.put("unit", field.unit());
        }
        boolean required = field.presence() == Field.Presence.REQUIRED;
        if (required || !field.allowed().isEmpty() || field.least().isPresent()) {
            ObjectNode constraints = json.putObject("constraints");
            if (required) {
                constraints.put("required", true);
            }
            if (!field.allowed().isEmpty()) {
                ArrayNode allowed = constraints.putArray("enum");
                field.allowed().forEach(allowed::add);
            }
            field.least().ifPresent(least -> {
                if (field.type() == Field.Type.INTEGER) {
                    constraints.put("minimum", (long) least);
                } else {
                    constraints.put("minimum", least);
                }
            });
        }
    }

    private static byte[] bytes(ObjectNode json) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter pretty = new DefaultPrettyPrinter();
        pretty.indentObjectsWith(indenter);
        pretty.indentArraysWith(indenter);
        try {
            String text = new JsonMapper().writer(pretty).writeValueAsString(json);
            return (text + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
