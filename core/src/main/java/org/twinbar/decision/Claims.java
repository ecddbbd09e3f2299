package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.statistics.groups.Holm;

/**
 * Several claims of one study. Each keeps its own error rate; beside it stands what is left if all
 * of them are to be right together.
 *
 * <p>Holm: p in rising order times m, m − 1, …, each at least the one before, cut at 1. A
 * comparison without a p counts among the m and has none. Source: S. Holm, A simple sequentially
 * rejective multiple test procedure (1979); METHODS.md I.6.
 */
public final class Claims {

    /**
     * One claim beside the others.
     *
     * @param p of no change, adjusted for the number of claims
     * @param together whether a change is still told from none if all claims are to be right
     *     together
     */
    public record Together(Comparison comparison, Amount p, boolean together) {}

    private Claims() {}

    /** Returns the claims in their order, each with its p adjusted for all of them. */
    public static List<Together> together(List<Comparison> comparisons) {
        double[] adjusted = Holm.adjusted(comparisons.stream()
                .mapToDouble(comparison -> comparison.found().p().orElse(1))
                .toArray());
        List<Together> all = new ArrayList<>();
        for (int i = 0; i < comparisons.size(); i++) {
            Comparison comparison = comparisons.get(i);
            boolean has = comparison.found().p().isKnown();
            all.add(new Together(
                    comparison,
                    has ? Amount.of(adjusted[i]) : comparison.found().p(),
                    has && adjusted[i] <= comparison.question().errorRate()));
        }
        return all;
    }
}
