package org.twinbar.planning.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.claim.Prompt.Kind;
import org.twinbar.planning.claim.Prompt.Need;
import org.twinbar.planning.claim.Prompt.Option;

/** Leads from a claim in words to questions, one answer at a time. */
public final class ClaimGuide {

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}°-]+");

    private final List<TestMethod> methods;

    private ClaimGuide(List<TestMethod> methods) {
        this.methods = List.copyOf(methods);
    }

    /** Returns a guide to these methods, found by the claims that they say they answer. */
    public static ClaimGuide to(List<TestMethod> methods) {
        return new ClaimGuide(methods);
    }

    /** One way of answering a topic. */
    record Way(Description description, Answering answering) {
        String value() {
            return description.name() + "." + answering.property().name();
        }
    }

    /**
     * Returns what is asked, and what the answers lead to.
     *
     * @param words of the claim
     * @param answers by the key of a prompt; a key without its topic answers for all topics
     * @throws PlanException where the claim has no words, or an answer is none that there is
     */
    public Guided guide(String words, Map<String, String> answers) {
        if (words.isBlank()) {
            throw new PlanException("A claim needs its words, such as 'makes parts stronger'.");
        }
        Answers given = new Answers(answers);
        List<Prompt> prompts = new ArrayList<>();
        List<Proposal> proposals = new ArrayList<>();
        List<String> advice = new ArrayList<>();
        Map<String, List<Way>> topics = topics();
        Prompt topic = topic(words, topics, given);
        prompts.add(topic);
        List<String> chosen = topic.answer().stream()
                .flatMap(it -> List.of(it.split("\\s*,\\s*")).stream())
                .toList();
        List<OffBench> offBench = OffBench.ALL.stream()
                .filter(it -> chosen.contains(it.topic()) || matches(words, it.words()))
                .toList();
        SaidSizes said = new SaidSizes(words);
        for (String each : chosen) {
            List<Way> ways = topics.get(each);
            if (ways != null) {
                TopicGuide guide = new TopicGuide(each, ways, said, given);
                prompts.addAll(guide.prompts());
                proposals.addAll(guide.proposals());
                advice.addAll(guide.advice());
            }
        }
        given.requireAllAsked(prompts);
        return new Guided(words, prompts, proposals, offBench, advice);
    }

    private Map<String, List<Way>> topics() {
        Map<String, List<Way>> topics = new LinkedHashMap<>();
        for (TestMethod method : methods) {
            for (Answering answering : method.answering()) {
                topics.computeIfAbsent(answering.topic(), it -> new ArrayList<>())
                        .add(new Way(method.description(), answering));
            }
        }
        return topics;
    }

    private static Prompt topic(String words, Map<String, List<Way>> topics, Answers given) {
        Set<String> matched = new LinkedHashSet<>();
        Set<String> doubtful = new LinkedHashSet<>();
        List<Set<String>> meant = new ArrayList<>();
        for (String word : BETWEEN_WORDS.split(words.toLowerCase(Locale.ROOT))) {
            meant.add(topicsOf(word, topics));
        }
        meant.add(topicsOfSeveralWords(words, topics));
        for (Set<String> each : meant) {
            matched.addAll(each);
            if (each.size() > 1) {
                doubtful.addAll(each);
            }
        }
        OffBench.ALL.stream()
                .filter(it -> matches(words, it.words()))
                .forEach(it -> matched.add(it.topic()));
        List<Option> options = new ArrayList<>();
        topics.forEach(
                (topic, ways) -> options.add(new Option(topic, topic, "tests: " + titles(ways))));
        OffBench.ALL.forEach(it -> options.add(
                new Option(it.topic(), it.topic(), "conditions and who decides; no test here")));
        options.sort(Comparator.comparing(option -> !matched.contains(option.value())));
        Optional<String> found = matched.isEmpty() || !doubtful.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(",", matched));
        Prompt prompt = new Prompt(
                "topic",
                "What does the claim say of treated parts?",
                doubtful.isEmpty()
                        ? "Each thing that it says is a question of its own."
                        : "It may mean %s. Each thing that it says is a question of its own."
                                .formatted(String.join(" or ", doubtful)),
                options,
                given.of("topic").or(() -> found),
                Need.NEEDED,
                Kind.CHOICES);
        Answers.requireOption(prompt);
        return prompt;
    }

    private static String titles(List<Way> ways) {
        return String.join(
                ", ",
                ways.stream().map(way -> way.description().name()).distinct().toList());
    }

    /** A longer beginning says more: "takes up" is water, "take" alone would be anything. */
    private static Set<String> topicsOf(String word, Map<String, List<Way>> topics) {
        Set<String> found = new LinkedHashSet<>();
        int longest = 0;
        for (Map.Entry<String, List<Way>> topic : topics.entrySet()) {
            int length = topic.getValue().stream()
                    .flatMap(way -> way.answering().words().stream())
                    .filter(word::startsWith)
                    .mapToInt(String::length)
                    .max()
                    .orElse(0);
            if (length > longest) {
                found.clear();
                longest = length;
            }
            if (length > 0 && length == longest) {
                found.add(topic.getKey());
            }
        }
        return found;
    }

    private static Set<String> topicsOfSeveralWords(String words, Map<String, List<Way>> topics) {
        Set<String> found = new LinkedHashSet<>();
        topics.forEach((topic, ways) -> {
            List<String> several = ways.stream()
                    .flatMap(way -> way.answering().words().stream())
                    .filter(word -> word.indexOf(' ') >= 0)
                    .toList();
            if (matches(words, several)) {
                found.add(topic);
            }
        });
        return found;
    }

    private static boolean matches(String words, List<String> beginnings) {
        String small = " " + String.join(" ", BETWEEN_WORDS.split(words.toLowerCase(Locale.ROOT)));
        return beginnings.stream().anyMatch(it -> small.contains(" " + it));
    }
}
