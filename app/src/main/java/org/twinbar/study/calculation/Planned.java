package org.twinbar.study.calculation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.planning.Design;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;

/**
 * What a plan adds to a specimen whose table says nothing of its group.
 *
 * @param factors those of the table, then those that the plan knows
 */
public record Planned(String group, Map<String, String> factors) {

    /** Stands where a group would, while nobody who reads may know it. */
    public static final String KEY_CLOSED = "key closed";

    public static final String WHY_CLOSED =
            "The key of the blind plan is closed, so nobody knows yet which specimen is which:"
                    + " open it when all results are in.";

    static final String PRINT_RUN = "print_run";

    /** What a table without groups puts every specimen into. */
    private static final String NO_GROUP = "all";

    /**
     * Returns a question with the blocks of the plan, where it names none: print runs that hold all
     * groups, or whole runs that hold one and are then the unit.
     */
    public static Asked layout(Asked asked, List<JudgedSpecimen> tested, Making making) {
        Optional<Design> design = making.plan()
                .map(plan -> plan.allocation().design())
                .filter(it -> it.batches().runs() > 1);
        boolean said = asked.said(Term.BLOCK).isPresent()
                || asked.said(Term.UNIT).isPresent()
                || asked.said(Term.AT).isPresent()
                || asked.said(Term.OF).isPresent();
        boolean known = !tested.isEmpty()
                && tested.stream()
                        .allMatch(it -> making.madeAs(it.code()).isPresent()
                                && it.factors().containsKey(PRINT_RUN));
        if (design.isEmpty() || said || !known) {
            return asked;
        }
        return asked.with(
                design.get().changes() == Design.Changes.WITHIN_RUNS ? Term.BLOCK : Term.UNIT,
                PRINT_RUN);
    }

    public static Planned of(JudgedSpecimen specimen, Making making) {
        Optional<Registered> registered = making.madeAs(specimen.code())
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
