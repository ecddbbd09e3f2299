package org.twinbar.study.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Two properties of the same group of one study.
 *
 * @param beside the other property's mean
 */
public record Paired(GroupMean mean, GroupMean beside) {

    /** Returns the means that have another beside them, in their order. */
    public static List<Paired> of(List<GroupMean> means, List<GroupMean> others) {
        List<Paired> pairs = new ArrayList<>();
        for (GroupMean mean : means) {
            others.stream()
                    .filter(it -> it.study().id().equals(mean.study().id())
                            && it.group().equals(mean.group())
                            && alike(it.alike(), mean.alike()))
                    .findFirst()
                    .ifPresent(it -> pairs.add(new Paired(mean, it)));
        }
        return pairs;
    }

    /** Specimens of two tests are never the same ones; they must not contradict each other. */
    private static boolean alike(Map<String, String> one, Map<String, String> other) {
        return one.entrySet().stream()
                .allMatch(
                        it -> other.getOrDefault(it.getKey(), it.getValue()).equals(it.getValue()));
    }
}
