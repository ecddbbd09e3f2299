package org.twinbar.method;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.twinbar.finding.Finding;

/** What is to be said of specimens that are compared although they are not alike. */
public final class Mixed {

    static final Finding.Kind MIXED = Finding.Kind.warning(
            "mixed-specimens",
            "%s differs between the specimens (%s); means are taken only among specimens that"
                    + " are alike in it, so compare them separately.");

    private Mixed() {}

    /**
     * Returns a finding for each word of the method that is not the same for all specimens although
     * their means are kept apart by it.
     *
     * @param compared the readings of all specimens that one comparison takes in
     */
    public static List<Finding> among(Description description, Collection<Readings> compared) {
        List<Finding> found = new ArrayList<>();
        for (Words words : description.words()) {
            if (words.mean() == Words.Mean.APART) {
                Map<String, Long> counts = compared.stream()
                        .filter(readings -> readings.has(words))
                        .collect(Collectors.groupingBy(
                                readings -> readings.word(words),
                                TreeMap::new,
                                Collectors.counting()));
                if (counts.size() > 1) {
                    String list = counts.entrySet().stream()
                            .map(count -> count.getKey() + " " + count.getValue())
                            .collect(Collectors.joining(", "));
                    found.add(MIXED.with(words.label(), list));
                }
            }
        }
        return List.copyOf(found);
    }
}
