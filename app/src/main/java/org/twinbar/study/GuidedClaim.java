package org.twinbar.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.claim.Guided;
import org.twinbar.planning.claim.OffBench;
import org.twinbar.planning.claim.Prompt;
import org.twinbar.planning.claim.Proposal;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Claim;

/** A claim that the guide has led to its questions. */
public final class GuidedClaim {

    static final String NO_EVIDENCE = "none yet";

    private GuidedClaim() {}

    /**
     * Returns the claim with its questions and conditions.
     *
     * @param saidBy who says it; may be empty
     * @param control the group that the others are held against
     * @param treated the groups that the claim is about; all others where none is named
     * @throws InputException where the guide still waits for an answer
     */
    public static Claim of(Guided guided, String saidBy, String control, List<String> treated) {
        if (!guided.isWhole()) {
            throw new InputException("the guide still asks for %s"
                    .formatted(String.join(
                            ", ", guided.waiting().stream().map(Prompt::key).toList())));
        }
        List<Claim.Question> questions = guided.proposals().stream()
                .map(it -> new Claim.Question(
                        it.name(), it.method(), asked(it, control).treated(treated)))
                .toList();
        return new Claim(guided.words(), saidBy, questions, offBench(guided));
    }

    private static Asked asked(Proposal proposal, String control) {
        Asked asked = Asked.of(proposal.property().name()).with(Term.EXPECT, proposal.expect());
        if (proposal.level().isPresent()) {
            Proposal.Level level = proposal.level().get();
            asked = said(asked, Term.AT, level.at()).with(Term.OF, level.of());
        } else {
            asked = asked.with(Term.CONTROL, control);
        }
        asked = said(asked, Term.WORTH, proposal.worth());
        asked = said(asked, Term.CLAIMED, proposal.claimed());
        return proposal.orientation().isPresent()
                ? asked.where("orientation", proposal.orientation().get().word())
                : asked;
    }

    private static Asked said(Asked asked, Term term, Optional<String> text) {
        return text.isPresent() ? asked.with(term, text.get()) : asked;
    }

    private static Optional<Answer.OffBench> offBench(Guided guided) {
        if (guided.offBench().isEmpty()) {
            return Optional.empty();
        }
        List<Answer.Condition> conditions = new ArrayList<>();
        List<String> topics = new ArrayList<>();
        List<String> who = new ArrayList<>();
        for (OffBench each : guided.offBench()) {
            topics.add(each.topic());
            who.add(each.whoDecides());
            each.conditions()
                    .forEach(it -> conditions.add(new Answer.Condition(
                            it.text(), "%s; wanted: %s".formatted(NO_EVIDENCE, it.evidence()))));
        }
        return Optional.of(
                new Answer.OffBench(String.join(", ", topics), conditions, String.join(" ", who)));
    }
}
