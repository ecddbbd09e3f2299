package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Words;
import org.twinbar.study.judged.Asked;

/**
 * What keeps specimens out of one mean, such as their type of break: they are compared within each
 * of its levels alone (METHODS C.4).
 *
 * <p>Only specimens with a number count here: one that is known by a bound, as a bar that did not
 * break, is in no mean anyway.
 *
 * @param words in which the specimens of a question differ, although a mean needs them alike
 */
public record Apart(List<Words> words) {

    static final Finding.Kind WITHIN = Finding.Kind.note(
            "means-within-one",
            "%s differs between the specimens (%s), so each is compared within its own. Which one a"
                    + " specimen falls to may be the treatment's doing: compare the counts as well.");

    public static final Apart NOTHING = new Apart(List.of());

    public Apart {
        words = List.copyOf(words);
    }

    /**
     * One specimen as it bears on means.
     *
     * @param levels what was noted of it, by the name of the word
     */
    record Specimen(Map<String, String> levels, Observed observed) {}

    /**
     * Returns what keeps the specimens of a question apart.
     *
     * @param candidates words that means need alike
     * @param asked what it parts them by already is left alone
     */
    static Apart among(List<Words> candidates, List<Specimen> specimens, Asked asked) {
        return new Apart(candidates.stream()
                .filter(it -> it.mean() == Words.Mean.APART)
                .filter(it -> !asked.by().contains(it.name()))
                .filter(it -> specimens.stream()
                                .filter(one -> one.observed() instanceof Observed.Number)
                                .map(one -> one.levels().getOrDefault(it.name(), ""))
                                .filter(level -> !level.isBlank())
                                .distinct()
                                .count()
                        > 1)
                .toList());
    }

    /** Returns the words of the methods that yield what a column of results holds. */
    public static List<Words> ofColumn(Methods methods, String column) {
        return methods.all().stream()
                .map(TestMethod::description)
                .filter(it -> it.properties().stream()
                        .anyMatch(property -> property.column().equals(column)))
                .flatMap(it -> it.words().stream())
                .toList();
    }

    boolean isNothing() {
        return words.isEmpty();
    }

    /** Returns the question with a part for each level. */
    public Asked part(Asked asked) {
        return isNothing()
                ? asked
                : asked.by(Stream.concat(asked.by().stream(), words.stream().map(Words::name))
                        .toList());
    }

    /** Returns the levels of a part as they are called in a sentence, such as type of break C. */
    public Map<String, String> inWords(Map<String, String> by) {
        Map<String, String> named = new LinkedHashMap<>(by);
        for (Words word : words) {
            String level = by.getOrDefault(word.name(), "");
            named.put(
                    word.name(),
                    level.isBlank()
                            ? inSentence(word) + " not noted"
                            : inSentence(word) + " " + level);
        }
        return named;
    }

    /**
     * Returns why nothing can be compared in a part; empty where something can.
     *
     * @param control the group that others are held against, where there is one
     */
    Optional<String> unanswered(Part part, Optional<String> control) {
        if (isNothing()) {
            return Optional.empty();
        }
        Map<String, Long> counts = counts(part);
        Optional<Words> unknown = words.stream()
                .filter(it -> part.by().getOrDefault(it.name(), "").isBlank())
                .findFirst();
        if (unknown.isPresent()) {
            return Optional.of("%s was not noted for %s, so they are in no mean."
                    .formatted(unknown.get().label(), codes(part)));
        }
        if (counts.isEmpty()) {
            return Optional.of("No specimen with %s has a value that a mean could be taken of (%s)."
                    .formatted(level(part), codes(part)));
        }
        if (control.isPresent() && !counts.containsKey(control.get())) {
            return Optional.of(
                    ("No specimen of '%s' with %s has a value, so that %s cannot be held against"
                                    + " any: means are compared within one alone.")
                            .formatted(control.get(), level(part), codes(part)));
        }
        boolean controlAlone = control.isPresent() && counts.size() == 1;
        return controlAlone
                ? Optional.of(
                        "Only '%s' has specimens with %s and a value (%s), and nothing treated"
                                        .formatted(control.get(), level(part), codes(part))
                                + " to hold against them.")
                : Optional.empty();
    }

    /** Returns the treated groups of a part that have a value, in the order asked for. */
    List<String> treated(Part part, Asked asked, Optional<String> control) {
        Set<String> groups = new LinkedHashSet<>(asked.treated());
        if (groups.isEmpty()) {
            part.observations().forEach(it -> groups.add(it.group()));
            control.ifPresent(groups::remove);
        }
        groups.retainAll(counts(part).keySet());
        return List.copyOf(groups);
    }

    /** Says that means were taken within each level alone, with how many specimens have which. */
    List<Finding> findings(List<Part> parts) {
        List<Finding> found = new ArrayList<>();
        for (Words word : words) {
            Map<String, Integer> levels = new TreeMap<>();
            for (Part part : parts) {
                levels.merge(
                        part.by().getOrDefault(word.name(), ""),
                        part.observations().size(),
                        Integer::sum);
            }
            found.add(WITHIN.with(
                    word.label(),
                    levels.entrySet().stream()
                            .map(it -> (it.getKey().isBlank() ? "not noted" : it.getKey()) + " "
                                    + it.getValue())
                            .collect(Collectors.joining(", "))));
        }
        return found;
    }

    private static Map<String, Long> counts(Part part) {
        Map<String, Long> counts = new LinkedHashMap<>();
        part.observations().stream()
                .filter(it -> it.counts() && it.observed() instanceof Observed.Number)
                .forEach(it -> counts.merge(it.group(), 1L, Long::sum));
        return counts;
    }

    private String level(Part part) {
        return words.stream()
                .map(it -> inSentence(it) + " " + part.by().get(it.name()))
                .collect(Collectors.joining(" and "));
    }

    private static String inSentence(Words word) {
        return word.label().substring(0, 1).toLowerCase(Locale.ROOT)
                + word.label().substring(1);
    }

    private static String codes(Part part) {
        return part.observations().stream()
                .map(Observation::specimen)
                .collect(Collectors.joining(", "));
    }
}
