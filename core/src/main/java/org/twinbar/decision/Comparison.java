package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Finding;

/**
 * The effect of a treatment on a property, and the answer to the question about it.
 *
 * @param question what was asked
 * @param control the untreated group; none where a level is held against itself
 * @param treated the treated group
 * @param found the effect with its default interval
 * @param beside intervals that no verdict reads
 * @param claimed whether the size that the claim names is reached, where it names one
 * @param verdict the answer
 * @param reasons what was found, what it answers, then what else is to be known, in sentences
 * @param findings what limits it
 * @param needed what would settle it
 * @param standing whether it stands in other ways of looking
 * @param context what stands around it and no verdict reads
 */
public record Comparison(
        Question question,
        Optional<Group> control,
        Group treated,
        Found found,
        List<Beside> beside,
        Optional<Reach> claimed,
        Verdict verdict,
        List<String> reasons,
        List<Finding> findings,
        Needed needed,
        Standing standing,
        Context context) {

    public Comparison {
        beside = List.copyOf(beside);
        reasons = List.copyOf(reasons);
        findings = List.copyOf(findings);
    }

    /** Returns what was found and what it answers: two sentences. */
    public String headline() {
        return String.join(" ", reasons.subList(0, Math.min(2, reasons.size())));
    }

    /** Returns part against material, where the property is counted on several bases. */
    public Optional<Material> material() {
        return context.material();
    }

    /** Returns the same comparison with part set against material; the verdict stays as it is. */
    public Comparison with(Material partAgainstMaterial) {
        return with(context.with(partAgainstMaterial));
    }

    /** Returns the same comparison beside the same elsewhere; the verdict stays as it is. */
    public Comparison with(List<Alike> elsewhere) {
        return with(context.with(elsewhere));
    }

    /** Returns the same comparison with its doubts, each said beside the verdict in full. */
    public Comparison doubted(List<Finding> doubts) {
        Comparison doubted = this;
        for (Finding doubt : doubts) {
            doubted = doubted.doubted(List.of(doubt), Optional.of(doubt.text()));
        }
        return doubted;
    }

    /**
     * Returns the same comparison with what puts its readings in doubt: that is said beside the
     * verdict, which stays as it is.
     *
     * @param said a sentence more beside the verdict, where there is one
     */
    public Comparison doubted(List<Finding> doubts, Optional<String> said) {
        List<String> sentences = new ArrayList<>(reasons);
        said.ifPresent(sentences::add);
        List<Finding> more = new ArrayList<>(findings);
        more.addAll(doubts);
        return new Comparison(
                question, control, treated, found, beside, claimed, verdict, sentences, more,
                needed, standing, context);
    }

    /**
     * Returns the same comparison among its fellows; the verdict stays as it is.
     *
     * @param said a sentence more, where all together say otherwise than this one alone
     */
    Comparison with(Family fellows, Standing others, Optional<String> said, Finding finding) {
        List<String> sentences = new ArrayList<>(reasons);
        said.ifPresent(sentences::add);
        List<Finding> more = new ArrayList<>(findings);
        more.add(finding);
        return new Comparison(
                question,
                control,
                treated,
                found,
                beside,
                claimed,
                verdict,
                sentences,
                more,
                needed,
                others,
                context.with(fellows));
    }

    private Comparison with(Context around) {
        return new Comparison(
                question, control, treated, found, beside, claimed, verdict, reasons, findings,
                needed, standing, around);
    }
}
