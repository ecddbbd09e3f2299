package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.store.Entry;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.Publication;
import org.twinbar.study.packed.ResultsAsTables;

/** A publication as its entry keeps it. */
final class PublicationJson {

    private PublicationJson() {}

    static ObjectNode of(JudgedStudy study, String where) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("where", where.strip());
        json.put("program", study.maker().program());
        json.put("seed", study.maker().seed());
        for (Publication.Said said : Publication.Said.all(study)) {
            ObjectNode one = json.withArray("said").addObject();
            one.put("claim", said.claim());
            one.put("question", said.question());
            said.verdict().ifPresent(word -> one.put("verdict", word));
            one.put("sentence", said.sentence());
            said.numbers().forEach(one.putObject("numbers")::put);
        }
        for (MethodUsed used : study.methods()) {
            Publication.Method method = Publication.Method.of(used);
            ObjectNode one = json.withArray("methods").addObject();
            one.put("name", method.name());
            one.put("version", method.version());
            method.settings().forEach(one.putObject("settings")::put);
            method.instruments().forEach(one.putObject("instruments")::put);
        }
        for (KeptFile file : study.files()) {
            json.withArray("files").add(State.json(file));
        }
        json.put("readings", ResultsAsTables.digest(study));
        return json;
    }

    static Publication read(Entry entry, JsonNode json) {
        List<Publication.Said> said = new ArrayList<>();
        for (JsonNode one : json.path("said")) {
            Map<String, Double> numbers = new LinkedHashMap<>();
            one.path("numbers")
                    .fields()
                    .forEachRemaining(
                            it -> numbers.put(it.getKey(), it.getValue().asDouble()));
            said.add(new Publication.Said(
                    one.path("claim").asText(),
                    one.path("question").asText(),
                    one.has("verdict")
                            ? Optional.of(one.path("verdict").asText())
                            : Optional.empty(),
                    one.path("sentence").asText(),
                    numbers));
        }
        List<Publication.Method> methods = new ArrayList<>();
        for (JsonNode one : json.path("methods")) {
            methods.add(new Publication.Method(
                    one.path("name").asText(),
                    one.path("version").asInt(),
                    texts(one.path("settings")),
                    texts(one.path("instruments"))));
        }
        List<KeptFile> files = new ArrayList<>();
        json.path("files").forEach(it -> files.add(State.file(it)));
        return new Publication(
                entry.at().atZone(entry.zone()),
                entry.who(),
                json.path("where").asText(),
                json.path("program").asText(),
                said,
                methods,
                files,
                json.path("readings").asText());
    }

    private static Map<String, String> texts(JsonNode node) {
        Map<String, String> texts = new LinkedHashMap<>();
        node.fields()
                .forEachRemaining(it -> texts.put(it.getKey(), it.getValue().asText()));
        return texts;
    }
}
