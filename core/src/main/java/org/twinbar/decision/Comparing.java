package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.twinbar.finding.Finding;

/** Holds treated specimens against their control and answers the question. */
public final class Comparing {

    private final Question question;
    private final Sample treated;
    private final Sample control;
    private final double step;

    private Comparing(Question question, Sample treated, Sample control, double step) {
        this.question = question;
        this.treated = treated;
        this.control = control;
        this.step = step;
    }

    /**
     * Returns the comparison of one treated group with its control.
     *
     * @param observations every specimen of both groups, the left-out ones included; others are
     *     passed over; their order is nothing
     * @throws QuestionException if a group has no specimen at all, or the effect is no sensible
     *     question of these values
     */
    public static Comparison of(
            Question question, List<Observation> observations, String control, String treated) {
        requireGroup(observations, control, "control");
        requireGroup(observations, treated, "treated group");
        Sample ours = Sample.of(treated, observations);
        Sample others = Sample.of(control, observations);
        double step = question.resolution()
                .orElseGet(() -> Step.of(observations.stream()
                        .filter(one ->
                                one.group().equals(treated) || one.group().equals(control))
                        .filter(one -> one.observed() instanceof Observed.Number)
                        .mapToDouble(one -> ((Observed.Number) one.observed()).value())));
        return new Comparing(question, ours, others, step).comparison();
    }

    private Comparison comparison() {
        Sample ours = treated.counted();
        Sample others = control.counted();
        Found found = calculation().found(ours, others);
        Verdict verdict = VerdictRule.read(found.lowest(), found.highest(), question);
        Optional<Reach> reach = question.claimed().isPresent()
                ? Optional.of(VerdictRule.reach(found.lowest(), found.highest(), question))
                : Optional.empty();
        Needed needed = needed(verdict, found, ours, others);
        Group treatedGroup = Groups.of(ours, question, step);
        Group controlGroup = Groups.of(others, question, step);
        List<Finding> findings = new ArrayList<>();
        Wording wording = new Wording(question, treatedGroup, Optional.of(controlGroup), found);
        return new Comparison(
                question,
                Optional.of(controlGroup),
                treatedGroup,
                found,
                List.of(),
                reach,
                verdict,
                wording.sentences(verdict, reach, needed),
                findings,
                needed,
                new Standing(verdict, List.of()),
                Optional.empty());
    }

    private Calculation calculation() {
        return switch (question.effect()) {
            case RATIO, DIFFERENCE -> new Means(question, step);
            case SHARE -> new Shares(question);
            default ->
                throw new QuestionException("An effect of kind '%s' cannot be compared here."
                        .formatted(question.effect().word()));
        };
    }

    private Needed needed(Verdict verdict, Found found, Sample ours, Sample others) {
        boolean means = question.effect() == Effect.RATIO || question.effect() == Effect.DIFFERENCE;
        if (!means || ours.values().length < 2 || others.values().length < 2) {
            return new Needed.None("No scatter is known that a number could be reckoned from.");
        }
        return new Settling(question)
                .needed(verdict, found, new Means(question, step).means(ours, others));
    }

    private static void requireGroup(List<Observation> observations, String group, String what) {
        TreeSet<String> groups = new TreeSet<>();
        observations.forEach(observation -> groups.add(observation.group()));
        if (!groups.contains(group)) {
            throw new QuestionException("There is no specimen of the %s '%s'; the groups are %s."
                    .formatted(what, group, groups.isEmpty() ? "none" : String.join(", ", groups)));
        }
    }
}
