package org.twinbar.planning.claim;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.planning.PlanException;

/** What a person answered, by key; each key that is asked for is noted, so that none is lost. */
final class Answers {

    private final Map<String, String> given;
    private final Set<String> asked = new HashSet<>();

    Answers(Map<String, String> given) {
        this.given = Map.copyOf(given);
    }

    /** Returns the answer to a key, or to its last part where that is not said for one topic. */
    Optional<String> of(String key) {
        String bare = key.substring(key.lastIndexOf('.') + 1);
        asked.add(key);
        asked.add(bare);
        return Optional.ofNullable(given.get(key))
                .or(() -> Optional.ofNullable(given.get(bare)))
                .map(String::strip)
                .filter(it -> !it.isEmpty());
    }

    /**
     * @throws PlanException where something was answered that was never asked; what is asked may
     *     hang on an answer that is still missing
     */
    void requireAllAsked(List<Prompt> prompts) {
        boolean waits = prompts.stream().anyMatch(Prompt::waits);
        for (String key : given.keySet()) {
            if (!asked.contains(key) && !waits) {
                throw new PlanException("Nothing asks for '%s'; the guide asks for %s."
                        .formatted(
                                key,
                                String.join(
                                        ", ", prompts.stream().map(Prompt::key).toList())));
            }
        }
    }

    /** @throws PlanException where an answer is none of the options */
    static void requireOption(Prompt prompt) {
        List<String> values =
                prompt.options().stream().map(Prompt.Option::value).toList();
        String answer = prompt.answer().orElse("");
        List<String> parts = prompt.kind() == Prompt.Kind.CHOICES
                ? List.of(answer.split("\\s*,\\s*"))
                : List.of(answer);
        for (String part : parts) {
            if (!part.isEmpty() && !values.contains(part)) {
                throw new PlanException("'%s' is no answer to '%s'; there is %s."
                        .formatted(part, prompt.key(), String.join(", ", values)));
            }
        }
    }
}
