package org.twinbar.decision;

import java.util.List;

/**
 * Several treated groups that were held against one control, taken together.
 *
 * <p>Whoever tries several treatments and shows the best of them finds a gain by luck more often
 * than the error rate says. Here every interval is as wide as it must be for all of them to hold
 * the true values together, with the level of the question.
 *
 * @param held each treated group against the control
 * @param pairs every two groups against each other, the control's among them
 */
public record Family(List<Held> held, List<Pair> pairs) {

    /**
     * One treated group against the control.
     *
     * @param found the effect, with the interval that holds together with the others
     * @param verdict what the rule reads off that interval
     */
    public record Held(String treated, Found found, Verdict verdict) {}

    /**
     * Two groups, the first as if it were treated and the second its control.
     *
     * @param found the effect, with the interval that holds together with all other pairs
     */
    public record Pair(String one, String other, Found found) {}

    public Family {
        held = List.copyOf(held);
        pairs = List.copyOf(pairs);
    }

    /**
     * Returns what one treated group comes to among its fellows.
     *
     * @throws IllegalArgumentException if it is none of them
     */
    public Held of(String treated) {
        return held.stream()
                .filter(it -> it.treated().equals(treated))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "'%s' is none of the treated groups.".formatted(treated)));
    }
}
