package org.twinbar.study.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.treatment.Procedure;

/** A treatment's steps in the store, as they were when somebody chose them. */
public final class ProcedureKeys {

    private ProcedureKeys() {}

    public static ObjectNode json(Procedure procedure) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("sort", procedure.sort().word());
        for (Procedure.Step step : procedure.steps()) {
            ObjectNode each = json.withArray("step").addObject();
            each.put("what", step.what());
            step.minutes().ifPresent(minutes -> each.put("minutes", minutes));
            step.mostMinutes().ifPresent(minutes -> each.put("most_minutes", minutes));
            step.celsius().ifPresent(celsius -> each.put("celsius", celsius));
        }
        procedure.cautions().forEach(json.withArray("caution")::add);
        return json;
    }

    public static Procedure read(JsonNode json) {
        List<Procedure.Step> steps = new ArrayList<>();
        for (JsonNode each : json.path("step")) {
            steps.add(new Procedure.Step(
                    each.path("what").asText(),
                    number(each, "minutes"),
                    number(each, "most_minutes"),
                    number(each, "celsius")));
        }
        List<String> cautions = new ArrayList<>();
        json.path("caution").forEach(each -> cautions.add(each.asText()));
        return new Procedure(Procedure.Sort.parse(json.path("sort").asText()), steps, cautions);
    }

    private static OptionalDouble number(JsonNode json, String key) {
        return json.has(key)
                ? OptionalDouble.of(json.path(key).asDouble())
                : OptionalDouble.empty();
    }
}
