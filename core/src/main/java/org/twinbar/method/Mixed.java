package org.twinbar.method;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.twinbar.finding.Finding;

/** What is to be said of specimens that are compared although they are not alike. */
public final class Mixed {

    static final Finding.Kind MIXED = Finding.Kind.warning(
            "mixed-specimens",
            "%s differs between the specimens (%s); a mean over them is of nothing, so means are"
                    + " compared within each alone.");
    static final Finding.Kind GROUP_IS_BLOCK = Finding.Kind.warning(
            "group-is-block",
            "No two groups have one %s in common (%s), so what the treatment did can't be told from what"
                    + " differed between them; put specimens of every group into each.");

    private Mixed() {}

    /**
     * What was noted of one specimen.
     *
     * @param words each noted word by the name of what it answers
     */
    public record Noted(String group, Map<String, String> words) {}

    /**
     * Returns a finding for each word of the method in which the specimens differ although a mean
     * needs them alike, or in which every group differs from every other although they should have
     * been treated together.
     */
    public static List<Finding> among(Description description, Collection<Noted> specimens) {
        List<Finding> found = new ArrayList<>();
        for (Words words : description.words()) {
            Map<String, List<String>> groups = specimens.stream()
                    .filter(noted ->
                            !noted.words().getOrDefault(words.name(), "").isBlank())
                    .collect(Collectors.groupingBy(
                            noted -> noted.words().get(words.name()),
                            TreeMap::new,
                            Collectors.mapping(Noted::group, Collectors.toList())));
            if (words.mean() == Words.Mean.APART && groups.size() > 1) {
                found.add(MIXED.with(words.label(), counts(groups)));
            } else if (words.mean() == Words.Mean.BLOCK && isEachGroupAlone(groups)) {
                found.add(GROUP_IS_BLOCK.with(words.name().replace('_', ' '), holds(groups)));
            }
        }
        return List.copyOf(found);
    }

    private static boolean isEachGroupAlone(Map<String, List<String>> groups) {
        Set<String> all = new TreeSet<>();
        groups.values().forEach(all::addAll);
        return all.size() > 1
                && groups.values().stream().allMatch(in -> Set.copyOf(in).size() == 1);
    }

    private static String counts(Map<String, List<String>> groups) {
        return groups.entrySet().stream()
                .map(word -> word.getKey() + " " + word.getValue().size())
                .collect(Collectors.joining(", "));
    }

    private static String holds(Map<String, List<String>> groups) {
        return groups.entrySet().stream()
                .map(block -> block.getKey() + ": " + block.getValue().get(0))
                .collect(Collectors.joining(", "));
    }
}
