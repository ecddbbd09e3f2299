package org.twinbar.decision;

import java.util.List;

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

    /** Returns in how many of the views the verdict is the same. */
    public int holding() {
        return (int) views.stream().filter(view -> view.verdict() == verdict).count();
    }

    /** Returns the views in which it is another one. */
    public List<View> falling() {
        return views.stream().filter(view -> view.verdict() != verdict).toList();
    }
}
