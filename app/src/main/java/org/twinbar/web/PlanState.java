package org.twinbar.web;

import java.util.List;
import java.util.Optional;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Step;

/**
 * How far the plan of a study is, in words, and what is next.
 *
 * @param words such as {@code 12 of 20 printed}
 * @param next what is to be done next, as a verb with its object
 * @param link where that is done, below the study's own page
 */
public record PlanState(String words, String next, String link) {

    /** @param questions how many the study asks */
    static PlanState of(Making making, int questions) {
        if (making.plan().isEmpty()) {
            return questions == 0
                    ? new PlanState(
                            "no plan yet; a claim comes before it", "Add a claim", "/add-claim")
                    : new PlanState("no plan yet", "Plan the specimens", "/plan");
        }
        int all = making.specimens().size();
        if (making.seal().isEmpty()) {
            return new PlanState(
                    "%s dealt, not sealed: seal it before anything breaks"
                            .formatted(Words.count(all, "specimen")),
                    "Seal the plan",
                    "/plan#seal");
        }
        return made(making.specimens());
    }

    /** Whoever is printed, tested or lost counts as printed. */
    private static PlanState made(List<Registered> specimens) {
        int all = specimens.size();
        long printed = specimens.stream()
                .filter(it ->
                        it.done(Step.PRINTED).isPresent() || !it.fate().kind().waits())
                .count();
        if (printed < all) {
            return new PlanState(
                    "sealed; %s of %s printed".formatted(printed, all),
                    "Note what was done",
                    "/register");
        }
        long waiting = specimens.stream().filter(it -> it.fate().kind().waits()).count();
        long treated = specimens.stream()
                .filter(it -> it.done(Step.TREATED).isPresent())
                .count();
        String also = treated == 0 ? "" : "%s treated, ".formatted(treated);
        return waiting == 0
                ? new PlanState(
                        "sealed; all %s have a result or a fate".formatted(all),
                        "Look at the register",
                        "/register")
                : new PlanState(
                        "sealed; all %s printed, %s%s of them tested"
                                .formatted(all, also, all - waiting),
                        "Note what was done",
                        "/register");
    }

    /** Returns the same for the list of studies; nothing where there is no plan. */
    static Optional<String> words(Making making) {
        return making.plan().isEmpty()
                ? Optional.empty()
                : Optional.of(of(making, 1).words());
    }
}
