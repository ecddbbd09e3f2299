package org.twinbar.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
        List<Double> known = new ArrayList<>();
        for (Comparison comparison : comparisons) {
            known.add(comparison.found().p().orElse(1));
        }
        List<Double> adjusted = holm(known);
        List<Together> all = new ArrayList<>();
        for (int i = 0; i < comparisons.size(); i++) {
            Comparison comparison = comparisons.get(i);
            boolean has = comparison.found().p().isKnown();
            all.add(new Together(
                    comparison,
                    has ? Amount.of(adjusted.get(i)) : comparison.found().p(),
                    has && adjusted.get(i) <= comparison.question().errorRate()));
        }
        return all;
    }

    static List<Double> holm(List<Double> p) {
        List<Integer> rising = new ArrayList<>();
        for (int i = 0; i < p.size(); i++) {
            rising.add(i);
        }
        rising.sort(Comparator.comparingDouble(p::get));
        List<Double> adjusted = new ArrayList<>(p);
        double before = 0;
        for (int rank = 0; rank < rising.size(); rank++) {
            int at = rising.get(rank);
            before = Math.min(1, Math.max(before, p.get(at) * (p.size() - rank)));
            adjusted.set(at, before);
        }
        return adjusted;
    }
}
