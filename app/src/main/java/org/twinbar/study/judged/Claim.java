package org.twinbar.study.judged;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Keys;

/**
 * What somebody says the treatment does, and the questions that make it measurable.
 *
 * @param words theirs
 * @param saidBy who says it, such as {@code leaflet}; may be empty
 * @param questions in the order in which they are shown
 * @param offBench what stands in place of a verdict where no home bench can give one
 */
public record Claim(
        String words, String saidBy, List<Question> questions, Optional<Answer.OffBench> offBench) {

    private static final Set<String> KEYS =
            Set.of("words", "said_by", "question", "condition", "decided_by", "about");
    private static final Set<String> CONDITION_KEYS = Set.of("text", "evidence");

    public Claim {
        if (words.isBlank()) {
            throw new InputException("a claim needs its words");
        }
        questions = List.copyOf(questions);
    }

    /**
     * One question of a claim.
     *
     * @param name in a few words, such as {@code flat bars}
     * @param method the test that answers it
     */
    public record Question(String name, String method, Asked asked) {}

    public static Claim read(String where, JsonNode node) {
        Keys keys = Keys.of(where, node, KEYS);
        String words = keys.text("words");
        String here = "%s, claim '%s'".formatted(where, words);
        List<Question> questions = new ArrayList<>();
        for (JsonNode question : keys.list("question")) {
            questions.add(question(here, question));
        }
        Optional<Answer.OffBench> offBench = keys.optional("decided_by")
                .map(who -> new Answer.OffBench(
                        keys.optional("about").orElse(words), conditions(here, keys), who));
        if (offBench.isEmpty() && !keys.list("condition").isEmpty()) {
            throw new InputException(
                    "%s: conditions need the key 'decided_by', which says who decides"
                            .formatted(here));
        }
        return new Claim(words, keys.optional("said_by").orElse(""), questions, offBench);
    }

    private static Question question(String where, JsonNode node) {
        Set<String> known = new HashSet<>(Asked.KEYS);
        known.add("name");
        known.add("method");
        Keys keys = Keys.of(where + ", question", node, known);
        Asked asked = Asked.read(keys);
        return new Question(
                keys.optional("name").orElse(asked.property()), keys.text("method"), asked);
    }

    private static List<Answer.Condition> conditions(String where, Keys keys) {
        List<Answer.Condition> conditions = new ArrayList<>();
        for (JsonNode node : keys.list("condition")) {
            Keys condition = Keys.of(where + ", condition", node, CONDITION_KEYS);
            conditions.add(new Answer.Condition(
                    condition.text("text"), condition.optional("evidence").orElse("none here")));
        }
        return conditions;
    }

    public ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("words", words);
        json.put("said_by", saidBy);
        for (Question question : questions) {
            ObjectNode each = json.withArray("question").addObject();
            each.put("name", question.name());
            each.put("method", question.method());
            each.setAll(question.asked().json());
        }
        offBench.ifPresent(off -> {
            json.put("about", off.question());
            json.put("decided_by", off.whoDecides());
            for (Answer.Condition condition : off.conditions()) {
                ObjectNode each = json.withArray("condition").addObject();
                each.put("text", condition.text());
                each.put("evidence", condition.evidence());
            }
        });
        return json;
    }
}
