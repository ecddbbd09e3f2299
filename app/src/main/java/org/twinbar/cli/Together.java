package org.twinbar.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.Claims;
import org.twinbar.decision.Comparison;

/**
 * What is left of several claims if all of them are to be right together, by Holm; no verdict reads
 * it. Nothing where fewer than two have a p.
 */
final class Together {

    private final Map<Comparison, Claims.Together> claims = new IdentityHashMap<>();
    private final int number;

    private Together(List<Comparison> comparisons) {
        List<Claims.Together> all = Claims.together(comparisons);
        this.number = comparisons.size();
        if (all.stream().filter(it -> it.p().isKnown()).count() > 1) {
            all.forEach(one -> claims.put(one.comparison(), one));
        }
    }

    static Together of(List<Comparison> comparisons) {
        return new Together(comparisons);
    }

    void write(Json json, Comparison comparison) throws IOException {
        Claims.Together one = claims.get(comparison);
        if (one != null) {
            json.object(
                    "holm",
                    it -> it.put("claims", number)
                            .put("p", one.p())
                            .put("changeStillTold", one.together() ? "yes" : "no"));
        }
    }

    /**
     * Returns the sentence about all of them, where there is something to say.
     *
     * @param names of the comparisons, in their order
     */
    Optional<String> sentence(List<Comparison> comparisons, List<String> names) {
        if (claims.isEmpty()) {
            return Optional.empty();
        }
        List<String> told = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Claims.Together one = claims.get(comparisons.get(i));
            if (one != null && one.together()) {
                told.add(names.get(i));
            }
        }
        return Optional.of(
                "Each verdict keeps its own error rate. If all %s are to be right together"
                                .formatted(number)
                        + " (Holm), a change is still told from none in: %s."
                                .formatted(
                                        told.isEmpty() ? "none of them" : String.join("; ", told)));
    }
}
