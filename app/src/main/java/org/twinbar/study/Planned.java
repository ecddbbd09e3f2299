package org.twinbar.study;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a plan adds to a specimen whose table says nothing of its group.
 *
 * @param factors those of the table, then those that the plan knows
 */
record Planned(String group, Map<String, String> factors) {

    /** Stands where a group would, while nobody who reads may know it. */
    static final String KEY_CLOSED = "key closed";

    static final String WHY_CLOSED =
            "The key of the blind plan is closed, so nobody knows yet which specimen is which:"
                    + " open it when all results are in.";

    /** What a table without groups puts every specimen into. */
    private static final String NO_GROUP = "all";

    static Planned of(JudgedSpecimen specimen, Making making) {
        Optional<Registered> registered = making
                .specimen(specimen.code())
                .filter(each -> each.series().method().equals(specimen.method()))
                .filter(each -> specimen.group().equals(NO_GROUP));
        if (registered.isEmpty()) {
            return new Planned(specimen.group(), specimen.factors());
        }
        Map<String, String> factors = new LinkedHashMap<>(specimen.factors());
        registered.get().factors(!making.keyClosed()).forEach(factors::putIfAbsent);
        return new Planned(
                registered.get().group().map(group -> group.name()).orElse(KEY_CLOSED), factors);
    }
}
