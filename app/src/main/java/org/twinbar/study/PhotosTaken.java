package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.store.Entry;
import org.twinbar.study.judged.Photo;

/** Photos of specimens, whether they were taken at the rig or for the register: one list. */
final class PhotosTaken {

    private final Map<String, List<Taken>> taken = new HashMap<>();

    /**
     * A photo of a specimen.
     *
     * @param test that the specimen is of; empty for one that the plan knows
     */
    private record Taken(String test, Photo photo) {}

    void take(Entry entry, JsonNode value) {
        taken.computeIfAbsent(value.path("specimen").asText(), it -> new ArrayList<>())
                .add(new Taken(
                        value.path("test").asText(),
                        new Photo(
                                State.file(value.path("file")),
                                ZonedDateTime.parse(value.path("when").asText()),
                                entry.who(),
                                value.path("words").asText())));
    }

    /** Returns all photos of a specimen, whatever test they were taken at. */
    List<Photo> of(String code) {
        return taken.getOrDefault(code, List.of()).stream().map(Taken::photo).toList();
    }

    /** Returns those of its test, and those of the plan's specimen. */
    List<Photo> of(State.OfSpecimen specimen) {
        return taken.getOrDefault(specimen.code(), List.of()).stream()
                .filter(it ->
                        it.test().isEmpty() || it.test().equals(specimen.test().toString()))
                .map(Taken::photo)
                .toList();
    }
}
