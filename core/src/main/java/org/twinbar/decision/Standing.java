package org.twinbar.decision;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Whether the verdict stands if the same readings are looked at in other ways.
 *
 * @param views each other way, with the verdict that it gives
 * @param verdict the verdict that was given
 */
public record Standing(Verdict verdict, List<View> views) {

    /**
     * One other way of looking at the readings.
     *
     * @param words what it does, such as {@code without A3} or {@code by medians}
     */
    public record View(String words, Verdict verdict) {}

    public Standing {
        views = List.copyOf(views);
    }

    Standing with(View more) {
        List<View> all = new ArrayList<>(views);
        all.add(more);
        return new Standing(verdict, all);
    }

    /** Returns in how many of the views the verdict is the same. */
    public int holding() {
        return (int) views.stream().filter(view -> view.verdict() == verdict).count();
    }

    /** Returns the views in which it is another one. */
    public List<View> falling() {
        return views.stream().filter(view -> view.verdict() != verdict).toList();
    }

    /** Returns in how many ways it stands, and what it would be in the others. */
    public String words() {
        int all = views.size();
        if (all == 0) {
            return "There is no other way of looking at readings like these.";
        }
        String ways = all == 1 ? "the one other way" : "all %s other ways".formatted(all);
        if (holding() == all) {
            return "It stands in %s of looking at the same readings.".formatted(ways);
        }
        String count = holding() == 0
                ? all == 1
                        ? "It does not stand in " + ways
                        : "It stands in none of %s other ways".formatted(all)
                : "It stands in %s of %s other ways".formatted(holding(), all);
        return "%s of looking at the same readings; it would be %s."
                .formatted(count, String.join(", and ", otherwise()));
    }

    /** Returns each other verdict with the ways that lead to it. */
    private List<String> otherwise() {
        Map<Verdict, List<String>> ways = new EnumMap<>(Verdict.class);
        falling()
                .forEach(view -> ways.computeIfAbsent(view.verdict(), it -> new ArrayList<>())
                        .add(view.words()));
        List<String> texts = new ArrayList<>();
        ways.forEach((other, words) ->
                texts.add("\"%s\" %s".formatted(other.word(), String.join(", ", words))));
        return texts;
    }
}
