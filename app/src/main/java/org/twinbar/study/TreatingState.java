package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.twinbar.finding.Finding;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.store.Entry;
import org.twinbar.study.file.ProcedureKeys;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StepDone;
import org.twinbar.treatment.Coated;
import org.twinbar.treatment.Followed;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Scale;
import org.twinbar.treatment.Waiting;

/** What the entries say of treatments: recipes, waiting, films, and evidence for conditions. */
final class TreatingState {

    private final Map<String, Procedure> recipes = new LinkedHashMap<>();
    private final Map<UUID, StepDone> steps = new LinkedHashMap<>();
    private final Map<List<String>, Evidence> evidence = new HashMap<>();
    private Waiting waiting = Waiting.USUAL;
    private Optional<Reckoning> reckoning = Optional.empty();

    /** What films are reckoned with. */
    private record Reckoning(double density, double step, OptionalDouble area) {}

    private record Evidence(String text, Optional<KeptFile> file, Entry entry) {

        String words() {
            String attached =
                    file.map(it -> ", attached as %s".formatted(it.name())).orElse("");
            return "%s (noted by %s on %s%s)"
                    .formatted(
                            text,
                            entry.who(),
                            entry.at().atZone(entry.zone()).toLocalDate(),
                            attached);
        }
    }

    void take(Entry entry, JsonNode value) {
        if (entry.aspect().equals(Aspect.RECIPE.word())) {
            recipes.put(value.path("group").asText(), ProcedureKeys.read(value.path("procedure")));
        } else if (entry.aspect().equals(Aspect.STEP.word())) {
            step(entry, value);
        } else if (entry.aspect().equals(Aspect.WAITING.word())) {
            waiting = new Waiting(
                    Duration.ofSeconds(value.path("cure_s").asLong()),
                    Duration.ofSeconds(value.path("condition_s").asLong()));
        } else if (entry.aspect().equals(Aspect.FILM.word())) {
            reckoning = Optional.of(new Reckoning(
                    value.path("density").asDouble(),
                    value.path("step").asDouble(),
                    number(value, "area")));
        } else if (entry.aspect().equals(Aspect.EVIDENCE.word())) {
            evidence.put(
                    List.of(
                            value.path("claim").asText(),
                            value.path("condition").asText()),
                    new Evidence(
                            value.path("evidence").asText(),
                            value.has("file")
                                    ? Optional.of(State.file(value.path("file")))
                                    : Optional.empty(),
                            entry));
        }
    }

    private void step(Entry entry, JsonNode value) {
        if (value.has("taken_back")) {
            steps.remove(UUID.fromString(value.path("taken_back").asText()));
        } else if (value.has("begun")) {
            steps.computeIfPresent(
                    UUID.fromString(value.path("begun").asText()),
                    (id, begun) -> begun.ended(
                            when(value, "ended"),
                            number(value, "celsius"),
                            value.path("noted").asText()));
        } else {
            List<String> codes = new ArrayList<>();
            value.path("specimens").forEach(code -> codes.add(code.asText()));
            steps.put(
                    entry.id(),
                    new StepDone(
                            entry.id(),
                            value.path("group").asText(),
                            value.path("step").asInt() - 1,
                            value.path("what").asText(),
                            codes,
                            when(value, "began"),
                            value.has("ended")
                                    ? Optional.of(when(value, "ended"))
                                    : Optional.empty(),
                            number(value, "celsius"),
                            value.path("noted").asText(),
                            entry.who()));
        }
    }

    private static ZonedDateTime when(JsonNode value, String key) {
        return ZonedDateTime.parse(value.path(key).asText());
    }

    private static OptionalDouble number(JsonNode value, String key) {
        return value.has(key)
                ? OptionalDouble.of(value.path(key).asDouble())
                : OptionalDouble.empty();
    }

    /** Returns the steps that were begun, in their order. */
    List<StepDone> steps() {
        return List.copyOf(steps.values());
    }

    /** Returns what differed from the recipes. */
    List<Finding> differences() {
        List<Finding> findings = new ArrayList<>();
        recipes.forEach((group, recipe) -> findings.addAll(Followed.findings(
                recipe,
                steps.values().stream()
                        .filter(each -> each.group().equals(group))
                        .map(StepDone::went)
                        .toList())));
        return findings;
    }

    Map<String, Procedure> recipes() {
        return recipes;
    }

    Waiting waiting() {
        return waiting;
    }

    /** Returns the conditions of a claim, each with the evidence that was attached since. */
    Answer.OffBench withEvidence(String claim, Answer.OffBench off) {
        List<Answer.Condition> conditions = new ArrayList<>();
        for (Answer.Condition each : off.conditions()) {
            Evidence found = evidence.get(List.of(claim, each.text()));
            conditions.add(found == null ? each : new Answer.Condition(each.text(), found.words()));
        }
        return new Answer.OffBench(off.question(), conditions, off.whoDecides());
    }

    /** Returns files that are evidence. */
    List<KeptFile> files() {
        return evidence.values().stream().flatMap(it -> it.file().stream()).toList();
    }

    /** Returns the films of specimens that were weighed before and after and have an area. */
    Optional<Coated> coated(List<Registered> specimens) {
        if (reckoning.isEmpty()) {
            return Optional.empty();
        }
        Reckoning with = reckoning.get();
        List<Coated.Gained> gained = new ArrayList<>();
        for (Registered each : specimens) {
            OptionalDouble area = with.area().isPresent() ? with.area() : area(each);
            if (each.gained().isPresent() && area.isPresent()) {
                gained.add(new Coated.Gained(
                        each.code(), each.gained().getAsDouble(), area.getAsDouble()));
            }
        }
        return gained.isEmpty()
                ? Optional.empty()
                : Optional.of(Coated.of(gained, with.density(), new Scale(with.step())));
    }

    private static OptionalDouble area(Registered specimen) {
        Optional<Shape> shape = StandardShapes.named(specimen.series().shape());
        return shape.isPresent()
                ? OptionalDouble.of(shape.get().solid().area())
                : OptionalDouble.empty();
    }
}
